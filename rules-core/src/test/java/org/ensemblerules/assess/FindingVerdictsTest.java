package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.assess.Verdicts.finding;
import static org.ensemblerules.assess.Verdicts.kinds;
import static org.ensemblerules.assess.Verdicts.onlyReason;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Headline;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What findings and failed checks do to a verdict. */
class FindingVerdictsTest {
  private static final GearCase COAT = FitGear.fit(ElementKind.COAT);

  @Test
  void aRule() {
    Reason reason =
        onlyReason(COAT.with(finding("FABRIC@OUTER_SHELL", DefectKind.CHARRING)), ReasonKind.RULE);
    assertThat(reason.rowKey())
        .map(Object::toString)
        .contains("frozen/defect/COAT/FABRIC@OUTER_SHELL/CHARRING/any");
    assertThat(reason.finding()).contains(new FindingId("F1"));
    assertThat(reason.wording()).contains("CHARRING calls for RETIRE LAYER.");
    assertThat(reason.open()).isFalse();
  }

  @Test
  void aRuleThatOnlyNotes() {
    GearCase given = COAT.with(finding("FABRIC@WINTER_LINER", DefectKind.SOILING));
    assertThat(given.verdict().service()).isEqualTo(Service.IN);
    assertThat(kinds(given.verdict())).containsExactly(ReasonKind.RULE);
    assertThat(given.verdict().openFindings()).isEmpty();
  }

  @Test
  void anOpenRule() {
    GearCase given =
        COAT.with(
            finding(
                "F1",
                "FABRIC@OUTER_SHELL",
                DefectKind.DISCOLORATION,
                new Extent.Graded(Grade.HELD),
                "2024-06-15"));
    assertThat(onlyReason(given, ReasonKind.RULE).open()).isTrue();
  }

  @Test
  void anExtentNotMeasured() {
    Reason reason =
        onlyReason(
            COAT.with(finding("FABRIC@OUTER_SHELL", DefectKind.TEAR)), ReasonKind.MUST_MEASURE);
    assertThat(reason.seen())
        .isEqualTo("TEAR at FABRIC@OUTER_SHELL; its extent must be told by LENGTH");
    assertThat(reason.effect().text()).isEqualTo("EVALUATE by MEASURE_EXTENT on PART");
    assertThat(reason.wording()).isEmpty();
    assertThat(reason.handling()).isEmpty();
    assertThat(reason.caution()).isEmpty();
  }

  @Test
  void noRule() {
    Reason reason =
        onlyReason(
            COAT.with(finding("FABRIC@OUTER_SHELL", DefectKind.ASBESTOS)), ReasonKind.NO_RULE);
    assertThat(reason.effect().text()).isEqualTo("EVALUATE by EXPERT_EVALUATION on PART");
  }

  @Test
  void noSuchPart() {
    Reason reason =
        onlyReason(COAT.with(finding("GLOVE_SHELL", DefectKind.CUT)), ReasonKind.NO_SUCH_PART);
    assertThat(reason.effect().text()).isEqualTo("EVALUATE by RECORD_CORRECTION on ELEMENT");
  }

  private static Event failed(String... ids) {
    return new LookEvent.Checked(
        Moment.on(MarkedDate.parse("2024-03-01")),
        Check.SEAM_PULL,
        CheckResult.FAILED,
        People.PROVIDER,
        Arrays.stream(ids).map(FindingId::new).collect(Collectors.toSet()));
  }

  @Test
  void aFailedCheckStands() {
    Reason reason = onlyReason(COAT.with(failed()), ReasonKind.CHECK_FAILED);
    assertThat(reason.seen())
        .isEqualTo(
            "SEAM_PULL failed on 2024-03-01, by Verified provider; settled by what names"
                + " failed:2024-03-01:SEAM_PULL");
    assertThat(reason.effect().text()).isEqualTo("EVALUATE by EXPERT_EVALUATION on ELEMENT");
    assertThat(reason.site()).hasToString("WHOLE_ELEMENT");
    assertThat(reason.finding()).isEmpty();
  }

  @Test
  void aFailedCheckIsNotSaidOfOtherFindings() {
    GearCase given =
        COAT.with(failed("F2")).with(finding("FABRIC@WINTER_LINER", DefectKind.SOILING));
    assertThat(given.verdict().reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.CHECK_FAILED)
        .singleElement()
        .satisfies(reason -> assertThat(reason.finding()).isEmpty());
  }

