package org.ensemblerules.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.history.OpenFindingsFixture.discolored;
import static org.ensemblerules.history.OpenFindingsFixture.found;
import static org.ensemblerules.history.OpenFindingsFixture.seam;

import java.util.List;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.People;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What closes a finding that calls for an evaluation, and what a failed check does. */
class ChecksCloseFindingsTest {
  private static OpenFindingsFixture gaps() {
    return found(
        "SEAM_MAJOR_A@OUTER_SHELL",
        DefectKind.SEVERAL_STITCH_GAPS,
        new Extent.Count(3),
        "2024-01-01");
  }

  @Test
  void theCheckAskedForClosesAndAnotherDoesNot() {
    assertThat(gaps().passed("2024-01-01", Check.SEAM_PULL).open()).isEmpty();
    assertThat(gaps().passed("2024-01-02", Check.CLOSURE_OPERATION).open()).hasSize(1);
    assertThat(gaps().passed("2023-12-31", Check.SEAM_PULL).open()).hasSize(1);
  }

  @Test
  void anExpertSettlesWhatAnInspectorsCheckWasAskedFor() {
    assertThat(gaps().passed("2024-01-02", Check.EXPERT_EVALUATION).open()).isEmpty();
    OpenFindingsFixture tape =
        found(
            "SEAM_TAPE@MOISTURE_BARRIER",
            DefectKind.LIFTING_TAPE,
            new Extent.NotMeasured(),
            "2024-01-01");
    assertThat(tape.passed("2024-01-02", Check.EXPERT_EVALUATION).open()).isEmpty();
  }

  @Test
  void anExpertDoesNotReleaseWhatAnIncidentHolds() {
    OpenFindingsFixture held =
        found("WHOLE_ELEMENT", DefectKind.INJURY_TO_WEARER, new Extent.NotMeasured(), "2024-01-01")
            .passed("2024-01-02", Check.EXPERT_EVALUATION)
            .passed("2024-01-03", Check.ADVANCED_INSPECTION);
    assertThat(held.open()).hasSize(1);
  }

  @Test
  void releaseACleaningAndThenAnAdvancedInspectionEndAnIncident() {
    OpenFindingsFixture held =
        found("WHOLE_ELEMENT", DefectKind.INJURY_TO_WEARER, new Extent.NotMeasured(), "2024-01-01");
    assertThat(held.with(inspected("2024-02-09")).open()).hasSize(1);
    held.checked("2024-02-10", 0, Check.INCIDENT_RELEASE, CheckResult.PASSED, People.DEPARTMENT);
    assertThat(held.attempts())
        .containsExactly(
            "passed INCIDENT_RELEASE on 2024-02-10 by Department: no ADVANCED_INSPECTION passed"
                + " certainly later");
    assertThat(held.with(inspected("2024-02-10")).open()).hasSize(1);
    assertThat(held.with(inspected("2024-06-16")).open()).hasSize(1);
    assertThat(held.with(inspected("2024-02-11")).open()).hasSize(1);
    assertThat(held.with(cleaned("2024-02-10")).with(cleaned("2024-02-12")).open()).hasSize(1);
    assertThat(held.with(inspected("2024-02-12")).open()).hasSize(1);
    assertThat(held.with(inspected("2024-02-13")).open()).isEmpty();
  }

  private static Event cleaned(String on) {
    return WorkEvent.Cleaned.whole(
        Moment.on(MarkedDate.parse(on)),
        CleaningKind.ADVANCED,
        People.permitted(Task.ADVANCED_CLEANING),
        Set.of());
  }

  private static Event inspected(String on) {
    Inspection made =
        FitGear.inspection(
                InspectionKind.ADVANCED, ElementKind.COAT, MarkedDate.parse(on), People.DEPARTMENT)
            .build();
    return new LookEvent.Inspected(made, 0);
  }

