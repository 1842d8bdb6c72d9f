package org.ensemblerules.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.People;

/** What holds of every schedule, whatever the rows and the history. */
@PropertyDefaults(tries = 2000, edgeCases = EdgeCasesMode.NONE)
class ScheduleLawsProperties {
  private static final LocalDate AS_OF = FitGear.AS_OF;

  @Provide
  Arbitrary<Kept> coats() {
    return ArbitrariesOfSchedules.coats();
  }

  @Provide
  Arbitrary<List<TaskRow>> tables() {
    return ArbitrariesOfSchedules.tables();
  }

  @Provide
  Arbitrary<TaskRow> rows() {
    return ArbitrariesOfSchedules.rows();
  }

  @Provide
  Arbitrary<Event> done() {
    return ArbitrariesOfSchedules.done();
  }

  /** The next due day of each row that is discharged as an event discharges. */
  private static Map<TaskRow, LocalDate> next(List<TaskRow> rows, Kept kept, Discharge doneBy) {
    Map<TaskRow, LocalDate> next = new HashMap<>();
    for (TaskRow row : rows) {
      if (row.doneBy().equals(doneBy)) {
        next.put(row, next(row, kept));
      }
    }
    return next;
  }

  private static LocalDate next(TaskRow row, Kept kept) {
    return ArbitrariesOfSchedules.day(
        Kept.tasks(Kept.schedule(row), kept, AS_OF).stream().findFirst());
  }

  private static Discharge doneBy(Event event) {
    if (event instanceof LookEvent.Inspected inspected) {
      return new Discharge.Inspected(inspected.inspection().kind());
    }
    return event instanceof WorkEvent.Cleaned cleaned
        ? new Discharge.Cleaned(cleaned.kind())
        : new Discharge.Checked(((LookEvent.Checked) event).check());
  }

  @Property
  @FewestTries(300)
  void recordingATaskDoneMovesItsNextToNoEarlierDay(
      @ForAll("coats") Kept kept,
      @ForAll("tables") List<TaskRow> rows,
      @ForAll("done") Event done) {
    Map<TaskRow, LocalDate> before = next(rows, kept, doneBy(done));
    Assume.that(!before.isEmpty());
    Map<TaskRow, LocalDate> after = next(rows, kept.with(done), doneBy(done));
    before.forEach((row, day) -> assertThat(after.get(row)).as("%s", row).isAfterOrEqualTo(day));
    Statistics.label("moved").collect(!after.equals(before));
    Statistics.label("moved").coverage(shares -> shares.check(true).percentage(p -> p >= 10));
  }

  @Property
  void movingTheLastLaterMovesTheNextToNoEarlierDay(
      @ForAll("coats") Kept kept,
      @ForAll("rows") TaskRow row,
      @ForAll @IntRange(min = 0, max = 900) int days,
      @ForAll @IntRange(min = 0, max = 400) int later) {
    LocalDate first = FitGear.IN_SERVICE.plusDays(days);
    LocalDate moved = first.plusDays(later);
    // On a day that already counts, or may, it would be one less.
    Assume.that(kept.events().stream().noneMatch(event -> mayBeOn(event, moved)));
    LocalDate with = next(row, kept.with(of(row, first)));
    assertThat(next(row, kept.with(of(row, moved)))).isAfterOrEqualTo(with);
  }

  private static boolean mayBeOn(Event event, LocalDate day) {
    MarkedDate of = MarkedDate.of(day);
    return !event.when().date().certainlyAfter(of) && !of.certainlyAfter(event.when().date());
  }

  private static Event of(TaskRow row, LocalDate day) {
    Moment when = Moment.on(MarkedDate.of(day));
    if (row.doneBy() instanceof Discharge.Inspected inspected) {
      return Kept.inspection(
          row.element(), inspected.kind(), when, Occasion.PERIODIC, Outcome.CLEAR);
    }
    if (row.doneBy() instanceof Discharge.Cleaned cleaned) {
      return Kept.cleaning(when, cleaned.kind());
    }
    return new LookEvent.Checked(
        when,
        ((Discharge.Checked) row.doneBy()).check(),
        CheckResult.PASSED,
        People.PROVIDER,
        Set.of());
  }

