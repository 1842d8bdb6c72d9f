package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.assess.Verdicts.finding;
import static org.ensemblerules.assess.Verdicts.kinds;
import static org.ensemblerules.assess.Verdicts.onlyReason;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Headline;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Records that contradict themselves or the calendar, and service that has ended. */
class RecordVerdictsTest {
  private static final GearCase HELMET = FitGear.fit(ElementKind.HELMET);

  private static Moment on(String date) {
    return Moment.on(MarkedDate.parse(date));
  }

  private static String contradiction(GearCase given) {
    Reason reason = onlyReason(given, ReasonKind.CONTRADICTION);
    assertThat(reason.effect().text()).isEqualTo("EVALUATE by RECORD_CORRECTION on ELEMENT");
    return reason.seen();
  }

  @Test
  void anEventInTheFuture() {
    assertThat(contradiction(HELMET.with(new UseEvent.Returned(on("2024-06-16")))))
        .isEqualTo("history Returned: found 2024-06-16, allowed: a date not after 2024-06-15");
    assertThat(contradiction(HELMET.with(new UseEvent.Returned(on("2024-07")))))
        .contains("found 2024-07,");
    assertThat(HELMET.with(new UseEvent.Returned(on("2024-06"))).verdict().service())
        .isEqualTo(Service.IN);
    assertThat(HELMET.with(new UseEvent.Returned(on("2024-06-15"))).verdict().service())
        .isEqualTo(Service.IN);
  }

  @Test
  void aFindingInTheFuture() {
    GearCase given =
        HELMET.with(
            finding(
                "F9",
                "FACESHIELD",
                DefectKind.SCRATCHES_LIMITING_SIGHT,
                new Extent.NotMeasured(),
                "2024-06-16"));
    assertThat(given.verdict().reasons())
        .extracting(Reason::seen)
        .contains("finding F9: found 2024-06-16, allowed: a date not after 2024-06-15");
  }

  @Test
  void placedInServiceInTheFuture() {
    assertThat(
            contradiction(
                HELMET.with(
                    FitGear.element(ElementKind.HELMET)
                        .inService(MarkedDate.parse("2024-06-16"))
                        .build())))
        .isEqualTo("element.inService: found 2024-06-16, allowed: a date not after 2024-06-15");
  }

  private static GearCase made(String date) {
    Label label = FitGear.label().manufactured(MarkedDate.parse(date)).build();
    return HELMET.with(FitGear.element(ElementKind.HELMET).label(label).build());
  }

  @Test
  void madeInTheFuture() {
    assertThat(made("2024-06-16").verdict().reasons())
        .allMatch(reason -> reason.kind() == ReasonKind.CONTRADICTION)
        .extracting(Reason::seen)
        .contains("label.manufactured: found 2024-06-16, allowed: a date not after 2024-06-15");
  }

  @Test
  void inServiceBeforeItWasMade() {
    GearCase given = made("2020-06-02");
    assertThat(given.verdict().reasons())
        .extracting(Reason::seen)
        .containsExactlyInAnyOrder(
            "element.inService: found 2020-06-01, allowed: a date not before its manufacture,"
                + " 2020-06-02",
            "history Issued: found 2020-06-01, allowed: a date not before its manufacture,"
                + " 2020-06-02");
    assertThat(made("2020-06-01").verdict().service()).isEqualTo(Service.IN);
    assertThat(made("2020-06").verdict().service()).isEqualTo(Service.IN);
    assertThat(made("2020").verdict().service()).isEqualTo(Service.IN);
    assertThat(made("2021").verdict().service()).isEqualTo(Service.OUT);
  }

  @Test
  void aFindingFromBeforeItWasMade() {
    GearCase given =
        FitGear.fit(ElementKind.COAT)
            .with(
                finding(
                    "F1",
                    "FABRIC@WINTER_LINER",
                    DefectKind.SOILING,
                    new Extent.NotMeasured(),
                    "2020-02-29"));
    assertThat(given.verdict().reasons())
        .extracting(Reason::seen)
        .contains(
            "finding F1: found 2020-02-29, allowed: a date not before its manufacture,"
                + " 2020-03-01");
  }

  @Test
  void oneIdForTwoFindings() {
    GearCase given =
        FitGear.fit(ElementKind.COAT)
            .with(finding("FABRIC@WINTER_LINER", DefectKind.SOILING))
            .with(
                finding(
                    "F1",
                    "FABRIC@WINTER_LINER",
                    DefectKind.SOILING,
                    new Extent.Count(1),
                    "2024-06-15"));
    assertThat(given.verdict().reasons())
        .extracting(Reason::seen)
        .contains("finding F1: found two different findings, allowed: each id once");
    GearCase same =
        FitGear.fit(ElementKind.COAT)
            .with(finding("FABRIC@WINTER_LINER", DefectKind.SOILING))
            .with(finding("FABRIC@WINTER_LINER", DefectKind.SOILING));
    assertThat(same.verdict().service()).isEqualTo(Service.IN);
  }