  @Test
  void anInspectionThatDoesNotCountFollowsNothingUp() {
    Inspection empty =
        Inspection.builder(
                InspectionKind.ADVANCED,
                Occasion.AFTER_RELEASE,
                MarkedDate.parse("2024-02-11"),
                People.DEPARTMENT)
            .build();
    OpenFindingsFixture held =
        found("WHOLE_ELEMENT", DefectKind.INJURY_TO_WEARER, new Extent.NotMeasured(), "2024-01-01")
            .checked("2024-02-10", 0, Check.INCIDENT_RELEASE, CheckResult.PASSED, People.DEPARTMENT)
            .with(new LookEvent.Inspected(empty, 0));
    assertThat(held.open()).hasSize(1);
  }

  @Test
  void whatHeldUnderTheThumbsIsJudgedAsSuch() {
    OpenFindingsFixture given = discolored(Grade.NOT_TRIED);
    assertThat(given.open().get(0).closedBy())
        .containsExactly("EVALUATE by STRENGTH_BY_THUMBS on LAYER");
    given.passed("2024-01-03", Check.STRENGTH_BY_THUMBS);
    OpenFinding held = given.open().get(0);
    assertThat(held.finding().extent()).isEqualTo(new Extent.Graded(Grade.HELD));
    assertThat(held.closedBy()).containsExactly("EVALUATE by EXPERT_EVALUATION on PART");
    assertThat(given.attempts()).isEmpty();
    assertThat(given.passed("2024-01-04", Check.EXPERT_EVALUATION).open()).isEmpty();
  }

  @Test
  void whatNobodyTriedNoWordSettles() {
    OpenFindingsFixture given = discolored(Grade.NOT_TRIED);
    given.passed("2024-01-03", Check.EXPERT_EVALUATION);
    assertThat(given.attempts())
        .containsExactly(
            "passed EXPERT_EVALUATION on 2024-01-03 by Verified provider: not what the finding"
                + " calls for, since nobody has tried the place");
    given.passed("2024-01-04", Check.STRENGTH_BY_THUMBS);
    assertThat(given.attempts())
        .containsExactly(
            "passed EXPERT_EVALUATION on 2024-01-03 by Verified provider: not certainly after the"
                + " finding of 2024-01-04");
    assertThat(given.passed("2024-01-04", Check.EXPERT_EVALUATION).open()).isEmpty();
  }

  @Test
  void aTryThatFailedShowsNothingThatHeld() {
    OpenFindingsFixture given = discolored(Grade.NOT_TRIED);
    given.passed("2024-01-03", Check.STRENGTH_BY_THUMBS);
    given.checked("2024-01-04", 0, Check.STRENGTH_BY_THUMBS, CheckResult.FAILED, People.PROVIDER);
    assertThat(given.open().get(0).finding().extent())
        .isEqualTo(new Extent.Graded(Grade.NOT_TRIED));
  }

  @Test
  void repairsDoNotCloseAnEvaluation() {
    assertThat(discolored(Grade.HELD).repaired("2024-02-01").open()).hasSize(1);
    assertThat(discolored(Grade.HELD).replaced("2024-02-01", RepairClass.BASIC).open()).hasSize(1);
  }

