package org.ensemblerules.schedule;

import com.google.common.base.Suppliers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.History;
import org.ensemblerules.history.Judgment;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Told;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.InspectionStanding;
import org.ensemblerules.inspection.Occasion;

/** What one record says by a day: what was done and counts, what called for tasks, since when. */
final class RecordOnDay {
  private static final Set<Check> OF_THE_LINER =
      EnumSet.of(Check.LIGHT_THROUGH_LINER, Check.LINER_LEAKAGE, Check.BARRIER_UNDER_PRESSURE);

  private final ScheduleTables tables;
  private final Evidence evidence;
  private final Set<LocalDate> dutyPeriods;
  private final Supplier<LinerSuspicion> findings;
  private final Supplier<Reserve> reserve;
  private final Supplier<Optional<LocalDate>> made = Suppliers.memoize(this::made);
  private final Supplier<Since> sinceIssue = Suppliers.memoize(this::sinceIssue);

  RecordOnDay(ScheduleTables tables, Evidence evidence, ServiceRecord record) {
    this.tables = tables;
    this.evidence = evidence;
    this.dutyPeriods = record.dutyPeriods();
    this.findings = Suppliers.memoize(() -> suspicion(tables, evidence, record));
    this.reserve = Suppliers.memoize(() -> new Reserve(evidence.element(), evidence.history()));
  }

  private static LinerSuspicion suspicion(
      ScheduleTables tables, Evidence evidence, ServiceRecord record) {
    return new LinerSuspicion(
        tables.evidence(),
        evidence.element(),
        Told.of(
            record.found(),
            evidence.history().events(Event.Found.class).stream()
                .map(Event.Found::finding)
                .toList()));
  }

  ScheduleTables tables() {
    return tables;
  }

  Evidence evidence() {
    return evidence;
  }

  Element element() {
    return evidence.element();
  }

  History history() {
    return evidence.history();
  }

  LocalDate asOf() {
    return evidence.asOf();
  }

  /** Whether it was in reserve at an inspection; what never was on a shelf never was. */
  boolean inReserve(Moment inspected) {
    boolean shelved =
        !history().events(Event.Returned.class).isEmpty()
            || !history().events(Event.Stocked.class).isEmpty();
    return shelved && reserve.get().at(inspected);
  }

  /** What put it to use first after an inspection in reserve. */
  Optional<Moment> inUseAfter(Moment inspected) {
    return reserve.get().inUseAfter(inspected);
  }

  boolean mayHaveHappened(Event event) {
    return mayHaveHappened(event.when());
  }

  boolean mayHaveHappened(Moment when) {
    return when.date().possiblyBy(asOf());
  }

  /** The first day on which it may have left service for good, if it may have by the day. */
  Optional<LocalDate> end() {
    List<Event.Retired> retired = history().events(Event.Retired.class);
    List<Event.Disposed> disposed = history().events(Event.Disposed.class);
    return retired.isEmpty() && disposed.isEmpty()
        ? Optional.empty()
        : Stream.concat(retired.stream(), disposed.stream())
            .filter(this::mayHaveHappened)
            .map(event -> event.when().date().earliestOr(LocalDate.MIN))
            .min(Comparator.naturalOrder());
  }

  /** When something was done that counts; {@code occasion} as the trigger asks for it. */
  DoneDays done(Discharge doneBy, Optional<Trigger> trigger) {
    if (doneBy instanceof Discharge.Inspected || doneBy instanceof Discharge.InspectedBy) {
      Optional<Occasion> occasion = trigger.flatMap(RecordOnDay::occasion);
      List<Event> made = new ArrayList<>();
      for (Event.Inspected event : history().events(Event.Inspected.class)) {
        if (discharges(event, doneBy)) {
          made.add(event);
        }
      }
      return new DoneDays(
          made,
          evidence::counts,
          event ->
              event instanceof Event.Inspected done
                  && (Optional.of(done.inspection().occasion()).equals(occasion)
                      || opensWhatWasSuspected(done, trigger)),
          occasion
              .filter(Occasion.AFTER_USE::equals)
              .map(after -> use -> evidence.namesOne(after, use)));
    }
    List<Event> made = new ArrayList<>();
    for (Event event : history().events()) {
      if (doneBy.asksFor(event)) {
        made.add(event);
      }
    }
    return new DoneDays(made, evidence::counts, event -> false, Optional.empty());
  }