  @Test
  void aDayBeforeTheEditionTookEffect() {
    GearCase given =
        new GearCase(HELMET.element(), List.of(), List.of(), List.of(), FrozenRules.EFFECTIVE);
    assertThat(kinds(given.verdict())).doesNotContain(ReasonKind.EDITION_NOT_IN_FORCE);
    Verdict early = given.on(FrozenRules.EFFECTIVE.minusDays(1)).verdict();
    assertThat(early.service()).isEqualTo(Service.OUT);
    assertThat(early.reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.EDITION_NOT_IN_FORCE)
        .singleElement()
        .satisfies(
            reason ->
                assertThat(reason.seen())
                    .isEqualTo("asOf is 2018-06-30; FROZEN_2020 took effect 2018-07-01"));
  }

  @ParameterizedTest
  @CsvSource({"2024-06-15, true", "2022, true", "UNKNOWN, true", "2024, true", "2024-06-16, false"})
  void serviceThatHasEnded(String date, boolean ended) {
    for (Event event :
        new Event[] {
          new EndEvent.Retired(on(date), "worn out"), new EndEvent.Disposed(on(date), "cut up")
        }) {
      Verdict verdict = HELMET.with(event).verdict();
      assertThat(kinds(verdict).contains(ReasonKind.LEFT_SERVICE)).isEqualTo(ended);
      assertThat(verdict.service()).isEqualTo(Service.OUT);
      assertThat(verdict.headline()).isEqualTo(ended ? Headline.RETIRE : Headline.EVALUATE);
    }
  }

  @Test
  void serviceThatHasEndedSaysHow() {
    assertThat(
            onlyReason(
                    HELMET.with(new EndEvent.Retired(on("2024-06-15"), "worn out")),
                    ReasonKind.LEFT_SERVICE)
                .seen())
        .isEqualTo("retired: worn out, 2024-06-15");
    assertThat(
            onlyReason(
                    HELMET.with(new EndEvent.Disposed(on("2024-06-15"), "cut up")),
                    ReasonKind.LEFT_SERVICE)
                .seen())
        .isEqualTo("disposed of, 2024-06-15");
  }

  @Test
  void takenOutOfService() {
    GearCase out = HELMET.with(new UseEvent.TakenOut(on("2024-03-01"), "sent away"));
    Reason reason = onlyReason(out, ReasonKind.OUT_OF_SERVICE);
    assertThat(reason.seen())
        .isEqualTo("taken out of service 2024-03-01: sent away; not certainly back since");
    assertThat(reason.effect().text()).isEqualTo("EVALUATE by RETURN_TO_SERVICE on ELEMENT");
    assertThat(out.with(new UseEvent.BackInService(on("2024-03-02"))).verdict().service())
        .isEqualTo(Service.IN);
    assertThat(out.with(new UseEvent.BackInService(on("2024-03-01"))).verdict().service())
        .isEqualTo(Service.OUT);
    assertThat(out.on(LocalDate.of(2024, 2, 29)).verdict().reasons())
        .extracting(Reason::kind)
        .doesNotContain(ReasonKind.OUT_OF_SERVICE);
  }

  @Test
  void backAndNeverOut() {
    assertThat(contradiction(HELMET.with(new UseEvent.BackInService(on("2024-03-02")))))
        .isEqualTo("history BackInService: found 2024-03-02, allowed: taken out of service before");
  }

  @Test
  void issuedWhileAnotherHoldsIt() {
    assertThat(contradiction(HELMET.with(new UseEvent.Issued(on("2024-03-02"), "Member 8"))))
        .isEqualTo(
            "history Issued: found 2024-03-02 to Member 8, allowed: returned or moved on since"
                + " 2020-06-01, when another got it");
  }

  @ParameterizedTest
  @CsvSource({"NO, false", "UNKNOWN, false", "YES, true"})
  void alteredWithoutApproval(YesNoUnknown approved, boolean in) {
    GearCase given = HELMET.with(new WorkEvent.Modified(on("2024-03-01"), "a bracket", approved));
    if (in) {
      assertThat(given.verdict().service()).isEqualTo(Service.IN);
      return;
    }
    assertThat(onlyReason(given, ReasonKind.ALTERED).seen())
        .isEqualTo("altered 2024-03-01: a bracket; approved by the manufacturer: " + approved);
    assertThat(given.with(evaluated("2024-03-02", People.MAKER)).verdict().service())
        .isEqualTo(Service.IN);
    assertThat(given.with(evaluated("2024-03-02", People.UNTRAINED)).verdict().service())
        .isEqualTo(Service.OUT);
    assertThat(given.with(evaluated("2024-03-01", People.MAKER)).verdict().service())
        .isEqualTo(Service.OUT);
  }

  private static Event evaluated(String date, Doer by) {
    return new LookEvent.Checked(
        on(date), Check.EXPERT_EVALUATION, CheckResult.PASSED, by, Set.of());
  }

  @Test
  void exposedAndNotInspectedSince() {
    GearCase given =
        HELMET.with(new ExposureEvent.Exposed(on("2024-06-15"), Exposure.ORDINARY_SOILING));
    assertThat(given.verdict().reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.USED_SINCE_INSPECTION)
        .extracting(Reason::seen)
        .containsExactly(
            "exposed to ORDINARY_SOILING 2024-06-15, and no inspection that counts is recorded"
                + " after it; Inspected of 2024-06-15 as well, and in order once both have their"
                + " orderInDay");
    assertThat(
            kinds(
                HELMET
                    .with(new ExposureEvent.Exposed(on("2024-06-14"), Exposure.ORDINARY_SOILING))
                    .verdict()))
        .doesNotContain(ReasonKind.USED_SINCE_INSPECTION);
  }
}