  @Test
  void aPartThatIsGoneIsNotJudgedButWhatItLayOnIsLookedAt() {
    OpenFindingsFixture gone = discolored(Grade.HELD).replaced("2024-02-01", RepairClass.ADVANCED);
    assertThat(gone.attempts())
        .containsExactly(
            "replaced ADVANCED on 2024-02-01 by Verified provider: no ADVANCED_INSPECTION passed"
                + " certainly later");
    assertThat(gone.with(inspected("2024-02-02")).open()).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(
      value = CheckResult.class,
      names = {"FAILED", "VOID"})
  void onlyAPassCloses(CheckResult result) {
    assertThat(gaps().checked("2024-01-02", 0, Check.SEAM_PULL, result, People.PROVIDER).open())
        .hasSize(1);
  }

  @Test
  void aRepairBeforeAFailedCheckDoesNotClose() {
    OpenFindingsFixture given =
        seam("2024-01-01")
            .repaired("2024-02-01")
            .failed("2024-02-02", Check.SEAM_PULL)
            .passed("2024-02-03", Check.SEAM_PULL);
    assertThat(given.attempts().get(0)).endsWith("a check failed since, or may have");
    assertThat(given.standingFailures()).hasSize(1);
  }

  @Test
  void aRepairThatNamesTheFailureOfItsDayCameAfterIt() {
    OpenFindingsFixture given =
        seam("2024-01-01")
            .failed("2024-02-01", Check.SEAM_PULL)
            .repaired("2024-02-01")
            .passed("2024-02-03", Check.SEAM_PULL);
    assertThat(given.open()).isEmpty();
    assertThat(given.standingFailures()).isEmpty();
  }

  @Test
  void ofTwoFailuresOfOneNameNobodyCanSayAfterWhichARepairCame() {
    OpenFindingsFixture given =
        seam("2024-01-01")
            .failed("2024-02-01", Check.SEAM_PULL)
            .checked("2024-02-01", 0, Check.SEAM_PULL, CheckResult.FAILED, People.WEARER)
            .repaired("2024-02-01")
            .passed("2024-02-03", Check.SEAM_PULL);
    assertThat(given.open()).hasSize(1);
    assertThat(given.standingFailures()).hasSize(2);
  }

  @Test
  void aRepairThatTheRecordHasBeforeTheFailureSettlesNothing() {
    OpenFindingsFixture given =
        seam("2024-01-01")
            .checked("2024-02-01", 2, Check.SEAM_PULL, CheckResult.FAILED, People.PROVIDER)
            .repaired("2024-02-01", 1, RepairClass.ADVANCED, People.PROVIDER)
            .passed("2024-02-03", Check.SEAM_PULL);
    assertThat(given.open()).hasSize(1);
    assertThat(given.standingFailures()).hasSize(1);
  }

  @Test
  void aMereRepeatSettlesNoFailure() {
    OpenFindingsFixture given =
        gaps().failed("2024-01-02", Check.SEAM_PULL).passed("2024-01-03", Check.SEAM_PULL);
    assertThat(given.standingFailures()).hasSize(1);
  }

  @Test
  void failedThenRepairedThenPassedCloses() {
    OpenFindingsFixture given =
        seam("2024-01-01").failed("2024-01-02", Check.SEAM_PULL).repaired("2024-02-01");
    assertThat(given.standingFailures()).hasSize(1);
    given.passed("2024-02-02", Check.SEAM_PULL);
    assertThat(given.open()).isEmpty();
    assertThat(given.standingFailures()).isEmpty();
  }

  @Test
  void aRepairByNobodyPermittedOrAPassOfAnotherCheckSettlesNoFailure() {
    assertThat(
            seam("2024-01-01")
                .failed("2024-01-02", Check.SEAM_PULL)
                .repaired("2024-02-01", 0, RepairClass.ADVANCED, People.WEARER)
                .passed("2024-02-02", Check.SEAM_PULL)
                .standingFailures())
        .hasSize(1);
    assertThat(
            seam("2024-01-01")
                .failed("2024-01-02", Check.SEAM_PULL)
                .repaired("2024-02-01")
                .passed("2024-02-02", Check.CLOSURE_OPERATION)
                .standingFailures())
        .hasSize(1);
    assertThat(
            seam("2024-01-01")
                .failed("2024-01-02", Check.SEAM_PULL)
                .repaired("2024-07-01")
                .passed("2024-07-02", Check.SEAM_PULL)
                .standingFailures())
        .hasSize(1);
  }

  @Test
  void aRepairOfSomethingElseSettlesNoFailure() {
    Event other =
        new WorkEvent.Repaired(
            Moment.on(MarkedDate.parse("2024-02-01")),
            RepairClass.ADVANCED,
            false,
            People.PROVIDER,
            Set.of(new FindingId("F2")));
    assertThat(
            seam("2024-01-01")
                .failed("2024-01-02", Check.SEAM_PULL)
                .with(other)
                .passed("2024-02-02", Check.SEAM_PULL)
                .standingFailures())
        .hasSize(1);
  }

  @Test
  void anExpertWhoNamesAFailureSettlesItAndNotTheDayBefore() {
    OpenFindingsFixture given = gaps().failed("2024-01-02", Check.SEAM_PULL);
    assertThat(given.passed("2024-01-01", Check.EXPERT_EVALUATION).standingFailures()).hasSize(1);
    assertThat(given.passed("2024-01-02", Check.EXPERT_EVALUATION).standingFailures()).isEmpty();
  }

  /** Whether a failure names no finding, one or two: only what names the failure settles it. */
  @Test
  void onlyWhatNamesAFailureSettlesIt() {
    Moment when = Moment.on(MarkedDate.parse("2024-01-02"));
    for (Set<FindingId> named :
        List.of(
            Set.<FindingId>of(),
            Set.of(OpenFindingsFixture.ID),
            Set.of(OpenFindingsFixture.ID, new FindingId("F2")))) {
      LookEvent.Checked failed =
          new LookEvent.Checked(when, Check.SEAM_PULL, CheckResult.FAILED, People.PROVIDER, named);
      assertThat(failed.failure()).hasToString("failed:2024-01-02:SEAM_PULL");
      Event forTheFinding =
          new LookEvent.Checked(
              Moment.on(MarkedDate.parse("2024-01-03")),
              Check.EXPERT_EVALUATION,
              CheckResult.PASSED,
              People.PROVIDER,
              Set.of(OpenFindingsFixture.ID));
      OpenFindingsFixture given = gaps().with(failed).with(forTheFinding);
      assertThat(given.standingFailures()).containsExactly(failed);
      assertThat(given.passed("2024-01-04", Check.EXPERT_EVALUATION).standingFailures()).isEmpty();
    }
  }

  @Test
  void anUnknownLayerMustBeSettledForEachLayerItMayBe() {
    OpenFindingsFixture given =
        found(
            "FABRIC",
            DefectKind.TEAR,
            new Extent.Length(Quantity.of("1", Unit.INCH)),
            "2024-01-01");
    assertThat(given.open())
        .extracting(open -> open.demand().site().toString() + " " + open.demand().kind())
        .containsExactly(
            "FABRIC@OUTER_SHELL RULE",
            "FABRIC@MOISTURE_BARRIER RULE",
            "FABRIC@THERMAL_LINER RULE",
            "FABRIC@WINTER_LINER NO_RULE");
    given.repaired("2024-02-01");
    assertThat(given.open())
        .extracting(open -> open.demand().site().toString())
        .containsExactly("FABRIC@MOISTURE_BARRIER", "FABRIC@WINTER_LINER");
    given.passed("2024-02-02", Check.BARRIER_UNDER_PRESSURE);
    given.passed("2024-02-03", Check.EXPERT_EVALUATION);
    assertThat(given.open()).isEmpty();
  }

  @Test
  void whatMustBeMeasuredIsNotSettledByMeasuringIt() {
    OpenFindingsFixture given =
        found("FABRIC@OUTER_SHELL", DefectKind.TEAR, new Extent.NotMeasured(), "2024-01-01")
            .passed("2024-01-02", Check.MEASURE_EXTENT);
    assertThat(given.open().get(0).demand().kind()).isEqualTo(Demand.Kind.MUST_MEASURE);
    // A long tear is repaired, which no evaluation does.
    assertThat(given.passed("2024-01-03", Check.EXPERT_EVALUATION).open()).hasSize(1);
  }

  @Test
  void aPartThatDoesNotExistIsARecordToPutRight() {
    OpenFindingsFixture given =
        found("GLOVE_SHELL", DefectKind.CUT, new Extent.NotMeasured(), "2024-01-01")
            .passed("2024-01-02", Check.EXPERT_EVALUATION);
    assertThat(given.open().get(0).demand().kind()).isEqualTo(Demand.Kind.NO_SUCH_PART);
    given.checked("2024-01-03", 0, Check.RECORD_CORRECTION, CheckResult.PASSED, People.DEPARTMENT);
    assertThat(given.open()).isEmpty();
  }

  @Test
  void whatIsAcceptableIsNotOpen() {
    assertThat(
            found(
                    "FABRIC@OUTER_SHELL",
                    DefectKind.SOILING,
                    new Extent.Graded(Grade.SLIGHT),
                    "2024-01-01")
                .open())
        .isEmpty();
  }
}
