package org.ensemblerules.example.department.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;

/**
 * One ordinary year of a piece of gear: two uses, each looked over by its wearer; two advanced
 * cleanings; the yearly inspections in November.
 *
 * @param year the year
 * @param holder whose gear it is; their number spreads the days
 */
record YearlyRound(int year, Member holder) {
  /** Liners are opened a year ahead of the third year in service, so that none is ever late. */
  private static final int YEARS_BEFORE_LINER_IS_OPENED = 2;

  /** Before that year, stations that sign off kept only the dates of inspections. */
  private static final int FIRST_SIGNED = 2025;

  /** The day of the yearly inspections. */
  LocalDate day() {
    return LocalDate.of(year, 11, 3 + holder.number());
  }

  /** Uses, look-overs and cleanings from a day on. */
  List<Event> care(InspectionForm form, LocalDate since) {
    List<Event> events = new ArrayList<>();
    if (holder.usesAreOnRecord()) {
      used(LocalDate.of(year, 3, 4 + holder.number()), form, since, events);
      used(LocalDate.of(year, 8, 1 + holder.number()), form, since, events);
    }
    cleaned(LocalDate.of(year, 4, 2 + holder.number()), since, events);
    cleaned(day().minusDays(2), since, events);
    return events;
  }

  private void used(LocalDate on, InspectionForm form, LocalDate since, List<Event> events) {
    if (!on.isBefore(since)) {
      events.add(new UseEvent.Used(Moment.on(MarkedDate.of(on))));
      InspectionForm.Head head =
          new InspectionForm.Head(InspectionKind.ROUTINE, Occasion.AFTER_USE, on, holder.doer());
      events.add(new LookEvent.Inspected(form.filled(head, List.of(), Remarks.NONE), 0));
    }
  }

  private void cleaned(LocalDate on, LocalDate since, List<Event> events) {
    if (!on.isBefore(since)) {
      events.add(
          WorkEvent.Cleaned.whole(
              Moment.on(MarkedDate.of(on)), CleaningKind.ADVANCED, holder.carer(), Set.of()));
    }
  }

  /** The yearly inspections, if the piece was in service by then. */
  List<Inspection> inspections(
      InspectionForm form,
      LocalDate since,
      Doer by,
      boolean liner,
      List<Finding> found,
      Remarks remarks) {
    List<Inspection> inspections = new ArrayList<>();
    if (!day().isBefore(since)) {
      inspections.add(made(form, head(InspectionKind.ADVANCED, by), found, remarks));
    }
    if (liner && !day().isBefore(since.plusYears(YEARS_BEFORE_LINER_IS_OPENED))) {
      inspections.add(made(form, head(InspectionKind.COMPLETE_LINER, by), found, remarks));
    }
    return inspections;
  }

  private Inspection made(
      InspectionForm form, InspectionForm.Head head, List<Finding> found, Remarks remarks) {
    return form.signedFor().isPresent() && year < FIRST_SIGNED
        ? InspectionForm.dateOnly(head)
        : form.filled(head, found, remarks);
  }

  private InspectionForm.Head head(InspectionKind kind, Doer by) {
    return new InspectionForm.Head(kind, Occasion.PERIODIC, day(), by);
  }
}
