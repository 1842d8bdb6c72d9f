package org.ensemblerules.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.history.OpenFindingsFixture.found;
import static org.ensemblerules.history.OpenFindingsFixture.seam;
import static org.ensemblerules.history.OpenFindingsFixture.tear;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Credential;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.People;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What closes a finding that calls for repair, cleaning or replacement, and what does not. */
class RepairsCloseFindingsTest {
  @Test
  void silenceClosesNothing() {
    OpenFinding open =
        tear("2024-01-01")
            .with(
                new LookEvent.Inspected(
                    FitGear.inspection(InspectionKind.ADVANCED, ElementKind.COAT, FitGear.AS_OF)
                        .build(),
                    0))
            .open()
            .get(0);
    assertThat(open.closedBy()).containsExactly("REPAIR ADVANCED on PART");
    assertThat(open.attempts()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "2024-01-01, 2024-01-02, true",
    "2024-01-01, 2024-01-01, true",
    "2024-01-02, 2024-01-01, false",
    "2024-01, 2024-01-31, true",
    "2024-01, 2024-01-30, false",
    "2024-01, 2024-02, true",
    "2024-01, 2024-01, false",
    "2023, 2024, false",
    "UNKNOWN, 2024-02-01, false",
    "2024-01-01, UNKNOWN, false",
    "2024-01-01, 2024-06-15, true",
    "2024-01-01, 2024-06-16, false",
    "2024-01-01, 2024-06, false"
  })
  void aRepairCountsIfCertainlyNotBeforeTheFindingNorAfterTheDay(
      String seen, String repaired, boolean closes) {
    assertThat(tear(seen).repaired(repaired).open().isEmpty()).isEqualTo(closes);
  }

  @Test
  void whyARepairDoesNotCountIsSaid() {
    assertThat(tear("2024-01-02").repaired("2024-01-01").attempts())
        .containsExactly(
            "repaired ADVANCED on 2024-01-01 by Verified provider: not certainly after the"
                + " finding of 2024-01-02");
    assertThat(tear("2024-01-02").repaired("2024-06").attempts())
        .containsExactly(
            "repaired ADVANCED on 2024-06 by Verified provider: dated only 2024-06, not certainly"
                + " by 2024-06-15; it counts with its day, or after 2024-06-30");
    assertThat(tear("2024-01-02").cleaned("2024-02-01", CleaningKind.ADVANCED).attempts())
        .containsExactly(
            "cleaned ADVANCED on 2024-02-01 by ORGANIZATION: not what the finding calls for");
  }

  @Test
  void aRepairByAnExpiredCredentialDoesNotCount() {
    Credential expired =
        new Credential(
            CredentialScope.ADVANCED_REPAIR, LocalDate.of(2020, 1, 1), LocalDate.of(2024, 1, 31));
    Doer doer = new Doer("P", EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER, List.of(expired));
    assertThat(tear("2024-01-01").repaired("2024-01-31", 0, RepairClass.ADVANCED, doer).open())
        .isEmpty();
    assertThat(tear("2024-01-01").repaired("2024-02-01", 0, RepairClass.ADVANCED, doer).attempts())
        .containsExactly(
            "repaired ADVANCED on 2024-02-01 by P: credential ADVANCED_REPAIR expired after"
                + " 2024-01-31");
  }

  @Test
  void aRepairForAnotherFindingDoesNotCount() {
    Event other =
        new WorkEvent.Repaired(
            Moment.on(MarkedDate.parse("2024-02-01")),
            RepairClass.ADVANCED,
            false,
            People.PROVIDER,
            Set.of(new FindingId("F2")));
    assertThat(tear("2024-01-01").with(other).attempts()).isEmpty();
  }

  @Test
  void anAdvancedRepairDoesForABasicOneAndNotTheOtherWayRound() {
    OpenFindingsFixture basic =
        tear("2024-01-01").repaired("2024-02-01", 0, RepairClass.BASIC, People.PROVIDER);
    assertThat(basic.attempts())
        .singleElement()
        .asString()
        .endsWith("not what the finding calls for");
    Extent slight = new Extent.Graded(Grade.SEVERE);
    OpenFindingsFixture trim =
        found("TRIM@OUTER_SHELL", DefectKind.LOST_RETROREFLECTIVITY, slight, "2024-01-01");
    assertThat(trim.repaired("2024-02-01").open()).hasSize(1);
    assertThat(trim.replaced("2024-02-02", RepairClass.BASIC).open()).isEmpty();
    OpenFindingsFixture mended =
        found(
            "FABRIC@THERMAL_LINER",
            DefectKind.TEAR,
            new Extent.Length(Quantity.of("1", Unit.INCH)),
            "2024-01-01");
    assertThat(mended.repaired("2024-02-01").open()).isEmpty();
  }

