package org.ensemblerules.schedule;

import com.google.common.base.Suppliers;
import com.google.common.collect.Lists;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.Judgment;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.InspectionStanding;
import org.ensemblerules.inspection.told.Told;

/** What on a record called for tasks, or may have by the day. */
final class Occurrences {
  private static final Set<Check> OF_THE_LINER =
      EnumSet.of(Check.LIGHT_THROUGH_LINER, Check.LINER_LEAKAGE, Check.BARRIER_UNDER_PRESSURE);
  private static final Set<Exposure> SOOTED =
      EnumSet.of(Exposure.PRODUCTS_OF_COMBUSTION, Exposure.UNKNOWN);

  private final ScheduleTables tables;
  private final Evidence evidence;
  private final Set<LocalDate> dutyPeriods;
  private final Supplier<LinerSuspicion> suspicion;

  Occurrences(ScheduleTables tables, Evidence evidence, ServiceRecord record) {
    this.tables = tables;
    this.evidence = evidence;
    this.dutyPeriods = record.dutyPeriods();
    this.suspicion = Suppliers.memoize(() -> suspicion(tables, evidence, record));
  }

  private static LinerSuspicion suspicion(
      ScheduleTables tables, Evidence evidence, ServiceRecord record) {
    return new LinerSuspicion(
        tables.evidence(),
        evidence.element(),
        Told.of(
            record.found(),
            Lists.transform(
                evidence.history().events(LookEvent.Found.class), LookEvent.Found::finding)));
  }

  /** Of one sort, for a task that is discharged in some way; undated ones last. */
  List<Occurrence> of(Timing.After after, Discharge doneBy) {
    List<Occurrence> all = new ArrayList<>();
    switch (after.trigger()) {
      case ISSUE -> happened(UseEvent.Issued.class, "issued", all);
      case DUTY_PERIOD ->
          dutyPeriods.forEach(
              day -> happened(Moment.on(MarkedDate.of(day)), "duty period of", all));
      case USE -> happened(UseEvent.Used.class, "used", all);
      case PRODUCTS_OF_COMBUSTION -> exposed(SOOTED::contains, all);
      case EXPOSURE -> exposed(exposure -> callsFor(doneBy, exposure), all);
      case ROUTINE_FOUND ->
          found(
              InspectionKind.ROUTINE,
              (inspection, row) -> !after.found().butFor().containsAll(row.lookFor()),
              all);
      case LINER_SUSPECTED -> linerSuspected(after.found(), all);
    }
    return all.size() < 2 ? all : all.stream().distinct().sorted(Occurrence.ORDER).toList();
  }

  private void happened(Moment when, String what, List<Occurrence> all) {
    if (when.date().possiblyBy(evidence.asOf())) {
      all.add(new Occurrence(when, what));
    }
  }

  private void happened(Class<? extends Event> kind, String what, List<Occurrence> all) {
    for (Event event : evidence.history().events(kind)) {
      happened(event.when(), what, all);
    }
  }

  private void exposed(Predicate<Exposure> calling, List<Occurrence> all) {
    for (ExposureEvent.Exposed met : evidence.exposures()) {
      if (calling.test(met.to())) {
        happened(met.when(), "exposed to " + met.to(), all);
      }
    }
  }

  /** Whether what it met calls for a task: for no cleaning, if it is cared for in another way. */
  private boolean callsFor(Discharge doneBy, Exposure exposure) {
    boolean cleaning = doneBy instanceof Discharge.Cleaned || doneBy instanceof Discharge.CleanedAs;
    return !cleaning || tables.care().callsForWash(evidence.element(), exposure);
  }

  private void linerSuspected(FoundWhat what, List<Occurrence> all) {
    found(
        InspectionKind.ADVANCED,
        (inspection, row) -> suspicion.get().isSuspected(inspection, row, what),
        all);
    for (LookEvent.Checked done : evidence.history().events(LookEvent.Checked.class)) {
      if (done.result() == CheckResult.FAILED && OF_THE_LINER.contains(done.check())) {
        happened(done.when(), "failed " + done.check(), all);
      }
    }
  }

  /** Whoever made it, and whether or not it counts: what it found was found. */
  private void found(
      InspectionKind kind, BiPredicate<Inspection, CriterionRow> calls, List<Occurrence> all) {
    for (LookEvent.Inspected event : evidence.history().events(LookEvent.Inspected.class)) {
      if (event.inspection().kind() == kind && foundAny(event, calls)) {
        happened(event.when(), kind + " inspection found something", all);
      }
    }
  }

  private boolean foundAny(LookEvent.Inspected event, BiPredicate<Inspection, CriterionRow> calls) {
    if (!event.inspection().mayHaveFound()) {
      return false;
    }
    Optional<InspectionStanding> standing = evidence.judgment(event).flatMap(Judgment::standing);
    return standing.isPresent()
        && standing.get().coverage().found().stream()
            .anyMatch(row -> calls.test(event.inspection(), row));
  }
}
