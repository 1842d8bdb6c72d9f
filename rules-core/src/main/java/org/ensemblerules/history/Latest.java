package org.ensemblerules.history;

import com.google.common.base.Suppliers;
import com.google.common.collect.Sets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;

/**
 * Of everything that discharges or undoes something alike, the one moment that decides: whatever
 * came certainly before any of them came certainly before that one.
 */
final class Latest {
  record Answer(FindingId finding, Check check) {}

  /** A layer; empty for a cleaning that names none. */
  private record Washed(CleaningKind kind, Optional<LayerKind> layer) {}

  /** What an inspection saw to be clear: what a check asks, of a defect at a site. */
  private record Seen(Check check, Site site, DefectKind defect) {}

  private final CriteriaTable criteria;
  private final CheckTable checks;
  private final Element element;
  private final List<Judgment> inspections = new ArrayList<>();
  private final Supplier<Moments<Seen>> clear = Suppliers.memoize(this::clear);
  private final Map<Check, Moment> passed = new EnumMap<>(Check.class);
  private final Moments<Answer> passedFor = new Moments<>();
  private final Moments<Check> inspected = new Moments<>();
  private final Map<Washed, Moment> cleaned = new HashMap<>();
  private final List<Event.Cleaned> washes = new ArrayList<>();
  private final Supplier<Map<Washed, Moment>> cleanedAndSeen = Suppliers.memoize(this::seen);
  private final Map<FindingId, Moment> workedOn = new HashMap<>();

  Latest(EvidenceTables tables, Element element) {
    this.criteria = tables.criteria();
    this.checks = tables.checks();
    this.element = element;
  }

  /** Adds an event; they come from the last to the first of the history. */
  void add(Judgment judgment, boolean happened) {
    Event event = judgment.event();
    boolean counts = judgment.counts();
    Moment when = event.when();
    if (event instanceof Event.Inspected done && counts) {
      inspections.add(judgment);
      inspected(done.inspection(), when);
    } else if (event instanceof Event.Checked done && counts) {
      last(passed, done.check(), when, Moment.LAST_CERTAIN);
      done.answers()
          .forEach(id -> passedFor.add(new Answer(id, done.check()), when, done.afterWork()));
    }
    if (event instanceof Event.Cleaned done && counts) {
      washes.add(done);
      washed(done).forEach(wash -> last(cleaned, wash, when, Moment.LAST_CERTAIN));
    }
    if ((event instanceof Event.Repaired || event instanceof Event.Cleaned) && happened) {
      event.answers().forEach(id -> last(workedOn, id, when, Moment.LAST_CERTAIN));
    }
  }

  private static Stream<Washed> washed(Event.Cleaned done) {
    return done.layers().named().isEmpty()
        ? Stream.of(new Washed(done.kind(), Optional.empty()))
        : done.layers().named().stream().map(layer -> new Washed(done.kind(), Optional.of(layer)));
  }

  /** Once all is added: the cleanings that an inspection followed. */
  private Map<Washed, Moment> seen() {
    Map<Washed, Moment> found = new HashMap<>();
    for (Event.Cleaned done : washes) {
      if (seenAfter(done.when())) {
        washed(done).forEach(wash -> last(found, wash, done.when(), Moment.LAST_CERTAIN));
      }
    }
    return found;
  }

  /** It stands for each kind that it covers, and for each look of its own that found nothing. */
  private void inspected(Inspection done, Moment when) {
    for (InspectionKind kind : InspectionKind.values()) {
      if (criteria.covers(done.kind(), kind, element.kind(), element.use())) {
        inspected.add(kind.check(), when, statesAfterWork(done));
      }
    }
  }

  private static boolean statesAfterWork(Inspection done) {
    return done.occasion() == Occasion.AFTER_WORK;
  }

