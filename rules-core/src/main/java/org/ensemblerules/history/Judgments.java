package org.ensemblerules.history;

import com.google.common.base.Suppliers;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What was judged, found by its event. An event is judged once somebody asks for it: most questions
 * need no more than the newest that counts. Whoever asks has the event from the history as a rule,
 * and the very object is found without reading through it; one that is equal to it is found as
 * well.
 */
final class Judgments {
  private final Judging judging;
  private final List<Event> events;
  private final IdentityHashMap<Event, Integer> places;
  private final Supplier<Map<Event, Integer>> placesOfEqual = Suppliers.memoize(this::equal);
  private final AtomicReferenceArray<@Nullable Optional<Judgment>> judged;

  Judgments(Judging judging, History history) {
    this.judging = judging;
    this.events = history.events();
    this.places = history.places();
    this.judged = new AtomicReferenceArray<>(events.size());
  }

  private Map<Event, Integer> equal() {
    Map<Event, Integer> equal = new HashMap<>();
    for (int place = 0; place < events.size(); place++) {
      equal.putIfAbsent(events.get(place), place);
    }
    return equal;
  }

  Optional<Judgment> of(Event event) {
    Integer place = places.get(event);
    if (place == null) {
      place = placesOfEqual.get().get(event);
    }
    return place == null ? Optional.empty() : at(place);
  }

  private Optional<Judgment> at(int place) {
    Optional<Judgment> judgment = judged.get(place);
    if (judgment == null) {
      judgment = judging.judge(events.get(place));
      judged.set(place, judgment);
    }
    return judgment;
  }

  boolean counts(Event event) {
    Optional<Judgment> judgment = of(event);
    return judgment.isPresent() && judgment.get().counts();
  }
}