  @Test
  void aPartThatNeedsAnAdvancedReplacementIsNotReplacedByABasicOne() {
    OpenFindingsFixture closure =
        found(
                "CLOSURE@OUTER_SHELL",
                DefectKind.CLOSURE_FAILURE,
                new Extent.NotMeasured(),
                "2024-01-01")
            .replaced("2024-02-01", RepairClass.BASIC)
            .passed("2024-02-03", Check.CLOSURE_OPERATION);
    assertThat(closure.open()).hasSize(1);
    assertThat(closure.replaced("2024-02-02", RepairClass.ADVANCED).open()).isEmpty();
  }

  @Test
  void onlyTheKindOfCleaningAskedForCloses() {
    OpenFindingsFixture fluids =
        found("WHOLE_ELEMENT", DefectKind.BODY_FLUIDS, new Extent.NotMeasured(), "2024-01-01")
            .cleaned("2024-01-02", CleaningKind.ADVANCED)
            .cleaned("2024-01-02", CleaningKind.SPECIALIZED);
    assertThat(fluids.attempts()).hasSize(2);
    assertThat(fluids.cleaned("2024-01-03", CleaningKind.SANITIZING).open()).isEmpty();
  }

  @Test
  void aRetiredLayerIsSettledByItsAdvancedReplacement() {
    OpenFindingsFixture charred =
        found("FABRIC@OUTER_SHELL", DefectKind.CHARRING, new Extent.NotMeasured(), "2024-01-01")
            .repaired("2024-02-01")
            .replaced("2024-02-01", RepairClass.BASIC);
    assertThat(charred.open()).hasSize(1);
    assertThat(charred.replaced("2024-02-02", RepairClass.ADVANCED).open()).isEmpty();
  }

  @Test
  void nothingSettlesWhatRetiresTheElement() {
    OpenFindingsFixture agent =
        found("WHOLE_ELEMENT", DefectKind.CBRN_AGENT, new Extent.NotMeasured(), "2024-01-01")
            .replaced("2024-02-02", RepairClass.ADVANCED)
            .passed("2024-02-03", Check.EXPERT_EVALUATION);
    assertThat(agent.open().get(0).closedBy()).isEmpty();
  }

  @Test
  void aFollowUpCheckMustBeCertainlyLater() {
    assertThat(seam("2024-01-01").open().get(0).closedBy())
        .containsExactly("REPAIR ADVANCED on LAYER", "SEAM_PULL passed certainly later");
    assertThat(seam("2024-01-01").repaired("2024-02-01").attempts())
        .containsExactly(
            "repaired ADVANCED on 2024-02-01 by Verified provider: no SEAM_PULL passed certainly"
                + " later");
    assertThat(pulled("2024-02-01", 0, 0)).isFalse();
    assertThat(pulled("2024-02-01", 1, 2)).isTrue();
    assertThat(pulled("2024-02-01", 2, 1)).isFalse();
    assertThat(pulled("2024-02-01", 1, 1)).isFalse();
    assertThat(pulled("2024-02-01", 0, 1)).isFalse();
    assertThat(pulled("2024-02-02", 0, 0)).isTrue();
    assertThat(pulled("2024-02", 0, 0)).isFalse();
    assertThat(pulled("2024-03", 0, 0)).isTrue();
    assertThat(pulled("2024-06-16", 0, 0)).isFalse();
  }

  private static boolean pulled(String on, int orderOfRepair, int orderOfCheck) {
    return seam("2024-01-01")
        .repaired("2024-02-01", orderOfRepair, RepairClass.ADVANCED, People.PROVIDER)
        .checked(on, orderOfCheck, Check.SEAM_PULL, CheckResult.PASSED, People.PROVIDER)
        .open()
        .isEmpty();
  }

  @Test
  void aFollowUpCheckByNobodyPermittedOrVoidDoesNotCount() {
    assertThat(
            seam("2024-01-01")
                .repaired("2024-02-01")
                .checked("2024-02-03", 0, Check.SEAM_PULL, CheckResult.PASSED, People.WEARER)
                .checked("2024-02-03", 0, Check.SEAM_PULL, CheckResult.VOID, People.PROVIDER)
                .passed("2024-02-03", Check.CLOSURE_OPERATION)
                .open())
        .hasSize(1);
  }

  @Test
  void aFollowUpCheckWithoutARepairIsNoAttempt() {
    OpenFindingsFixture given = seam("2024-01-01").passed("2024-02-03", Check.SEAM_PULL);
    assertThat(given.attempts()).isEmpty();
    assertThat(given.passed("2024-02-03", Check.WATER_ENTRY).attempts()).hasSize(1);
  }

  @Test
  void whatHappensLaterDoesNotCountYet() {
    OpenFindingsFixture given =
        seam("2024-01-01").repaired("2024-02-01").passed("2024-03-01", Check.SEAM_PULL);
    assertThat(given.openOn(LocalDate.of(2024, 2, 28))).hasSize(1);
    assertThat(given.openOn(LocalDate.of(2024, 3, 1))).isEmpty();
  }
}
