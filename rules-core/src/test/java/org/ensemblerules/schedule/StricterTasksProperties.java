package org.ensemblerules.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.StrictnessLaw;

/** What is at least as strict is due no later, whatever happened to the gear. */
@PropertyDefaults(tries = 1000, edgeCases = EdgeCasesMode.NONE)
class StricterTasksProperties {
  private static final Discharge LOOKED = new Discharge.Inspected(InspectionKind.ADVANCED);

  @Provide
  Arbitrary<TaskRow> rows() {
    Arbitrary<Timing> every =
        Combinators.combine(
                Arbitraries.of(Start.IN_SERVICE, Start.IN_SERVICE, Start.ISSUE),
                Arbitraries.of(6, 12, 30),
                Arbitraries.integers().between(1, 3),
                Arbitraries.of(6, 12))
            .as(Timing.Every::new);
    Arbitrary<Timing> after =
        Combinators.combine(
                Arbitraries.of(Trigger.USE, Trigger.PRODUCTS_OF_COMBUSTION),
                Arbitraries.of(0, 1, 30).optional(0.7))
            .as(Timing.After::new);
    return Combinators.combine(
            Arbitraries.of(
                LOOKED,
                LOOKED,
                new Discharge.Cleaned(CleaningKind.ADVANCED),
                new Discharge.Checked(Check.LINER_LEAKAGE)),
            Arbitraries.oneOf(every, after),
            Arbitraries.of(true, false))
        .as(
            (doneBy, timing, exempt) -> {
              TaskRow row = Kept.row(ElementKind.COAT, "task", doneBy, timing);
              boolean may = doneBy.equals(LOOKED) && timing instanceof Timing.Every;
              return may && exempt ? Kept.inReserve(row) : row;
            });
  }

  @Provide
  Arbitrary<Kept> coats() {
    return ArbitrariesOfSchedules.coats();
  }

  @Provide
  Arbitrary<IntervalRow> intervals() {
    return Combinators.combine(
            Arbitraries.of(InspectionKind.ADVANCED, InspectionKind.COMPLETE_LINER),
            Arbitraries.of(12, 30),
            Arbitraries.of(6, 12),
            Arbitraries.of(6, 12))
        .as(
            (kind, first, withCbrnOption, repeat) ->
                new IntervalRow(
                    FrozenProvenance.of("interval"),
                    kind,
                    ElementKind.COAT,
                    Use.STRUCTURAL,
                    first,
                    withCbrnOption,
                    repeat));
  }

  private static LocalDate due(TaskRow row, Kept kept) {
    return ArbitrariesOfSchedules.day(
        Kept.tasks(Kept.schedule(row), kept, FitGear.AS_OF).stream().findFirst());
  }

  @FewestTries(500)
  @Property
  void tasks(
      @ForAll("rows") TaskRow one, @ForAll("rows") TaskRow other, @ForAll("coats") Kept kept) {
    StrictnessLaw.holds(one, other, (strict, mild) -> !due(strict, kept).isAfter(due(mild, kept)));
  }

  @Property
  void tasksPassItOn(
      @ForAll("rows") TaskRow one, @ForAll("rows") TaskRow two, @ForAll("rows") TaskRow three) {
    StrictnessLaw.passesOn(one, two, three);
  }

  private static LocalDate due(
      IntervalRow row, Kept kept, YesNoUnknown cbrnOption, LocalDate last) {
    return IntervalTable.dueBy(
            row,
            FitGear.element(ElementKind.COAT)
                .cbrnOption(cbrnOption)
                .inService(kept.element().inService())
                .build(),
            Optional.of(last).filter(FitGear.IN_SERVICE::isBefore))
        .orElse(LocalDate.MIN);
  }

  @FewestTries(500)
  @Property
  void intervals(
      @ForAll("intervals") IntervalRow one,
      @ForAll("intervals") IntervalRow other,
      @ForAll("coats") Kept kept,
      @ForAll YesNoUnknown cbrnOption,
      @ForAll @IntRange(min = -200, max = 1000) int days) {
    LocalDate last = FitGear.IN_SERVICE.plusDays(days);
    StrictnessLaw.holds(
        one,
        other,
        (strict, mild) ->
            !due(strict, kept, cbrnOption, last).isAfter(due(mild, kept, cbrnOption, last)));
  }

  /** An interval and a task for the same inspection, done on one day or never. */
  @Property
  void aTaskAndAnInterval(
      @ForAll("rows") TaskRow task,
      @ForAll("intervals") IntervalRow interval,
      @ForAll YesNoUnknown cbrnOption,
      @ForAll @IntRange(min = 0, max = 1000) int days) {
    LocalDate last = FitGear.IN_SERVICE.plusDays(days);
    Kept kept =
        new Kept(
            FitGear.element(ElementKind.COAT).cbrnOption(cbrnOption).build(), List.of(), Set.of());
    Kept done = days == 0 ? kept : kept.inspected(InspectionKind.ADVANCED, last.toString());
    LocalDate byTask = due(task, done);
    LocalDate byInterval = due(interval, done, cbrnOption, last);
    Comparison strictness = task.compareStrictness(interval);
    if (strictness.isAtLeastAsStrict()) {
      assertThat(byTask).isBeforeOrEqualTo(byInterval);
    }
    if (strictness.seenFromTheOther().isAtLeastAsStrict()) {
      assertThat(byInterval).isBeforeOrEqualTo(byTask);
    }
  }
}
