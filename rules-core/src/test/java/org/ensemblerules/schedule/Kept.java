package org.ensemblerules.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.People;

/** One element and what happened to it, for schedules by the frozen tables. */
record Kept(Element element, List<Event> events, Set<LocalDate> dutyPeriods) {
  Kept {
    events = List.copyOf(events);
    dutyPeriods = Set.copyOf(dutyPeriods);
  }

  static Kept of(ElementKind kind) {
    return new Kept(FitGear.element(kind).build(), List.of(), Set.of());
  }

  static Kept inServiceSince(ElementKind kind, MarkedDate inService) {
    return new Kept(FitGear.element(kind).inService(inService).build(), List.of(), Set.of());
  }

  static Moment on(String text) {
    String[] parts = text.split("#", -1);
    return new Moment(
        MarkedDate.parse(parts[0]), parts.length > 1 ? Integer.parseInt(parts[1]) : 0);
  }

  Kept with(Event... more) {
    List<Event> all = new ArrayList<>(events);
    all.addAll(List.of(more));
    return new Kept(element, all, dutyPeriods);
  }

  Kept with(Element other) {
    return new Kept(other, events, dutyPeriods);
  }

  Kept onDuty(LocalDate... days) {
    return new Kept(element, events, Set.of(days));
  }

  Kept stocked(String on) {
    return with(new UseEvent.Stocked(on(on)));
  }

  Kept issued(String on) {
    return with(new UseEvent.Issued(on(on), "Member 7"));
  }

  Kept returned(String on) {
    return with(new UseEvent.Returned(on(on)));
  }

  Kept used(String on) {
    return with(new UseEvent.Used(on(on)));
  }

  Kept exposed(String on, Exposure to) {
    return with(new ExposureEvent.Exposed(on(on), to));
  }

  Kept cleaned(String on) {
    return with(cleaning(on(on), CleaningKind.ADVANCED));
  }

  static Event cleaning(Moment when, CleaningKind kind) {
    return WorkEvent.Cleaned.whole(when, kind, People.permitted(Task.of(kind)), Set.of());
  }

  Kept inspected(InspectionKind kind, String on) {
    return with(inspection(element.kind(), kind, on(on), Occasion.PERIODIC, Outcome.CLEAR));
  }

  Kept inspected(InspectionKind kind, String on, Occasion occasion) {
    return with(inspection(element.kind(), kind, on(on), occasion, Outcome.CLEAR));
  }

  static Event inspection(
      ElementKind element, InspectionKind kind, Moment when, Occasion occasion, Outcome outcome) {
    InspectionBuilder made =
        Inspection.builder(kind, occasion, when.date(), People.permitted(kind.task()))
            .gearClean(YesNoUnknown.YES)
            .atHand(EnumSet.allOf(Equipment.class));
    FitGear.inspection(kind, element, FitGear.AS_OF)
        .build()
        .outcomes()
        .forEach(
            each ->
                made.outcome(
                    each.criterion(),
                    each.outcome() == Outcome.NOT_FITTED ? Outcome.NOT_FITTED : outcome));
    return new LookEvent.Inspected(made.build(), when.orderInDay());
  }

  ServiceRecord record() {
    return new ServiceRecord(element, History.of(events), dutyPeriods);
  }

  /** The frozen tables with these tasks. */
  static ScheduleTables tables(List<TaskRow> rows) {
    Tables frozen = FrozenRules.rules().tables();
    return new ScheduleTables(
        TaskTable.of(rows).orElseThrow(),
        frozen.intervals(),
        frozen.ageLimits(),
        FrozenRules.rules().careRoutes(),
        FrozenRules.rules().evidenceTables());
  }

  static Schedule schedule(TaskRow... rows) {
    return new Schedule(tables(List.of(rows)));
  }

  static TaskRow row(ElementKind element, String task, Discharge doneBy, Timing timing) {
    return new TaskRow(
        FrozenProvenance.of("task", task, element, Integer.toHexString(timing.text().hashCode())),
        new TaskKey(task),
        element,
        Use.STRUCTURAL,
        doneBy,
        timing,
        false);
  }

  static TaskRow inReserve(TaskRow row) {
    return new TaskRow(
        row.provenance(), row.task(), row.element(), row.use(), row.doneBy(), row.timing(), true);
  }

  static TaskRow advanced(ElementKind element) {
    return row(
        element,
        "advanced-inspection",
        new Discharge.Inspected(InspectionKind.ADVANCED),
        new Timing.ByInterval());
  }

  static TaskRow liner() {
    return row(
        ElementKind.COAT,
        "complete-liner-inspection",
        new Discharge.Inspected(InspectionKind.COMPLETE_LINER),
        new Timing.ByInterval());
  }

  static TaskRow cleaning(ElementKind element, Timing timing) {
    return row(element, "advanced-cleaning", new Discharge.Cleaned(CleaningKind.ADVANCED), timing);
  }

  static TaskRow routine(ElementKind element, Trigger trigger) {
    return row(
        element,
        "routine-inspection",
        new Discharge.Inspected(InspectionKind.ROUTINE),
        new Timing.After(trigger, Optional.empty()));
  }

  /** What is due by tasks, without ages. */
  static List<Due> tasks(Schedule schedule, Kept kept, LocalDate asOf) {
    return schedule.due(kept.record(), asOf).stream()
        .filter(due -> !due.task().equals(TaskKey.LEAVE_SERVICE))
        .toList();
  }
}