  @Property
  void anAddedRowMovesNothingLater(
      @ForAll("coats") Kept kept,
      @ForAll("tables") List<TaskRow> rows,
      @ForAll("rows") TaskRow more) {
    List<TaskRow> all = new ArrayList<>(rows);
    all.add(more);
    List<Due> before = dues(rows, kept);
    List<Due> after = dues(ArbitrariesOfSchedules.distinct(all), kept);
    assertThat(after).containsAll(before);
    assertThat(missed(ArbitrariesOfSchedules.distinct(all), kept)).containsAll(missed(rows, kept));
  }

  private static List<Due> dues(List<TaskRow> rows, Kept kept) {
    return new Schedule(Kept.tables(rows)).due(kept.record(), AS_OF);
  }

  private static List<Missed> missed(List<TaskRow> rows, Kept kept) {
    return new Schedule(Kept.tables(rows)).missed(kept.record(), AS_OF);
  }

  @Property
  void theOrderOfEventsAndTheirRepetitionNeverMatter(
      @ForAll("coats") Kept kept, @ForAll("tables") List<TaskRow> rows, @ForAll Random random) {
    List<Event> shuffled = new ArrayList<>(kept.events());
    // Of uses and exposures two that read alike are two.
    kept.events().stream()
        .filter(
            event -> !(event instanceof UseEvent.Used || event instanceof ExposureEvent.Exposed))
        .forEach(shuffled::add);
    Collections.shuffle(shuffled, random);
    Kept other = new Kept(kept.element(), shuffled, kept.dutyPeriods());
    Schedule schedule = new Schedule(Kept.tables(rows));
    assertThat(schedule.due(other.record(), AS_OF)).isEqualTo(schedule.due(kept.record(), AS_OF));
    assertThat(schedule.missed(other.record(), AS_OF))
        .isEqualTo(schedule.missed(kept.record(), AS_OF));
    assertThat(schedule.exempt(other.record(), AS_OF))
        .isEqualTo(schedule.exempt(kept.record(), AS_OF));
    LocalDate to = AS_OF.plusYears(2);
    assertThat(schedule.calendar(other.record(), AS_OF, AS_OF, to))
        .isEqualTo(schedule.calendar(kept.record(), AS_OF, AS_OF, to));
  }

  @Property
  @FewestTries(300)
  void whatIsOverdueIsMissedAndWhatComesIsNot(
      @ForAll("coats") Kept kept, @ForAll("rows") TaskRow row) {
    Assume.that(!(row.timing() instanceof Timing.After));
    Schedule schedule = Kept.schedule(row);
    Optional<Due> due = Kept.tasks(schedule, kept, AS_OF).stream().findFirst();
    List<Missed> open =
        schedule.missed(kept.record(), AS_OF).stream()
            .filter(missed -> missed.done().isEmpty())
            .toList();
    boolean overdue = due.flatMap(Due::by).isPresent() && due.orElseThrow().isOverdue(AS_OF);
    assertThat(!open.isEmpty()).isEqualTo(overdue);
    if (overdue) {
      assertThat(open.get(0).by()).isEqualTo(due.orElseThrow().by());
    }
    Statistics.collect(overdue);
    Statistics.coverage(shares -> shares.check(true).percentage(share -> share >= 10));
  }

  @Property
  void theLinerIsInspectedNoLaterWithTheCbrnOption(@ForAll("coats") Kept kept) {
    Element with =
        FitGear.element(kept.element().kind())
            .inService(kept.element().inService())
            .cbrnOption(YesNoUnknown.YES)
            .build();
    assertThat(next(Kept.liner(), kept.with(with))).isBeforeOrEqualTo(next(Kept.liner(), kept));
    assertThat(Kept.liner().doneBy())
        .isEqualTo(new Discharge.Inspected(InspectionKind.COMPLETE_LINER));
  }
}
