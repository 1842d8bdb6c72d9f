package org.ensemblerules.history;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.Maps;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * What was judged, found by its event. Whoever asks has the event from the history as a rule, and
 * the very object is found without reading through it; one that is equal to it is found as well.
 */
final class Judgments {
  private final ImmutableList<Judgment> all;
  private final IdentityHashMap<Event, Judgment> byIdentity;
  private final Set<Class<? extends Event>> kinds = new HashSet<>();
  private final Supplier<Map<Event, Judgment>> byEvent;

  /**
   * Sorts judgments.
   *
   * @param newestFirst one of each event at most; not null
   */
  Judgments(List<Judgment> newestFirst) {
    this.all = ImmutableList.copyOf(newestFirst);
    this.byIdentity = new IdentityHashMap<>(all.size());
    for (Judgment each : all) {
      byIdentity.put(each.event(), each);
      kinds.add(each.event().getClass());
    }
    this.byEvent = Suppliers.memoize(() -> Maps.uniqueIndex(all, Judgment::event));
  }

  ImmutableList<Judgment> newestFirst() {
    return all;
  }

  Optional<Judgment> of(Event event) {
    Judgment found = byIdentity.get(event);
    return found != null || !kinds.contains(event.getClass())
        ? Optional.ofNullable(found)
        : Optional.ofNullable(byEvent.get().get(event));
  }
}