  private Moments<Seen> clear() {
    Moments<Seen> clear = new Moments<>();
    Map<InspectionKind, List<CriterionRow>> looks = new EnumMap<>(InspectionKind.class);
    for (Judgment each : inspections) {
      Inspection done = ((Event.Inspected) each.event()).inspection();
      Set<CriterionRow> seen = Sets.newIdentityHashSet();
      seen.addAll(each.standing().orElseThrow().coverage().clear());
      for (CriterionRow row : looks.computeIfAbsent(done.kind(), this::looks)) {
        if (seen.contains(row)) {
          for (Check check : row.check()) {
            for (Site site : row.sites()) {
              row.lookFor()
                  .forEach(
                      defect ->
                          clear.add(
                              new Seen(check, site, defect),
                              each.event().when(),
                              statesAfterWork(done)));
            }
          }
        }
      }
    }
    return clear;
  }

  /** The criteria that show by looking what a check asks; a counting inspection looked at all. */
  private List<CriterionRow> looks(InspectionKind kind) {
    return criteria.required(kind, element.kind(), element.use()).stream()
        .filter(row -> row.check().stream().anyMatch(check -> checks.row(check).byLook()))
        .toList();
  }

  private static <K> void last(
      Map<K, Moment> moments, K key, Moment when, Comparator<Moment> order) {
    moments.merge(key, when, (one, other) -> order.compare(one, other) < 0 ? other : one);
  }

  boolean passedAfter(Check check, Moment moment) {
    return after(Optional.ofNullable(passed.get(check)), moment);
  }

  /** Whether it was passed for a finding after work done at a moment, as far as it says so. */
  boolean passedAfterWork(Check check, FindingId finding, Moment moment, boolean saidOfTheDay) {
    return passedFor.after(new Answer(finding, check), moment, saidOfTheDay);
  }

  Optional<Moment> passedFor(Check check, FindingId finding) {
    return passedFor.last(new Answer(finding, check));
  }

  boolean cleanedAfter(CleaningKind kind, Set<LayerKind> layers, Moment moment) {
    return after(cleaned, kind, layers, moment);
  }

  boolean cleanedAndSeenAfter(CleaningKind kind, Set<LayerKind> layers, Moment moment) {
    return after(cleanedAndSeen.get(), kind, layers, moment);
  }

  /** Whether an inspection that counts came after work done at a moment. */
  boolean seenAfter(Moment moment) {
    return inspected.anyAfter(moment);
  }

  private static boolean after(
      Map<Washed, Moment> washes, CleaningKind kind, Set<LayerKind> layers, Moment moment) {
    Set<LayerKind> asked = layers.isEmpty() ? EnumSet.allOf(LayerKind.class) : layers;
    Predicate<Optional<LayerKind>> done =
        layer -> after(Optional.ofNullable(washes.get(new Washed(kind, layer))), moment);
    Stream<Optional<LayerKind>> each = asked.stream().map(Optional::of);
    return done.test(Optional.empty())
        || (layers.isEmpty() ? each.anyMatch(done) : each.allMatch(done));
  }

  boolean inspectedAfter(Check check, Moment moment, boolean saidOfTheDay) {
    return inspected.after(check, moment, saidOfTheDay);
  }

  /** Whether a look that counts found a place clear of a defect, as a check would show it. */
  boolean clearAfter(Check check, Site site, DefectKind defect, Moment moment) {
    return checks.row(check).byLook()
        && clear.get().after(new Seen(check, site, defect), moment, true);
  }

  /** Whether such an inspection was made on the day of a moment, or certainly later. */
  boolean inspectedOn(Check check, Moment moment) {
    return inspected
        .last(check)
        .filter(last -> last.date().certainlyNotBefore(moment.date()))
        .isPresent();
  }

  Optional<Moment> workedOn(FindingId finding) {
    return Optional.ofNullable(workedOn.get(finding));
  }

  private static boolean after(Optional<Moment> last, Moment moment) {
    return last.map(when -> when.certainlyAfter(moment)).orElse(false);
  }
}
