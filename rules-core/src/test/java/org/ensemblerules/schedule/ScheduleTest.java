package org.ensemblerules.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.People;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What falls due in intervals, what ends it, and what was missed. In service since 2020-06-01. */
class ScheduleTest {
  private static final LocalDate AS_OF = FitGear.AS_OF;
  private static final Kept HELMET = Kept.of(ElementKind.HELMET);
  private static final Schedule YEARLY = Kept.schedule(Kept.advanced(ElementKind.HELMET));
  private static final Timing TWICE = new Timing.Every(Start.ISSUE, 12, 2, 12);
  private static final Timing HALF_YEARLY = new Timing.Every(Start.ISSUE, 6, 1, 6);

  private static Optional<LocalDate> day(String text) {
    return Optional.ofNullable(text).map(LocalDate::parse);
  }

  private static Due only(Schedule schedule, Kept kept) {
    List<Due> due = Kept.tasks(schedule, kept, AS_OF);
    assertThat(due).hasSize(1);
    return due.get(0);
  }

  @ParameterizedTest
  @CsvSource({
    ", 2021-06-01",
    "2024-01-10, 2025-01-10",
    "2024-01, 2025-01-01",
    "2024, 2021-06-01",
    "2024-02-29, 2025-02-28",
    "UNKNOWN, 2021-06-01",
    "2024-06-16, 2021-06-01",
    "2020-03-10, 2021-06-01"
  })
  void anAdvancedInspectionEveryYear(String last, String by) {
    Kept kept = last == null ? HELMET : HELMET.inspected(InspectionKind.ADVANCED, last);
    Due due = only(YEARLY, kept);
    assertThat(due.by()).isEqualTo(day(by));
    assertThat(due.row().orElseThrow().key().value()).contains("interval/ADVANCED/HELMET");
    assertThat(due.isOverdue(AS_OF)).isEqualTo(day(by).orElseThrow().isBefore(AS_OF));
  }

  @Test
  void anInspectionThatDoesNotCountDischargesNothing() {
    Event dirty =
        new LookEvent.Inspected(
            FitGear.inspection(InspectionKind.ADVANCED, ElementKind.HELMET, AS_OF.minusDays(5))
                .gearClean(YesNoUnknown.NO)
                .build(),
            0);
    assertThat(only(YEARLY, HELMET.with(dirty)).by()).isEqualTo(day("2021-06-01"));
  }

  @Test
  void reasonsSayWhatCountsAndFromWhen() {
    assertThat(only(YEARLY, HELMET).reason())
        .isEqualTo(
            "ADVANCED inspection: none on record counts; in every 12 months, first by 12 months"
                + " from IN_SERVICE (2020-06-01)");
    assertThat(only(YEARLY, HELMET.inspected(InspectionKind.ADVANCED, "2024-01-10")).reason())
        .startsWith("ADVANCED inspection: done 2024-01-10; in every 12 months");
  }

  @Test
  void daysOverdueCountFromTheDayAfter() {
    Due due = only(YEARLY, HELMET.inspected(InspectionKind.ADVANCED, "2023-06-14"));
    assertThat(due.daysOverdue(AS_OF)).isEqualTo(OptionalLong.of(1));
    assertThat(due.daysOverdue(AS_OF.minusDays(1))).isEqualTo(OptionalLong.of(0));
    assertThat(due.isOverdue(AS_OF.minusDays(1))).isFalse();
    assertThat(due.daysOverdue(AS_OF.minusDays(10))).isEqualTo(OptionalLong.of(0));
  }

  @Test
  void notKnownSinceWhenInService() {
    Kept kept = Kept.inServiceSince(ElementKind.HELMET, MarkedDate.unknown());
    Due due = only(YEARLY, kept);
    assertThat(due.by()).isEmpty();
    assertThat(due.isOverdue(LocalDate.of(1900, 1, 1))).isTrue();
    assertThat(due.daysOverdue(AS_OF)).isEmpty();
    assertThat(only(YEARLY, kept.inspected(InspectionKind.ADVANCED, "2024-01-10")).by())
        .isEqualTo(day("2025-01-10"));
  }

