package org.ensemblerules.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.testkit.ArbitrariesOfDates;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.People;

/** Coats with histories of what schedules read, and rows of every kind of timing. */
final class ArbitrariesOfSchedules {
  private ArbitrariesOfSchedules() {}

  static Arbitrary<Moment> moments() {
    return Combinators.combine(
            ArbitrariesOfDates.marked(FitGear.IN_SERVICE, FitGear.AS_OF),
            Arbitraries.of(0, 0, 1, 2))
        .as(Moment::new);
  }

  /** Events that discharge tasks. */
  static Arbitrary<Event> done() {
    return Combinators.combine(
            moments(), Arbitraries.of(Occasion.class), Arbitraries.of(InspectionKind.class))
        .flatAs(
            (when, occasion, kind) ->
                Arbitraries.of(
                    Kept.cleaning(when, CleaningKind.ADVANCED),
                    Kept.inspection(ElementKind.COAT, kind, when, occasion, Outcome.CLEAR),
                    new LookEvent.Checked(
                        when, Check.LINER_LEAKAGE, CheckResult.PASSED, People.PROVIDER, Set.of())));
  }

  static Arbitrary<Event> events() {
    Arbitrary<Event> others =
        Combinators.combine(
                moments(),
                Arbitraries.of(Exposure.class),
                Arbitraries.of(InspectionKind.ROUTINE, InspectionKind.ADVANCED),
                Arbitraries.of(Transfer.class))
            .flatAs(
                (when, exposure, kind, transfer) ->
                    Arbitraries.of(
                        new UseEvent.Issued(when, "Member 7"),
                        new UseEvent.Returned(when),
                        new UseEvent.Used(when),
                        new ExposureEvent.Exposed(when, exposure),
                        new UseEvent.Moved(when, transfer, "Station 2"),
                        new UseEvent.TakenOut(when, "stored"),
                        new UseEvent.BackInService(when),
                        Kept.inspection(
                            ElementKind.COAT, kind, when, Occasion.PERIODIC, Outcome.FOUND)));
    return Arbitraries.frequencyOf(Tuple.of(2, done()), Tuple.of(1, others));
  }

  static Arbitrary<Kept> coats() {
    Arbitrary<MarkedDate> inService =
        Arbitraries.frequencyOf(
            Tuple.of(5, ArbitrariesOfDates.marked(FitGear.MADE, FitGear.IN_SERVICE.plusMonths(8))),
            Tuple.of(1, Arbitraries.just(MarkedDate.unknown())));
    return Combinators.combine(inService, events().list().ofMaxSize(12))
        .as(
            (since, events) ->
                Kept.inServiceSince(ElementKind.COAT, since)
                    .with(events.toArray(new Event[0]))
                    .onDuty(FitGear.AS_OF.minusDays(40), FitGear.AS_OF.minusDays(3)));
  }

  static Arbitrary<Timing> timings() {
    Arbitrary<Timing> every =
        Combinators.combine(
                Arbitraries.of(Start.class),
                Arbitraries.integers().between(1, 40),
                Arbitraries.integers().between(1, 3),
                Arbitraries.integers().between(1, 24))
            .as(Timing.Every::new);
    Arbitrary<Timing> after =
        Combinators.combine(
                Arbitraries.of(Trigger.class), Arbitraries.integers().between(0, 30).optional(0.5))
            .as(Timing.After::new);
    return Arbitraries.oneOf(every, after);
  }

  /** Rows of a coat, each with a key of its own. */
  static Arbitrary<TaskRow> rows() {
    Discharge cleaned = new Discharge.Cleaned(CleaningKind.ADVANCED);
    Discharge checked = new Discharge.Checked(Check.LINER_LEAKAGE);
    Arbitrary<TaskRow> others =
        Combinators.combine(
                Arbitraries.of(
                    cleaned,
                    checked,
                    new Discharge.Inspected(InspectionKind.ROUTINE),
                    new Discharge.Inspected(InspectionKind.ADVANCED)),
                timings())
            .as((doneBy, timing) -> Kept.row(ElementKind.COAT, name(doneBy), doneBy, timing));
    Arbitrary<TaskRow> reserve =
        Arbitraries.of(
            Kept.advanced(ElementKind.COAT),
            Kept.inReserve(Kept.advanced(ElementKind.COAT)),
            Kept.liner());
    return Arbitraries.frequencyOf(Tuple.of(4, others), Tuple.of(1, reserve));
  }

  private static String name(Discharge doneBy) {
    if (doneBy instanceof Discharge.Inspected inspected) {
      return "look-" + Integer.toString(inspected.kind().ordinal());
    }
    return doneBy instanceof Discharge.Cleaned ? "clean" : "check";
  }

  static Arbitrary<List<TaskRow>> tables() {
    return rows().list().ofMinSize(1).ofMaxSize(5).map(ArbitrariesOfSchedules::distinct);
  }

  static List<TaskRow> distinct(List<TaskRow> rows) {
    List<TaskRow> distinct = new ArrayList<>();
    for (TaskRow row : rows) {
      if (distinct.stream().noneMatch(each -> each.key().equals(row.key()))) {
        distinct.add(row);
      }
    }
    return distinct;
  }

  /** Earlier counts as earlier: not known since when before all, not due after all. */
  static LocalDate day(Optional<Due> due) {
    return due.map(each -> each.by().orElse(LocalDate.MIN)).orElse(LocalDate.MAX);
  }
}