  /** How much the record has of the inspection by which a task was done; the most of several. */
  Optional<EvidenceGrade> grade(Discharge doneBy, Moment when) {
    Optional<EvidenceGrade> most = Optional.empty();
    for (Event.Inspected event : history().events(Event.Inspected.class)) {
      if (event.inspection().on().equals(when.date())
          && event.orderInDay() == when.orderInDay()
          && discharges(event, doneBy)
          && evidence.counts(event)) {
        Optional<EvidenceGrade> grade =
            evidence.judgment(event).flatMap(Judgment::standing).map(InspectionStanding::grade);
        most = most.isEmpty() || grade.orElseThrow().compareTo(most.get()) > 0 ? grade : most;
      }
    }
    return most;
  }

  /** The last day of an inspection that would do, of which only the date is on record. */
  Optional<LocalDate> dateOnly(Discharge doneBy) {
    return history().events(Event.Inspected.class).stream()
        .filter(event -> event.inspection().isDateOnly() && discharges(event, doneBy))
        .filter(event -> event.when().date().certainlyBy(asOf()))
        .flatMap(event -> event.when().date().earliest().stream())
        .max(Comparator.naturalOrder());
  }

  /** A liner opened on the day of what spoke against it is the one that was suspected. */
  private static boolean opensWhatWasSuspected(Event.Inspected done, Optional<Trigger> trigger) {
    return trigger.equals(Optional.of(Trigger.LINER_SUSPECTED))
        && done.inspection().kind() == InspectionKind.COMPLETE_LINER;
  }

  /** An inspection discharges what it covers as well: the fuller one the lesser. */
  private boolean discharges(Event.Inspected event, Discharge doneBy) {
    return doneBy.asksFor(event)
        || (doneBy instanceof Discharge.Inspected asked
            && tables
                .evidence()
                .criteria()
                .covers(
                    event.inspection().kind(), asked.kind(), element().kind(), element().use()));
  }

  /** What of a sort does not count, newest first back to the last that does, unless before. */
  String notCounting(Discharge doneBy, Optional<Moment> before) {
    return Judgment.text(
            evidence.notCounting(doneBy::asksFor).stream()
                .filter(
                    each -> before.isEmpty() || !before.get().certainlyAfter(each.event().when()))
                .toList())
        .map(text -> "; " + text)
        .orElse("");
  }

  private static Optional<Occasion> occasion(Trigger trigger) {
    return switch (trigger) {
      case ISSUE -> Optional.of(Occasion.ON_ISSUE);
      case DUTY_PERIOD -> Optional.of(Occasion.START_OF_DUTY);
      case USE -> Optional.of(Occasion.AFTER_USE);
      default -> Optional.empty();
    };
  }

  /** What called for a task, or may have by the day; undated ones last. */
  List<Occurrence> occurrences(Timing.After after, Discharge doneBy) {
    Stream<Occurrence> all =
        switch (after.trigger()) {
          case ISSUE ->
              history().events(Event.Issued.class).stream()
                  .map(event -> new Occurrence(event.when(), "issued"));
          case DUTY_PERIOD ->
              dutyPeriods.stream()
                  .map(day -> new Occurrence(Moment.on(MarkedDate.of(day)), "duty period of"));
          case USE ->
              history().events(Event.Used.class).stream()
                  .map(event -> new Occurrence(event.when(), "used"));
          case PRODUCTS_OF_COMBUSTION ->
              exposed(EnumSet.of(Exposure.PRODUCTS_OF_COMBUSTION, Exposure.UNKNOWN)::contains);
          case EXPOSURE -> exposed(exposure -> callsFor(doneBy, exposure));
          case ROUTINE_FOUND ->
              found(
                  InspectionKind.ROUTINE,
                  row -> !after.found().butFor().containsAll(row.lookFor()));
          case LINER_SUSPECTED ->
              Stream.concat(
                  suspected(after.found()),
                  history().events(Event.Checked.class).stream()
                      .filter(event -> event.result() == CheckResult.FAILED)
                      .filter(event -> OF_THE_LINER.contains(event.check()))
                      .map(event -> new Occurrence(event.when(), "failed " + event.check())));
        };
    List<Occurrence> happened =
        all.filter(occurrence -> mayHaveHappened(occurrence.when())).toList();
    return happened.size() < 2
        ? happened
        : happened.stream().distinct().sorted(Occurrence.ORDER).toList();
  }

  /** Whether what it met calls for a task: for no cleaning, if it is cared for in another way. */
  private boolean callsFor(Discharge doneBy, Exposure exposure) {
    boolean cleaning = doneBy instanceof Discharge.Cleaned || doneBy instanceof Discharge.CleanedAs;
    return !cleaning || tables.care().callsForWash(element(), exposure);
  }

  private Stream<Occurrence> exposed(Predicate<Exposure> calling) {
    return evidence.exposures().stream()
        .filter(event -> calling.test(event.to()))
        .map(event -> new Occurrence(event.when(), "exposed to " + event.to()));
  }

