package org.ensemblerules.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.People;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What is due each time something happens, and reserve stock. */
class TriggersTest {
  private static final LocalDate AS_OF = FitGear.AS_OF;
  private static final Kept HELMET = Kept.of(ElementKind.HELMET);
  private static final Kept COAT = Kept.of(ElementKind.COAT);

  private static List<String> due(Schedule schedule, Kept kept) {
    return Kept.tasks(schedule, kept, AS_OF).stream()
        .map(due -> due.by().map(LocalDate::toString).orElse("now"))
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "2024-03-01, 2024-03-02, PERIODIC, ",
    "2024-03-01, 2024-03-01, AFTER_USE, ",
    "2024-03-01, 2024-03-01, PERIODIC, 2024-03-01",
    "2024-03-01#1, 2024-03-01#2, PERIODIC, ",
    "2024-03-01#2, 2024-03-01#1, PERIODIC, 2024-03-01",
    "2024-03-01, 2024-02-28, AFTER_USE, 2024-03-01",
    "2024-03, 2024-03-31, PERIODIC, 2024-03-01",
    "2024-03, 2024-03-31, AFTER_USE, ",
    "2024-03, 2024-04-01, PERIODIC, ",
    "UNKNOWN, 2024-04-01, AFTER_USE, now",
    "2024-06-16, , , "
  })
  void aRoutineInspectionAfterEachUse(
      String used, String inspected, Occasion occasion, String expected) {
    Kept kept = HELMET.used(used);
    kept = inspected == null ? kept : kept.inspected(InspectionKind.ROUTINE, inspected, occasion);
    assertThat(due(Kept.schedule(Kept.routine(ElementKind.HELMET, Trigger.USE)), kept))
        .isEqualTo(expected == null ? List.of() : List.of(expected));
  }

  @Test
  void theFirstOpenUseCounts() {
    Schedule schedule = Kept.schedule(Kept.routine(ElementKind.HELMET, Trigger.USE));
    Kept kept =
        HELMET
            .used("2024-01-01")
            .inspected(InspectionKind.ROUTINE, "2024-01-02")
            .used("2024-02-01")
            .used("2024-03-01");
    assertThat(due(schedule, kept)).containsExactly("2024-02-01");
    assertThat(Kept.tasks(schedule, kept, AS_OF).get(0).reason())
        .isEqualTo("used 2024-02-01, and no ROUTINE inspection is recorded after it");
    assertThat(due(schedule, kept.used("UNKNOWN"))).containsExactly("now");
    assertThat(schedule.missed(kept.record(), AS_OF))
        .extracting(missed -> missed.by().orElseThrow().toString())
        .containsExactly("2024-02-01");
  }

  @Test
  void withinANumberOfDays() {
    Schedule schedule =
        Kept.schedule(
            Kept.cleaning(ElementKind.HELMET, new Timing.After(Trigger.EXPOSURE, Optional.of(7))));
    Kept kept = HELMET.exposed("2024-02-25", Exposure.FUEL_OR_OIL);
    assertThat(due(schedule, kept)).containsExactly("2024-03-03");
    assertThat(schedule.missed(kept.record(), LocalDate.of(2024, 3, 3))).isEmpty();
    assertThat(schedule.missed(kept.record(), LocalDate.of(2024, 3, 4))).hasSize(1);
    assertThat(schedule.missed(kept.cleaned("2024-03-03").record(), AS_OF)).isEmpty();
    assertThat(schedule.missed(kept.cleaned("2024-03-04").record(), AS_OF))
        .extracting(missed -> missed.done().orElseThrow().toString())
        .containsExactly("2024-03-04");
    assertThat(
            schedule.calendar(kept.record(), LocalDate.of(2024, 3, 1), AS_OF.minusYears(1), AS_OF))
        .extracting(planned -> planned.on().toString())
        .containsExactly("2024-03-03");
  }

  @ParameterizedTest
  @EnumSource(Exposure.class)
  void cleaningAfterProductsOfCombustion(Exposure exposure) {
    Timing after = new Timing.After(Trigger.PRODUCTS_OF_COMBUSTION, Optional.empty());
    Schedule schedule = Kept.schedule(Kept.cleaning(ElementKind.HELMET, after));
    boolean calls = exposure == Exposure.PRODUCTS_OF_COMBUSTION || exposure == Exposure.UNKNOWN;
    Kept kept = HELMET.exposed("2024-03-01", exposure);
    assertThat(due(schedule, kept)).isEqualTo(calls ? List.of("2024-03-01") : List.of());
    assertThat(due(schedule, kept.cleaned("2024-03-02"))).isEmpty();
    assertThat(due(schedule, kept.cleaned("2024-03-01")).isEmpty()).isEqualTo(!calls);
    Timing any = new Timing.After(Trigger.EXPOSURE, Optional.empty());
    // Where a route of its own says what is done, an ordinary wash is added only if it is part of
    // it.
    boolean washes =
        FrozenRules.rules().careRoutes().callsForWash(kept.record().element(), exposure);
    assertThat(due(Kept.schedule(Kept.cleaning(ElementKind.HELMET, any)), kept))
        .hasSize(washes ? 1 : 0);
  }

  @Test
  void onIssueAndAtTheStartOfDuty() {
    Schedule issue = Kept.schedule(Kept.routine(ElementKind.HELMET, Trigger.ISSUE));
    Kept kept = HELMET.issued("2024-03-01");
    assertThat(due(issue, kept)).containsExactly("2024-03-01");
    assertThat(due(issue, kept.inspected(InspectionKind.ROUTINE, "2024-03-01", Occasion.ON_ISSUE)))
        .isEmpty();
    Schedule duty = Kept.schedule(Kept.routine(ElementKind.HELMET, Trigger.DUTY_PERIOD));
    Kept onDuty =
        HELMET
            .onDuty(LocalDate.of(2024, 6, 1), LocalDate.of(2024, 6, 10), AS_OF.plusDays(1))
            .inspected(InspectionKind.ROUTINE, "2024-06-01", Occasion.START_OF_DUTY);
    assertThat(due(duty, onDuty)).containsExactly("2024-06-10");
    assertThat(due(duty, HELMET)).isEmpty();
  }

  @Test
  void aRoutineInspectionThatFoundSomething() {
    TaskRow row =
        Kept.row(
            ElementKind.HELMET,
            "advanced-inspection",
            new Discharge.Inspected(InspectionKind.ADVANCED),
            new Timing.After(Trigger.ROUTINE_FOUND, Optional.empty()));
    Kept kept =
        HELMET.with(
            Kept.inspection(
                ElementKind.HELMET,
                InspectionKind.ROUTINE,
                Kept.on("2024-03-01"),
                Occasion.AFTER_USE,
                Outcome.FOUND));
    assertThat(due(Kept.schedule(row), kept)).containsExactly("2024-03-01");
    assertThat(due(Kept.schedule(row), kept.inspected(InspectionKind.ADVANCED, "2024-03-04")))
        .isEmpty();
    assertThat(due(Kept.schedule(row), HELMET.inspected(InspectionKind.ROUTINE, "2024-03-01")))
        .isEmpty();
  }

  @Test
  void aLinerThatIsSuspected() {
    TaskRow row =
        Kept.row(
            ElementKind.COAT,
            "complete-liner-inspection",
            new Discharge.Inspected(InspectionKind.COMPLETE_LINER),
            new Timing.After(Trigger.LINER_SUSPECTED, Optional.empty()));
    Kept found =
        COAT.with(
            Kept.inspection(
                ElementKind.COAT,
                InspectionKind.ADVANCED,
                Kept.on("2024-03-01"),
                Occasion.PERIODIC,
                Outcome.FOUND));
    Kept failed = COAT.with(check("2024-03-01", CheckResult.FAILED, People.DEPARTMENT));
    for (Kept kept : List.of(found, failed)) {
      assertThat(due(Kept.schedule(row), kept)).containsExactly("2024-03-01");
      assertThat(
              due(Kept.schedule(row), kept.inspected(InspectionKind.COMPLETE_LINER, "2024-03-04")))
          .isEmpty();
    }
    assertThat(
            due(
                Kept.schedule(row),
                COAT.with(check("2024-03-01", CheckResult.PASSED, People.DEPARTMENT))))
        .isEmpty();
  }

  private static Event check(String on, CheckResult result, Doer by) {
    return new LookEvent.Checked(Kept.on(on), Check.LINER_LEAKAGE, result, by, Set.of());
  }

  @Test
  void aCheckAfterARepair() {
    FindingId id = new FindingId("F1");
    Kept kept =
        COAT.with(
            new LookEvent.Found(
                new Finding(
                    id,
                    Site.parse("SEAM_MAJOR_A@OUTER_SHELL"),
                    "",
                    DefectKind.BROKEN_STITCHING,
                    new Extent.Length(Quantity.of("2", Unit.INCH)),
                    MarkedDate.parse("2024-03-01"))));
    Schedule schedule = Kept.schedule();
    assertThat(due(schedule, kept)).isEmpty();
    Kept repaired =
        kept.with(
            new WorkEvent.Repaired(
                Kept.on("2024-03-04"), RepairClass.ADVANCED, false, People.PROVIDER, Set.of(id)));
    assertThat(Kept.tasks(schedule, repaired, AS_OF))
        .singleElement()
        .satisfies(
            due -> {
              assertThat(due.task()).isEqualTo(TaskKey.CHECK_AFTERWARD);
              assertThat(due.by()).contains(LocalDate.of(2024, 3, 4));
              assertThat(due.reason())
                  .isEqualTo("SEAM_PULL for finding F1, repaired or cleaned 2024-03-04");
            });
    assertThat(due(schedule, repaired.with(pulled("2024-03-05", People.UNTRAINED, id)))).hasSize(1);
    assertThat(due(schedule, repaired.with(pulled("2024-03-04", People.PROVIDER, id)))).hasSize(1);
    assertThat(due(schedule, repaired.with(pulled("2024-03-05", People.PROVIDER, id)))).isEmpty();
  }

  private static Event pulled(String on, Doer by, FindingId id) {
    return new LookEvent.Checked(Kept.on(on), Check.SEAM_PULL, CheckResult.PASSED, by, Set.of(id));
  }

  @Test
  void aTaskDoneByAPassedCheck() {
    TaskRow row =
        Kept.row(
            ElementKind.COAT,
            "leak-check-of-our-own",
            new Discharge.Checked(Check.LINER_LEAKAGE),
            new Timing.Every(Start.IN_SERVICE, 6, 1, 6));
    Schedule schedule = Kept.schedule(row);
    assertThat(due(schedule, COAT.with(check("2024-03-01", CheckResult.PASSED, People.DEPARTMENT))))
        .containsExactly("2024-09-01");
    assertThat(due(schedule, COAT.with(check("2024-03-01", CheckResult.FAILED, People.DEPARTMENT))))
        .containsExactly("2020-12-01");
    assertThat(due(schedule, COAT.with(check("2024-03-01", CheckResult.PASSED, People.UNTRAINED))))
        .containsExactly("2020-12-01");
  }

  private static final Schedule RESERVE =
      Kept.schedule(Kept.inReserve(Kept.advanced(ElementKind.HELMET)));

  private static void exempt(Kept kept, String by) {
    assertThat(due(RESERVE, kept)).isEqualTo(by == null ? List.of() : List.of(by));
    assertThat(RESERVE.exempt(kept.record(), AS_OF)).hasSize(by == null ? 1 : 0);
  }

  @Test
  void reserveStockIsExemptUntilIssued() {
    Kept inspected =
        HELMET
            .issued("2020-06-01")
            .returned("2021-03-01")
            .inspected(InspectionKind.ADVANCED, "2021-04-01");
    exempt(inspected, null);
    assertThat(RESERVE.exempt(inspected.record(), AS_OF).get(0).why())
        .isEqualTo("in reserve: inspected 2021-04-01 and not issued since; due once it is issued");
    exempt(inspected.issued("2024-05-01"), "2024-05-01");
    exempt(inspected.used("2024-05"), "2024-05-01");
    exempt(inspected.issued("2021-05-01"), "2022-04-01");
    exempt(inspected.issued("2024-06-16"), null);
    exempt(inspected.issued("UNKNOWN"), "2022-04-01");
    Kept stock = Kept.inServiceSince(ElementKind.HELMET, MarkedDate.unknown());
    exempt(stock.inspected(InspectionKind.ADVANCED, "2021-04-01"), "2022-04-01");
    Kept shelved = stock.stocked("2021-03-01");
    exempt(shelved.inspected(InspectionKind.ADVANCED, "2021-04-01"), null);
    exempt(shelved.inspected(InspectionKind.ADVANCED, "2021-02-01"), "2022-02-01");
    exempt(
        shelved.issued("2021-03-15").inspected(InspectionKind.ADVANCED, "2021-04-01"),
        "2022-04-01");
    exempt(HELMET.inspected(InspectionKind.ADVANCED, "2021-04-01"), "2022-04-01");
    exempt(HELMET.inspected(InspectionKind.ADVANCED, "2020-04-01"), "2021-06-01");
    assertThat(RESERVE.calendar(inspected.record(), AS_OF, AS_OF, AS_OF.plusYears(2))).isEmpty();
    assertThat(RESERVE.missed(inspected.record(), AS_OF)).isEmpty();
    assertThat(RESERVE.missed(inspected.issued("2024-05-01").record(), AS_OF))
        .extracting(missed -> missed.by().orElseThrow().toString())
        .containsExactly("2024-05-01");
  }

  @Test
  void notInReserve() {
    exempt(HELMET, "2021-06-01");
    exempt(
        HELMET.issued("2020-06-01").inspected(InspectionKind.ADVANCED, "2021-04-01"), "2022-04-01");
    exempt(
        HELMET
            .issued("2020-06-01")
            .inspected(InspectionKind.ADVANCED, "2021-04-01")
            .returned("2021-05-01"),
        "2022-04-01");
    exempt(
        HELMET
            .issued("2020-06-01")
            .returned("2021-04")
            .inspected(InspectionKind.ADVANCED, "2021-04-01"),
        "2022-04-01");
    exempt(
        HELMET
            .issued("2020-06-01")
            .returned("2021-04-01")
            .inspected(InspectionKind.ADVANCED, "2021-04-01"),
        null);
  }

  @Test
  void lendingAndTransfersStopNoClock() {
    Schedule yearly = Kept.schedule(Kept.advanced(ElementKind.HELMET));
    Kept kept = HELMET.inspected(InspectionKind.ADVANCED, "2023-09-01");
    for (Transfer transfer : Transfer.values()) {
      assertThat(
              due(
                  yearly,
                  kept.with(new UseEvent.Moved(Kept.on("2024-01-01"), transfer, "Station 2"))))
          .containsExactly("2024-09-01");
    }
  }

  @Test
  void aSecondRowForTheSameTaskStandsBesideTheFirst() {
    TaskRow policy = Kept.cleaning(ElementKind.HELMET, new Timing.Every(Start.ISSUE, 1, 1, 1));
    TaskRow base = Kept.cleaning(ElementKind.HELMET, new Timing.Every(Start.ISSUE, 12, 2, 12));
    assertThat(due(Kept.schedule(base, policy), HELMET.cleaned("2024-06-01")))
        .containsExactly("2021-06-01", "2024-07-01");
    assertThat(Kept.cleaning(Kept.on("2024"), CleaningKind.ADVANCED).answers()).isEmpty();
  }
}