  @Test
  void noRowSaysHowOften() {
    ScheduleTables tables = Kept.tables(List.of(Kept.advanced(ElementKind.HELMET)));
    Schedule schedule =
        new Schedule(
            new ScheduleTables(
                tables.tasks(),
                IntervalTable.of(List.of()).orElseThrow(),
                tables.ageLimits(),
                tables.care(),
                tables.evidence()));
    Due due = only(schedule, HELMET);
    assertThat(due.by()).isEmpty();
    assertThat(due.reason()).isEqualTo("no row says how often ADVANCED inspection is due");
  }

  @ParameterizedTest
  @CsvSource({
    "NO, , 2023-06-01",
    "UNKNOWN, , 2022-06-01",
    "YES, , 2022-06-01",
    "NO, 2022-01-01, 2023-06-01",
    "NO, 2023-05-01, 2024-05-01"
  })
  void completeLinerInspection(YesNoUnknown cbrn, String last, String by) {
    Kept coat =
        Kept.of(ElementKind.COAT).with(FitGear.element(ElementKind.COAT).cbrnOption(cbrn).build());
    Kept kept = last == null ? coat : coat.inspected(InspectionKind.COMPLETE_LINER, last);
    assertThat(only(Kept.schedule(Kept.liner()), kept).by()).isEqualTo(day(by));
  }

  @ParameterizedTest
  @CsvSource({
    ", , 2021-06-01",
    "2020-10-01, , 2021-06-01",
    "2023-10-01, , 2021-06-01",
    "2020-08-01, 2020-10-01, 2021-08-01",
    "2023-08-31, 2024-02-29, 2024-08-31",
    "2024-02-29, 2024-03-05, 2025-02-28",
    "2024-02-29#1, 2024-02-29#2, 2021-06-01",
    "2024-02, 2024-02-01, 2021-06-01",
    "2024-02, 2024-02-27, 2021-06-01",
    "2023-12, 2024-02-27, 2024-12-01"
  })
  void cleanedTwiceInAnyTwelveMonths(String one, String other, String by) {
    Schedule schedule = Kept.schedule(Kept.cleaning(ElementKind.HELMET, TWICE));
    Kept kept = HELMET;
    kept = one == null ? kept : kept.cleaned(one);
    kept = other == null ? kept : kept.cleaned(other);
    assertThat(only(schedule, kept).by()).isEqualTo(day(by));
  }

  @ParameterizedTest
  @CsvSource({", 2020-12-01", "2024-03-31, 2024-09-30", "2023-08-31, 2024-02-29"})
  void cleanedAtLeastEverySixMonths(String last, String by) {
    Schedule schedule = Kept.schedule(Kept.cleaning(ElementKind.HELMET, HALF_YEARLY));
    assertThat(only(schedule, last == null ? HELMET : HELMET.cleaned(last)).by())
        .isEqualTo(day(by));
  }

  @Test
  void onlyCleaningsThatCount() {
    Schedule schedule = Kept.schedule(Kept.cleaning(ElementKind.HELMET, HALF_YEARLY));
    Kept exposure =
        HELMET.with(
            Kept.cleaning(Kept.on("2024-03-01"), CleaningKind.EXPOSURE_REDUCTION),
            Kept.cleaning(Kept.on("2024-03-01"), CleaningKind.SANITIZING),
            WorkEvent.Cleaned.whole(
                Kept.on("2024-03-01"), CleaningKind.ADVANCED, People.UNTRAINED, Set.of()));
    assertThat(only(schedule, exposure).by()).isEqualTo(day("2020-12-01"));
    WashRecord boiled =
        WashRecord.builder().waterTemperature(Quantity.of("95", Unit.DEGREE_CELSIUS)).build();
    Kept outsideLimits =
        HELMET.with(
            new WorkEvent.Cleaned(
                Kept.on("2024-03-01"),
                CleaningKind.ADVANCED,
                People.permitted(Task.ADVANCED_CLEANING),
                Set.of(),
                new WashedLayers.Whole(),
                false,
                Optional.of(boiled)));
    assertThat(only(schedule, outsideLimits).by()).isEqualTo(day("2020-12-01"));
    assertThat(only(schedule, HELMET.cleaned("2024-03-01")).by()).isEqualTo(day("2024-09-01"));
  }