  /** Whoever made it, and whether or not it counts: what it found was found. */
  private Stream<Occurrence> found(InspectionKind kind, Predicate<CriterionRow> calls) {
    return made(kind, (inspection, row) -> calls.test(row));
  }

  private Stream<Occurrence> suspected(FoundWhat what) {
    return made(
        InspectionKind.ADVANCED,
        (inspection, row) -> findings.get().isSuspected(inspection, row, what));
  }

  private Stream<Occurrence> made(
      InspectionKind kind, BiPredicate<Inspection, CriterionRow> calls) {
    return history().events(Event.Inspected.class).stream()
        .filter(event -> event.inspection().kind() == kind)
        .filter(event -> foundAny(event, calls))
        .map(event -> new Occurrence(event.when(), kind + " inspection found something"));
  }

  private boolean foundAny(Event.Inspected event, BiPredicate<Inspection, CriterionRow> calls) {
    return event.inspection().mayHaveFound()
        && evidence
            .judgment(event)
            .flatMap(Judgment::standing)
            .filter(
                standing ->
                    standing.coverage().found().stream()
                        .anyMatch(row -> calls.test(event.inspection(), row)))
            .isPresent();
  }

  /**
   * Since when time counts: known, not known, or not yet; {@code assumed} where nothing states it
   * and the earliest day counts that is possible.
   */
  record Since(boolean begun, Optional<LocalDate> day, boolean assumed) {}

  Since since(Start start) {
    return switch (start) {
      case IN_SERVICE -> new Since(true, element().inService().earliest(), false);
      case MANUFACTURE -> new Since(true, made.get(), false);
      case ISSUE -> sinceIssue.get();
    };
  }

  private Since sinceIssue() {
    List<MarkedDate> uses =
        Stream.of(Event.Issued.class, Event.Used.class, Event.Exposed.class)
            .flatMap(kind -> history().events(kind).stream())
            .filter(this::mayHaveHappened)
            .map(event -> event.when().date())
            .toList();
    MarkedDate placed = element().inService();
    if (uses.isEmpty() && placed.earliest().isEmpty() && !stocked().isEmpty()) {
      return new Since(false, Optional.empty(), false);
    }
    List<MarkedDate> dates = new ArrayList<>(uses);
    dates.add(placed);
    // What has no date may have been on the first day that there can be.
    return new Since(
        true,
        dates.stream()
            .map(date -> firstDay(date).or(() -> firstPossible(uses)))
            .min(Comparator.comparing(day -> day.orElse(LocalDate.MIN)))
            .orElseThrow(),
        placed.earliest().isEmpty());
  }

  /** The earliest day that a date can mean; of a month or a year, none before it was made. */
  private Optional<LocalDate> firstDay(MarkedDate date) {
    Optional<LocalDate> first = date.earliest();
    return made.get()
        .filter(day -> first.map(day::isAfter).orElse(false))
        .filter(day -> !date.certainlyBy(day.minusDays(1)))
        .or(() -> first);
  }

  /** When it was received into stock, certainly by the day. */
  private List<Event.Stocked> stocked() {
    return history().events(Event.Stocked.class).stream()
        .filter(event -> event.when().date().certainlyBy(asOf()))
        .toList();
  }

  /** The first day on which it may have left the shelf, or the maker; empty if nobody can say. */
  private Optional<LocalDate> firstPossible(List<MarkedDate> uses) {
    return stocked().stream()
        .map(event -> event.when().date())
        .filter(date -> uses.stream().allMatch(use -> use.certainlyNotBefore(date)))
        .flatMap(date -> date.earliest().stream())
        .max(Comparator.naturalOrder())
        .or(made);
  }

  /** The earliest manufacture that the labels show; empty if one of them may show another. */
  private Optional<LocalDate> made() {
    Map<Optional<LayerKind>, Label> labels = labels();
    Set<Optional<LayerKind>> known = new HashSet<>(labels.keySet());
    boolean all =
        known.containsAll(evidence.labeledLayers())
            && labels.values().stream()
                .allMatch(label -> label.manufactured().earliest().isPresent());
    return Optional.of(labels.values())
        .filter(each -> all)
        .flatMap(
            each ->
                each.stream()
                    .flatMap(label -> label.manufactured().earliest().stream())
                    .min(Comparator.naturalOrder()));
  }

  /** The labels by layer; an empty layer stands for the element's own. */
  Map<Optional<LayerKind>, Label> labels() {
    Map<Optional<LayerKind>, Label> labels = new HashMap<>();
    element().label().ifPresent(label -> labels.put(Optional.empty(), label));
    element().layerLabels().forEach((layer, label) -> labels.put(Optional.of(layer), label));
    return labels;
  }
}
