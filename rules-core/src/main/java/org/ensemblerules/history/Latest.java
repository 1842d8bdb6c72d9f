package org.ensemblerules.history;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.gear.LayerKind;

/**
 * Of everything that discharges or undoes something alike, the one moment that decides: whatever
 * came certainly before any of them came certainly before that one.
 */
final class Latest {
  record Answer(FindingId finding, Check check) {}

  /** A layer; empty for a cleaning that names none. */
  private record Washed(CleaningKind kind, Optional<LayerKind> layer) {}

  private final Map<Check, When> passed = new EnumMap<>(Check.class);
  private final Map<Answer, When> passedFor = new HashMap<>();
  private final Map<Check, When> inspected = new EnumMap<>(Check.class);
  private final Map<Washed, When> cleaned = new HashMap<>();
  private final Map<FindingId, When> failedFor = new HashMap<>();
  private final Map<FindingId, When> workedOn = new HashMap<>();

  void add(Event event, boolean counts, boolean happened) {
    When when = event.when();
    if (event instanceof Event.Inspected done && counts) {
      last(inspected, done.inspection().kind().check(), when, When.LAST_CERTAIN);
    } else if (event instanceof Event.Checked done && done.result() == CheckResult.FAILED) {
      // A failure stands whoever made the check, and whenever it may have been.
      done.answers().forEach(id -> last(failedFor, id, when, When.FIRST_CERTAIN));
    } else if (event instanceof Event.Checked done && counts) {
      last(passed, done.check(), when, When.LAST_CERTAIN);
      done.answers()
          .forEach(id -> last(passedFor, new Answer(id, done.check()), when, When.LAST_CERTAIN));
    }
    if (event instanceof Event.Cleaned done && counts) {
      Stream<Optional<LayerKind>> layers =
          done.layers().isEmpty()
              ? Stream.of(Optional.empty())
              : done.layers().stream().map(Optional::of);
      layers.forEach(
          layer -> last(cleaned, new Washed(done.kind(), layer), when, When.LAST_CERTAIN));
    }
    if ((event instanceof Event.Repaired || event instanceof Event.Cleaned) && happened) {
      event.answers().forEach(id -> last(workedOn, id, when, When.LAST_CERTAIN));
    }
  }

  private static <K> void last(Map<K, When> moments, K key, When when, Comparator<When> order) {
    moments.merge(key, when, (one, other) -> order.compare(one, other) < 0 ? other : one);
  }

  boolean passedAfter(Check check, When moment) {
    return after(Optional.ofNullable(passed.get(check)), moment);
  }

  boolean passedAfter(Check check, FindingId finding, When moment) {
    return after(passedFor(check, finding), moment);
  }

  Optional<When> passedFor(Check check, FindingId finding) {
    return Optional.ofNullable(passedFor.get(new Answer(finding, check)));
  }

  boolean cleanedAfter(CleaningKind kind, Set<LayerKind> layers, When moment) {
    Set<LayerKind> asked = layers.isEmpty() ? EnumSet.allOf(LayerKind.class) : layers;
    Predicate<Optional<LayerKind>> done =
        layer -> after(Optional.ofNullable(cleaned.get(new Washed(kind, layer))), moment);
    Stream<Optional<LayerKind>> each = asked.stream().map(Optional::of);
    return done.test(Optional.empty())
        || (layers.isEmpty() ? each.anyMatch(done) : each.allMatch(done));
  }

  boolean inspectedAfter(Check check, When moment) {
    return after(Optional.ofNullable(inspected.get(check)), moment);
  }

  /** Whether a check failed for a finding, unless certainly before a moment. */
  boolean failedSince(When moment, FindingId finding) {
    return Optional.ofNullable(failedFor.get(finding))
        .map(failed -> !moment.certainlyAfter(failed))
        .orElse(false);
  }

  Optional<When> workedOn(FindingId finding) {
    return Optional.ofNullable(workedOn.get(finding));
  }

  private static boolean after(Optional<When> last, When moment) {
    return last.map(when -> when.certainlyAfter(moment)).orElse(false);
  }
}