  @Test
  void exposureReductionNeverCounts() {
    for (CleaningKind kind : CleaningKind.values()) {
      TaskRow row = Kept.row(ElementKind.HELMET, "clean", new Discharge.Cleaned(kind), HALF_YEARLY);
      Kept cleaned = HELMET.with(Kept.cleaning(Kept.on("2024-03-01"), kind));
      assertThat(only(Kept.schedule(row), cleaned).by())
          .isEqualTo(day(kind == CleaningKind.EXPOSURE_REDUCTION ? "2020-12-01" : "2024-09-01"));
    }
  }

  private static final Schedule HALF_YEARLY_CLEANING =
      Kept.schedule(Kept.cleaning(ElementKind.HELMET, HALF_YEARLY));

  private static final Kept NO_START =
      Kept.inServiceSince(ElementKind.HELMET, MarkedDate.unknown());

  @Test
  void aRecordThatStatesNoStartIsNotOneOfGearThatWasNeverIssued() {
    Due due = only(HALF_YEARLY_CLEANING, NO_START);
    assertThat(due.by()).isEqualTo(day("2020-09-01"));
    assertThat(due.reason())
        .endsWith(
            "first by 6 months from ISSUE (2020-03-01); the record does not state when it was"
                + " placed in service, so the earliest day that is possible counts");
    assertThat(HALF_YEARLY_CLEANING.exempt(NO_START.record(), AS_OF)).isEmpty();
    // That it was issued then does not say that it was not in service before.
    assertThat(only(HALF_YEARLY_CLEANING, NO_START.issued("2024-03")).by())
        .isEqualTo(day("2020-09-01"));
    Element noDate =
        FitGear.element(ElementKind.HELMET)
            .inService(MarkedDate.unknown())
            .label(FitGear.label().manufactured(MarkedDate.unknown()).build())
            .build();
    assertThat(only(HALF_YEARLY_CLEANING, HELMET.with(noDate)).by()).isEmpty();
  }

  @Test
  void aLabelThatIsLeftOutLeavesTheDayOfManufactureOpen() {
    Element noLabel =
        Element.builder(new ElementId("HELMET 1"), ElementKind.HELMET, Use.STRUCTURAL)
            .cbrnOption(YesNoUnknown.NO)
            .build();
    assertThat(only(HALF_YEARLY_CLEANING, HELMET.with(noLabel)).by()).isEmpty();
  }

  @Test
  void onlyStockThatIsStatedIsStock() {
    Kept stock = NO_START.stocked("2024-01-10");
    assertThat(Kept.tasks(HALF_YEARLY_CLEANING, stock, AS_OF)).isEmpty();
    assertThat(HALF_YEARLY_CLEANING.exempt(stock.record(), AS_OF))
        .extracting(Exempt::why)
        .containsExactly("in stock and not issued since; the time begins with the first issue");
    assertThat(HALF_YEARLY_CLEANING.missed(stock.record(), AS_OF)).isEmpty();
    assertThat(only(HALF_YEARLY_CLEANING, NO_START.stocked("2024-06-16")).by())
        .isEqualTo(day("2020-09-01"));
    assertThat(only(HALF_YEARLY_CLEANING, NO_START.stocked("2024")).by())
        .isEqualTo(day("2020-09-01"));
  }

