package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.testkit.ShippedWork;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Test;

/**
 * A check that settles nothing by itself, by the shipped tables: the way back names it and whoever
 * has the last word, and both are needed.
 */
class TriedFirstTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);
  private static final Kind HELMET = new Kind(ElementKind.HELMET, Use.STRUCTURAL);
  private static final FindingId ID = new FindingId("F1");
  private static final Extent UNTRIED = new Extent.Graded(Grade.NOT_TRIED);

  private static MarkedDate before(int days) {
    return MarkedDate.of(ShippedGear.AS_OF.minusDays(days));
  }

  private static ShippedCase found(Kind kind, String site, DefectKind defect, Extent extent) {
    return ShippedCase.fit(RULES, kind)
        .with(
            new LookEvent.Found(new Finding(ID, Site.parse(site), "", defect, extent, before(20))));
  }

  private static ShippedCase passed(ShippedCase given, int daysBefore, Check check) {
    return given.with(ShippedWork.passed(RULES, Moment.on(before(daysBefore)), check, Set.of(ID)));
  }

  private static List<String> steps(ShippedCase given) {
    return ((WayBack.Steps) given.verdict().wayBack())
        .steps().stream().map(step -> step.effect().text()).toList();
  }

  private static Service service(ShippedCase given) {
    return given.verdict().service();
  }

  @Test
  void theTrainedInspectorTriesAndJudgesDiscoloredCloth() {
    ShippedCase faded = found(COAT, "FABRIC@OUTER_SHELL", DefectKind.DISCOLORATION, UNTRIED);
    assertThat(steps(faded))
        .containsExactly(
            "EVALUATE by STRENGTH_BY_THUMBS on PART",
            "EVALUATE by INSPECTOR_EVALUATION on PART",
            "EVALUATE by ROUTINE_INSPECTION on ELEMENT");
    ShippedCase held = passed(faded, 10, Check.STRENGTH_BY_THUMBS);
    assertThat(steps(held))
        .containsExactly(
            "EVALUATE by INSPECTOR_EVALUATION on PART",
            "EVALUATE by ROUTINE_INSPECTION on ELEMENT");
    assertThat(held.verdict().reasons())
        .anySatisfy(
            reason -> {
              assertThat(reason.seen()).isEqualTo("DISCOLORATION at FABRIC@OUTER_SHELL, HELD");
              assertThat(reason.rowKey().orElseThrow().value()).contains("discolored-cloth-held");
            });
    ShippedCase judged = passed(held, 9, Check.INSPECTOR_EVALUATION);
    assertThat(service(judged)).isEqualTo(Service.IN);
    assertThat(service(passed(faded, 9, Check.INSPECTOR_EVALUATION))).isEqualTo(Service.OUT);
  }

  @Test
  void anExpertJudgesCharThatSomebodyHasTried() {
    ShippedCase charred = found(COAT, "FABRIC@OUTER_SHELL", DefectKind.CHARRING, UNTRIED);
    assertThat(steps(charred))
        .startsWith(
            "EVALUATE by STRENGTH_BY_THUMBS on PART", "EVALUATE by EXPERT_EVALUATION on PART");
    ShippedCase held = passed(charred, 10, Check.STRENGTH_BY_THUMBS);
    assertThat(service(passed(held, 9, Check.EXPERT_EVALUATION))).isEqualTo(Service.IN);
    // The inspector's word is not enough for what heat did, nor the expert's for what nobody tried.
    assertThat(service(passed(held, 9, Check.INSPECTOR_EVALUATION))).isEqualTo(Service.OUT);
    ShippedCase untried = passed(charred, 9, Check.EXPERT_EVALUATION);
    assertThat(service(untried)).isEqualTo(Service.OUT);
    assertThat(steps(untried)).startsWith("EVALUATE by STRENGTH_BY_THUMBS on PART");
    assertThat(untried.verdict().reasons())
        .anySatisfy(
            reason ->
                assertThat(reason.attempts())
                    .anyMatch(text -> text.endsWith("since nobody has tried the place")));
  }

  @Test
  void whatGaveWayIsNoPlaceThatHeld() {
    ShippedCase charred = found(COAT, "FABRIC@OUTER_SHELL", DefectKind.CHARRING, UNTRIED);
    LookEvent.Checked pass =
        ShippedWork.passed(RULES, Moment.on(before(8)), Check.STRENGTH_BY_THUMBS, Set.of(ID));
    ShippedCase failed =
        charred.with(
            new LookEvent.Checked(
                pass.when(), pass.check(), CheckResult.FAILED, pass.by(), pass.answers()));
    ShippedCase both = passed(failed, 12, Check.STRENGTH_BY_THUMBS);
    assertThat(both.verdict().openFindings())
        .anySatisfy(open -> assertThat(open.toString()).contains("NOT_TRIED"));
    assertThat(service(passed(both, 7, Check.EXPERT_EVALUATION))).isEqualTo(Service.OUT);
  }

  @Test
  void theTrainedInspectorTriesAndJudgesTrimAndHarness() {
    ShippedCase trim =
        found(COAT, "TRIM@OUTER_SHELL", DefectKind.DISCOLORATION, new Extent.NotMeasured());
    ShippedCase harness =
        found(HELMET, "HEADBAND", DefectKind.ABRASION, new Extent.Graded(Grade.SLIGHT));
    bothAreNeeded(trim, Check.TRIM_BY_FLASHLIGHT);
    bothAreNeeded(harness, Check.SUSPENSION_AND_RETENTION);
  }

  private static void bothAreNeeded(ShippedCase given, Check check) {
    assertThat(steps(given))
        .startsWith(
            "EVALUATE by " + check + " on PART", "EVALUATE by INSPECTOR_EVALUATION on PART");
    ShippedCase tried = passed(given, 10, check);
    assertThat(service(tried)).isEqualTo(Service.OUT);
    assertThat(service(passed(tried, 9, Check.INSPECTOR_EVALUATION))).isEqualTo(Service.IN);
    assertThat(service(passed(given, 9, Check.INSPECTOR_EVALUATION))).isEqualTo(Service.OUT);
  }

  @Test
  void anInspectionThatAFindingAsksForIsToldAsACheckAsWell() {
    ShippedCase damaged =
        found(COAT, "WHOLE_ELEMENT@LINER_SYSTEM", DefectKind.TEAR, new Extent.NotMeasured());
    assertThat(damaged.verdict().wayBack().toString())
        .contains("LINER_INSPECTION")
        .contains("Record its result as a check as well, made for F1.");
  }

  @Test
  void leavingOutThatNobodyTriedItBringsNothingBack() {
    ShippedCase ungraded =
        found(COAT, "FABRIC@OUTER_SHELL", DefectKind.CHARRING, new Extent.NotMeasured());
    assertThat(service(passed(ungraded, 9, Check.EXPERT_EVALUATION))).isEqualTo(Service.OUT);
    ShippedCase held =
        found(COAT, "FABRIC@OUTER_SHELL", DefectKind.CHARRING, new Extent.Graded(Grade.HELD));
    assertThat(service(passed(held, 9, Check.EXPERT_EVALUATION))).isEqualTo(Service.IN);
  }
}