  @Test
  void aFailedCheckSaysForWhichFindings() {
    GearCase given =
        COAT.with(failed("F1", "F2", "F3"))
            .with(finding("FABRIC@WINTER_LINER", DefectKind.SOILING))
            .with(
                finding(
                    "F2",
                    "FABRIC@OUTER_SHELL",
                    DefectKind.SOILING,
                    new Extent.Graded(Grade.SLIGHT),
                    "2024-06-15"));
    assertThat(given.verdict().reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.CHECK_FAILED)
        .extracting(reason -> reason.finding().orElseThrow() + " " + reason.site())
        .containsExactly("F2 FABRIC@OUTER_SHELL", "F1 FABRIC@WINTER_LINER");
    assertThat(given.verdict().actions()).hasSize(1);
  }

  @Test
  void handlingDutiesAreAddedUp() {
    GearCase given =
        COAT.with(finding("WHOLE_ELEMENT", DefectKind.HAZARDOUS_CHEMICALS))
            .with(
                finding(
                    "F2",
                    "WHOLE_ELEMENT",
                    DefectKind.BODY_FLUIDS,
                    new Extent.NotMeasured(),
                    "2024-06-15"));
    assertThat(given.verdict().handling())
        .containsExactly(
            HandlingDuty.ISOLATE,
            HandlingDuty.DO_NOT_WASH,
            HandlingDuty.KEEP_OUT_OF_LIVING_AREAS,
            HandlingDuty.BIOHAZARD);
    assertThat(given.verdict().actions())
        .filteredOn(action -> !action.afterward().isEmpty())
        .extracting(Action::afterward)
        .containsExactly(Set.of(Check.CONTAMINATION_CLEARANCE));
  }

  @Test
  void whatWasTriedIsSaid() {
    GearCase given =
        COAT.with(finding("FABRIC@OUTER_SHELL", DefectKind.CHARRING))
            .with(
                new LookEvent.Checked(
                    Moment.on(MarkedDate.parse("2024-06-15")),
                    Check.EXPERT_EVALUATION,
                    CheckResult.PASSED,
                    People.PROVIDER,
                    Set.of(new FindingId("F1"))));
    assertThat(given.verdict().reasons().get(0).attempts())
        .containsExactly(
            "passed EXPERT_EVALUATION on 2024-06-15 by Verified provider: not what the finding"
                + " calls for");
    assertThat(given.verdict().openFindings()).hasSize(1);
  }

  /** One finding for each headline. */
  @ParameterizedTest
  @CsvSource({
    "WHOLE_ELEMENT, INJURY_TO_WEARER, PRESERVE",
    "FABRIC@OUTER_SHELL, CHARRING, RETIRE",
    "FABRIC@MOISTURE_BARRIER, LEAK, EVALUATE",
    "FABRIC@MOISTURE_BARRIER, TEAR, REPAIR",
    "DRAG_RESCUE_DEVICE, MISSING, REPLACE_PART",
    "WHOLE_ELEMENT, BODY_FLUIDS, CLEAN",
    "FABRIC@WINTER_LINER, SOILING, SERVICEABLE"
  })
  void headlines(String site, DefectKind defect, Headline headline) {
    Verdict verdict = COAT.with(finding(site, defect)).verdict();
    assertThat(verdict.headline()).isEqualTo(headline);
    assertThat(verdict.toString())
        .startsWith("Verdict[COAT 1 COAT STRUCTURAL as of 2024-06-15: " + verdict.service())
        .contains(", " + headline + ", goes to ");
  }

  @Test
  void theGravestActionStandsFirst() {
    GearCase given =
        COAT.with(finding("WHOLE_ELEMENT", DefectKind.BODY_FLUIDS))
            .with(
                finding(
                    "F2",
                    "FABRIC@OUTER_SHELL",
                    DefectKind.CHARRING,
                    new Extent.NotMeasured(),
                    "2024-06-15"))
            .with(
                finding(
                    "F3",
                    "FABRIC@MOISTURE_BARRIER",
                    DefectKind.LEAK,
                    new Extent.NotMeasured(),
                    "2024-06-15"));
    assertThat(given.verdict().actions())
        .extracting(action -> action.effect().text())
        .containsExactly(
            "RETIRE LAYER", "EVALUATE by LINER_LEAKAGE on LAYER", "CLEAN SANITIZING on ELEMENT");
  }
}