  @Test
  void whatWasInStockCountsFromThereOnceItWasIssued() {
    Kept stock = NO_START.stocked("2024-01-10");
    assertThat(only(HALF_YEARLY_CLEANING, stock.issued("2024-03")).by())
        .isEqualTo(day("2024-07-10"));
    assertThat(only(HALF_YEARLY_CLEANING, stock.issued("UNKNOWN")).by())
        .isEqualTo(day("2020-09-01"));
    assertThat(only(HALF_YEARLY_CLEANING, stock.used("2023-05-01")).by())
        .isEqualTo(day("2020-09-01"));
    assertThat(Kept.tasks(HALF_YEARLY_CLEANING, stock.issued("2024-06-16"), AS_OF)).isEmpty();
  }

  @Test
  void placingInServiceStartsTheTimeUnlessAUseCameBefore() {
    assertThat(only(HALF_YEARLY_CLEANING, HELMET.issued("2024-03")).by())
        .isEqualTo(day("2020-12-01"));
    assertThat(only(HALF_YEARLY_CLEANING, HELMET.used("2020-05-01")).by())
        .isEqualTo(day("2020-11-01"));
    assertThat(only(HALF_YEARLY_CLEANING, HELMET.used("UNKNOWN")).by())
        .isEqualTo(day("2020-09-01"));
  }

  @Test
  void theTimeFromManufacture() {
    TaskRow row = Kept.cleaning(ElementKind.HELMET, new Timing.Every(Start.MANUFACTURE, 24, 1, 12));
    assertThat(only(Kept.schedule(row), HELMET).by()).isEqualTo(day("2022-03-01"));
    Element noDate =
        FitGear.element(ElementKind.HELMET)
            .label(FitGear.label().manufactured(MarkedDate.unknown()).build())
            .build();
    assertThat(only(Kept.schedule(row), HELMET.with(noDate)).by()).isEmpty();
  }

  @Test
  void theAgeOfEachLayerByItsOwnLabel() {
    Element relined =
        FitGear.element(ElementKind.COAT)
            .layer(
                LayerKind.LINER_SYSTEM,
                FitGear.label().manufactured(MarkedDate.parse("2023-05")).build())
            .build();
    List<Due> due = Kept.schedule().due(Kept.of(ElementKind.COAT).with(relined).record(), AS_OF);
    assertThat(due).extracting(Due::task).containsOnly(TaskKey.LEAVE_SERVICE);
    assertThat(due)
        .extracting(each -> each.layer().orElseThrow() + " " + each.by().orElseThrow())
        .containsExactly("OUTER_SHELL 2030-02-28", "LINER_SYSTEM 2033-04-30");
    Element unlabeled =
        FitGear.element(ElementKind.COAT)
            .layer(
                LayerKind.OUTER_SHELL, FitGear.label().manufactured(MarkedDate.unknown()).build())
            .build();
    assertThat(Kept.schedule().due(Kept.of(ElementKind.COAT).with(unlabeled).record(), AS_OF))
        .first()
        .satisfies(
            each -> {
              assertThat(each.by()).isEmpty();
              assertThat(each.reason()).contains("date of manufacture unknown");
            });
  }

  @Test
  void noLabelAtAll() {
    Element bare =
        Element.builder(HELMET.element().id(), ElementKind.HELMET, HELMET.element().use()).build();
    assertThat(Kept.schedule().due(HELMET.with(bare).record(), AS_OF))
        .extracting(Due::reason)
        .containsExactly("no label is known");
  }

  @ParameterizedTest
  @CsvSource({"2024-06-15, true", "2024, true", "UNKNOWN, true", "2024-06-16, false"})
  void nothingIsDueOnceItLeftForGood(String date, boolean ended) {
    for (Event event :
        List.of(
            new EndEvent.Retired(Kept.on(date), "worn out"),
            new EndEvent.Disposed(Kept.on(date), "cut up"))) {
      ServiceRecord record = HELMET.with(event).record();
      assertThat(YEARLY.due(record, AS_OF).isEmpty()).isEqualTo(ended);
      assertThat(YEARLY.calendar(record, AS_OF, AS_OF, AS_OF.plusYears(3)).isEmpty())
          .isEqualTo(ended);
    }
  }

