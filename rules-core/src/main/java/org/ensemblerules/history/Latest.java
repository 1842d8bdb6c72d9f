package org.ensemblerules.history;

import com.google.common.base.Suppliers;
import com.google.common.collect.Lists;
import com.google.common.collect.Sets;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
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
  private final History history;
  private final Judgments judgments;
  private final LocalDate asOf;
  private final List<LookEvent.Inspected> inspections;
  private final Map<InspectionKind, Optional<Moment>> inspected = new ConcurrentHashMap<>();
  private final Map<InspectionKind, Optional<Moment>> inspectedAfterWork =
      new ConcurrentHashMap<>();
  private final Supplier<Moments<Seen>> clear = Suppliers.memoize(this::clear);
  private final Supplier<Map<Check, Moment>> passed = Suppliers.memoize(this::passed);
  private final Supplier<Moments<Answer>> passedFor = Suppliers.memoize(this::passedFor);
  private final Supplier<Map<Washed, Moment>> cleaned =
      Suppliers.memoize(() -> washed(done -> true));
  private final Supplier<Map<Washed, Moment>> cleanedAndSeen =
      Suppliers.memoize(() -> washed(done -> seenAfter(done.when())));
  private final Supplier<Map<FindingId, Moment>> workedOn = Suppliers.memoize(this::workedOn);

  Latest(
      EvidenceTables tables,
      Element element,
      History history,
      Judgments judgments,
      LocalDate asOf) {
    this.criteria = tables.criteria();
    this.checks = tables.checks();
    this.element = element;
    this.history = history;
    this.judgments = judgments;
    this.asOf = asOf;
    this.inspections =
        Lists.reverse(history.lastCertainLast(history.events(LookEvent.Inspected.class)));
  }

  /** What of a kind counts, from the last to the first of the history. */
  private <E extends Event> Stream<E> counting(Class<E> kind) {
    return Lists.reverse(history.events(kind)).stream().filter(judgments::counts);
  }

  private Map<Check, Moment> passed() {
    Map<Check, Moment> found = new EnumMap<>(Check.class);
    counting(LookEvent.Checked.class).forEach(done -> last(found, done.check(), done.when()));
    return found;
  }

  private Moments<Answer> passedFor() {
    Moments<Answer> found = new Moments<>();
    counting(LookEvent.Checked.class)
        .forEach(
            done ->
                done.answers()
                    .forEach(
                        id ->
                            found.add(
                                new Answer(id, done.check()), done.when(), done.afterWork())));
    return found;
  }

  private Map<Washed, Moment> washed(Predicate<WorkEvent.Cleaned> sort) {
    Map<Washed, Moment> found = new HashMap<>();
    counting(WorkEvent.Cleaned.class)
        .filter(sort)
        .forEach(done -> washed(done).forEach(wash -> last(found, wash, done.when())));
    return found;
  }

  private Map<FindingId, Moment> workedOn() {
    Map<FindingId, Moment> found = new HashMap<>();
    for (Event event : Lists.reverse(history.events())) {
      if (StatedOrder.isWork(event) && event.when().date().certainlyBy(asOf)) {
        event.answers().forEach(id -> last(found, id, event.when()));
      }
    }
    return found;
  }

  private static Stream<Washed> washed(WorkEvent.Cleaned done) {
    return done.layers().named().isEmpty()
        ? Stream.of(new Washed(done.kind(), Optional.empty()))
        : done.layers().named().stream().map(layer -> new Washed(done.kind(), Optional.of(layer)));
  }

  /** Of the inspections of a sort that count, when the last was made. */
  Optional<Moment> inspected(Predicate<Inspection> sort) {
    for (LookEvent.Inspected done : inspections) {
      if (sort.test(done.inspection()) && judgments.counts(done)) {
        return Optional.of(done.when());
      }
    }
    return Optional.empty();
  }

  private Optional<Moment> inspected(InspectionKind kind) {
    return inspected.computeIfAbsent(kind, key -> inspected(done -> covers(done, key)));
  }

  /** It stands for each kind that it covers. */
  private boolean covers(Inspection done, InspectionKind kind) {
    return criteria.covers(done.kind(), kind, element.kind(), element.use());
  }

  private static boolean statesAfterWork(Inspection done) {
    return done.occasion() == Occasion.AFTER_WORK;
  }

  private Moments<Seen> clear() {
    Moments<Seen> clear = new Moments<>();
    Map<InspectionKind, List<CriterionRow>> looks = new EnumMap<>(InspectionKind.class);
    for (LookEvent.Inspected event : Lists.reverse(history.events(LookEvent.Inspected.class))) {
      Inspection done = event.inspection();
      Set<CriterionRow> seen = Sets.newIdentityHashSet();
      judgments
          .of(event)
          .filter(Judgment::counts)
          .flatMap(Judgment::standing)
          .ifPresent(standing -> seen.addAll(standing.coverage().clear()));
      for (CriterionRow row : looks.computeIfAbsent(done.kind(), this::looks)) {
        if (seen.contains(row)) {
          for (Check check : row.check()) {
            for (Site site : row.sites()) {
              row.lookFor()
                  .forEach(
                      defect ->
                          clear.add(
                              new Seen(check, site, defect), event.when(), statesAfterWork(done)));
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

  private static <K> void last(Map<K, Moment> moments, K key, Moment when) {
    moments.merge(
        key, when, (one, other) -> Moment.LAST_CERTAIN.compare(one, other) < 0 ? other : one);
  }

  boolean passedAfter(Check check, Moment moment) {
    return after(Optional.ofNullable(passed.get().get(check)), moment);
  }

  /** Whether it was passed for a finding after work done at a moment, as far as it says so. */
  boolean passedAfterWork(Check check, FindingId finding, Moment moment, boolean saidOfTheDay) {
    return passedFor.get().after(new Answer(finding, check), moment, saidOfTheDay);
  }

  Optional<Moment> passedFor(Check check, FindingId finding) {
    return passedFor.get().last(new Answer(finding, check));
  }

  boolean cleanedAfter(CleaningKind kind, Set<LayerKind> layers, Moment moment) {
    return after(cleaned.get(), kind, layers, moment);
  }

  boolean cleanedAndSeenAfter(CleaningKind kind, Set<LayerKind> layers, Moment moment) {
    return after(cleanedAndSeen.get(), kind, layers, moment);
  }

  /** Whether an inspection that counts came after work done at a moment. */
  boolean seenAfter(Moment moment) {
    for (InspectionKind kind : InspectionKind.values()) {
      if (inspectedAfter(kind, moment, true)) {
        return true;
      }
    }
    return false;
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
    return kind(check).filter(kind -> inspectedAfter(kind, moment, saidOfTheDay)).isPresent();
  }

  /** Whether such an inspection came after a moment: certainly, or of its day as it says. */
  boolean inspectedAfter(InspectionKind kind, Moment moment, boolean saidOfTheDay) {
    return after(inspected(kind), moment)
        || (saidOfTheDay
            && inspectedAfterWork
                .computeIfAbsent(
                    kind, key -> inspected(done -> statesAfterWork(done) && covers(done, key)))
                .filter(when -> when.follows(moment, true))
                .isPresent());
  }

  private static Optional<InspectionKind> kind(Check check) {
    for (InspectionKind kind : InspectionKind.values()) {
      if (kind.check() == check) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }

  /** Whether a look that counts found a place clear of a defect, as a check would show it. */
  boolean clearAfter(Check check, Site site, DefectKind defect, Moment moment) {
    return checks.row(check).byLook()
        && clear.get().after(new Seen(check, site, defect), moment, true);
  }

  /** Whether such an inspection was made on the day of a moment, or certainly later. */
  boolean inspectedOn(Check check, Moment moment) {
    return kind(check)
        .flatMap(this::inspected)
        .filter(last -> last.date().certainlyNotBefore(moment.date()))
        .isPresent();
  }

  Optional<Moment> workedOn(FindingId finding) {
    return Optional.ofNullable(workedOn.get().get(finding));
  }

  private static boolean after(Optional<Moment> last, Moment moment) {
    return last.isPresent() && last.get().certainlyAfter(moment);
  }
}