  @Test
  void whatWasMissedBeforeItLeftStaysMissed() {
    Kept kept = HELMET.with(new EndEvent.Retired(Kept.on("2022-07-01"), "worn out"));
    assertThat(YEARLY.missed(kept.record(), AS_OF))
        .extracting(missed -> missed.by().orElseThrow().toString())
        .containsExactly("2021-06-01", "2022-06-01");
  }

  @Test
  void missedAndLateOnes() {
    Kept kept =
        HELMET
            .inspected(InspectionKind.ADVANCED, "2021-05-31")
            .inspected(InspectionKind.ADVANCED, "2023-07-01");
    assertThat(YEARLY.missed(kept.record(), AS_OF))
        .extracting(missed -> missed.by().orElseThrow() + " " + missed.done().orElseThrow())
        .containsExactly("2022-05-31 2023-07-01", "2023-05-31 2023-07-01");
    assertThat(YEARLY.missed(kept.record(), LocalDate.of(2024, 7, 1))).hasSize(2);
    assertThat(YEARLY.missed(kept.record(), LocalDate.of(2024, 7, 2))).hasSize(3);
  }

  @Test
  void outOfServiceStopsNoClock() {
    Kept kept = HELMET.with(new UseEvent.TakenOut(Kept.on("2021-01-01"), "stored"));
    Due due = only(YEARLY, kept);
    assertThat(due.by()).isEqualTo(day("2021-06-01"));
    assertThat(due.reason()).endsWith("; out of service, so at the latest before it goes back");
    Kept back = kept.with(new UseEvent.BackInService(Kept.on("2024-01-01")));
    assertThat(only(YEARLY, back).reason()).doesNotContain("out of service");
  }

  @Test
  void theCalendarGoesOnFromEachLastDay() {
    Kept kept = HELMET.inspected(InspectionKind.ADVANCED, "2023-10-31");
    Schedule schedule =
        Kept.schedule(Kept.advanced(ElementKind.HELMET), Kept.cleaning(ElementKind.HELMET, TWICE));
    assertThat(
            schedule.calendar(
                kept.cleaned("2023-08-31").cleaned("2024-02-29").record(),
                AS_OF,
                AS_OF,
                LocalDate.of(2026, 12, 31)))
        .extracting(planned -> planned.on() + " " + planned.task())
        .containsExactly(
            "2024-08-31 advanced-cleaning",
            "2024-10-31 advanced-inspection",
            "2025-02-28 advanced-cleaning",
            "2025-08-31 advanced-cleaning",
            "2025-10-31 advanced-inspection",
            "2026-02-28 advanced-cleaning",
            "2026-08-31 advanced-cleaning",
            "2026-10-31 advanced-inspection");
  }

  @Test
  void theCalendarTakesWhatIsOverdueAsDoneOnTheDay() {
    assertThat(YEARLY.calendar(HELMET.record(), AS_OF, AS_OF, AS_OF.plusYears(2)))
        .extracting(planned -> planned.on().toString())
        .containsExactly("2025-06-15", "2026-06-15");
    assertThat(
            YEARLY.calendar(
                HELMET.record(), AS_OF, LocalDate.of(2030, 1, 1), LocalDate.of(2030, 3, 1)))
        .extracting(planned -> planned.on() + " " + planned.task())
        .containsExactly("2030-02-28 leave-service");
  }

  @Test
  void aSpanThatIsNone() {
    assertThatThrownBy(() -> YEARLY.calendar(HELMET.record(), AS_OF, AS_OF, AS_OF.minusDays(1)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("Schedule.calendar.to")
        .hasMessageContaining("2024-06-14")
        .hasMessageContaining("a day from 2024-06-15 to the year 2200");
    assertThatThrownBy(() -> YEARLY.calendar(HELMET.record(), AS_OF, AS_OF, LocalDate.MAX))
        .isInstanceOf(InvalidValueException.class);
  }
}
