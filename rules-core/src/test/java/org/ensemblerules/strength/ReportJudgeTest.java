package org.ensemblerules.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.ensemblerules.strength.StrengthFixtures.CERTIFICATION;
import static org.ensemblerules.strength.StrengthFixtures.POLICY;
import static org.ensemblerules.strength.StrengthFixtures.SIMPLE;
import static org.ensemblerules.strength.StrengthFixtures.USED;
import static org.ensemblerules.strength.StrengthFixtures.judged;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.OriginId;
import org.junit.jupiter.api.Test;

/** Directions, peaks, purposes, discards, failure modes. */
class ReportJudgeTest {
  private static Specimen tear(String id, Direction direction, String... peaks) {
    return Specimen.of(
        id,
        direction,
        new Reading.Peaks(
            Stream.of(peaks).map(peak -> Quantity.of(peak, Unit.POUND_FORCE)).toList()));
  }

  private static TestReportBuilder tears(Specimen... specimens) {
    return StrengthFixtures.report(
            Property.TEAR_RESISTANCE, StrengthFixtures.SHELL, StrengthFixtures.TEAR)
        .specimens(List.of(specimens));
  }

  @Test
  void anotherPurposeOrRuleMakesAnotherJudgeAndLeavesTheFirst() {
    ReportJudge first = StrengthFixtures.tables().judge(CERTIFICATION, SIMPLE);
    DecisionRule guarded = new DecisionRule.GuardBand(BigDecimal.ONE);
    ReportJudge other = first.with(USED).with(guarded);
    assertThat(other.purpose()).isEqualTo(USED);
    assertThat(other.rule()).isEqualTo(guarded);
    assertThat(first.purpose()).isEqualTo(CERTIFICATION);
    assertThat(first.rule()).isEqualTo(SIMPLE);

    TestReport report = tears(tear("w1", Direction.WARP, "60", "60", "60", "60", "60")).build();
    ReportJudge.Result result = other.judge(StrengthFixtures.PRODUCT, report);
    assertThat(result.purpose()).isEqualTo(USED);
    assertThat(result.rule()).isEqualTo(guarded);
    assertThat(first.judge(StrengthFixtures.PRODUCT, report).purpose()).isEqualTo(CERTIFICATION);
  }

  /** Six peaks, the lowest of which does not count; mean of five 24 lbf. */
  @Test
  void theFiveHighestPeaksCount() {
    ReportJudge.Judged result =
        judged(
            tears(
                tear("w1", Direction.WARP, "5", "22", "23", "24", "25", "26"),
                tear("f1", Direction.FILL, "26", "25", "24", "23", "22")),
            CERTIFICATION,
            SIMPLE);
    assertThat(result.outcome()).isEqualTo(TestOutcome.PASS);
    assertThat(StrengthFixtures.figure(result, "mean of specimens"))
        .as("24 lbf in the limit's unit")
        .isEqualByComparingTo("106.757318766252");
  }

  @Test
  void eachDirectionIsJudgedOnItsOwnAndTheStrictestCounts() {
    ReportJudge.Judged result =
        judged(
            tears(
                tear("w1", Direction.WARP, "60", "60", "60", "60", "60"),
                tear("f1", Direction.FILL, "21", "21", "21", "21", "21")),
            CERTIFICATION,
            SIMPLE);
    assertThat(result.outcome()).isEqualTo(TestOutcome.FAIL);
    assertThat(result.directions())
        .extracting(DirectionResult::direction, DirectionResult::outcome)
        .containsExactly(
            tuple(Direction.WARP, TestOutcome.PASS), tuple(Direction.FILL, TestOutcome.FAIL));
  }

  /** 22.2 lbf is 98.75 N: the bracketed 22 lbf would pass it, the limit of 100 N does not. */
  @Test
  void theSecondUnitIsInformationOnly() {
    ReportJudge.Judged result =
        judged(
            tears(
                tear("w1", Direction.WARP, "22.2", "22.2", "22.2", "22.2", "22.2"),
                tear("f1", Direction.FILL, "30", "30", "30", "30", "30")),
            CERTIFICATION,
            SIMPLE);
    assertThat(result.outcome()).isEqualTo(TestOutcome.FAIL);
    assertThat(result.remarks()).containsExactly(Remark.SECOND_UNIT_WOULD_DIFFER);
    assertThat(result.directions().get(0).figures())
        .extracting(Figure::toString)
        .contains("mean of specimens ~ 98.8 N", "least value required = 100 N");
    assertThat(StrengthFixtures.figure(result, "mean of specimens"))
        .isEqualByComparingTo("98.7505198587831");
    assertThat(result.text(Remark.SECOND_UNIT_WOULD_DIFFER))
        .isEqualTo(
            "the limit is printed as 100 N and as 22 lbf; the number printed in the second unit"
                + " would answer otherwise; it is information only");
    assertThat(result.text(Remark.CLEARS_NO_OTHER_ELEMENT))
        .isEqualTo(Remark.CLEARS_NO_OTHER_ELEMENT.text());
  }

  @Test
  void aPolicyForUsedGearIsNamedAndClearsNothingElse() {
    ReportJudge.Judged result =
        judged(
            StrengthFixtures.breaking(Unit.NEWTON, "650").origin(SpecimenOrigin.THIS_ELEMENT),
            USED,
            SIMPLE);
    assertThat(result.outcome()).isEqualTo(TestOutcome.PASS);
    assertThat(result.purpose().text()).contains("POLICY_TEST", "requirement for new material");
    assertThat(result.elementCutIsRetired()).isTrue();
    assertThat(result.remarks())
        .containsExactly(
            Remark.REQUIREMENT_IS_FOR_NEW_MATERIAL,
            Remark.ELEMENT_CUT_IS_RETIRED,
            Remark.CLEARS_NO_OTHER_ELEMENT);
    assertThat(
            judged(
                    StrengthFixtures.breaking(Unit.NEWTON, "650")
                        .origin(SpecimenOrigin.SAME_MODEL_AGE_AND_USE),
                    USED,
                    SIMPLE)
                .elementCutIsRetired())
        .isFalse();
  }

  /** 75 % of 200 lbf is 150 lbf, exactly; 667.3 N is a little more, 667.2 N a little less. */
  @Test
  void aShareOfTheValueWhenNewIsExact() {
    Purpose share =
        new Purpose.AtLeastShareOfNewValue(
            POLICY,
            new BigDecimal("75"),
            Map.of(Direction.WARP, Quantity.of("200", Unit.POUND_FORCE)));
    assertThat(
            judged(
                    StrengthFixtures.breaking(Unit.NEWTON, "667.3")
                        .origin(SpecimenOrigin.THIS_ELEMENT),
                    share,
                    SIMPLE)
                .outcome())
        .isEqualTo(TestOutcome.PASS);
    ReportJudge.Judged fails =
        judged(
            StrengthFixtures.breaking(Unit.NEWTON, "667.2").origin(SpecimenOrigin.THIS_ELEMENT),
            share,
            SIMPLE);
    assertThat(fails.outcome()).isEqualTo(TestOutcome.FAIL);
    assertThat(StrengthFixtures.figure(fails, "least value by share")).isEqualByComparingTo("150");
    assertThat(StrengthFixtures.figure(fails, "value when new")).isEqualByComparingTo("200");
  }

  /** ASTM D5034, as remembered: near the jaw and below half of the mean of the others. */
  @Test
  void aLowBreakAtTheJawIsDiscardedAndNamed() {
    List<Specimen> specimens =
        new ArrayList<>(
            StrengthFixtures.specimens(Direction.WARP, Unit.NEWTON, "700", "700", "700"));
    Quantity near = Quantity.of("5", Unit.MILLIMETER);
    specimens.add(
        Specimen.of("low", Direction.WARP, Quantity.of("349", Unit.NEWTON)).withBreakFromJaw(near));
    ReportJudge.Judged result =
        judged(StrengthFixtures.breaking(Unit.NEWTON).specimens(specimens), CERTIFICATION, SIMPLE);
    assertThat(result.outcome()).isEqualTo(TestOutcome.PASS);
    assertThat(result.remarks()).containsExactly(Remark.SPECIMENS_DISCARDED);
    assertThat(result.directions().get(0).discarded())
        .singleElement()
        .satisfies(
            discarded -> {
              assertThat(discarded.specimen().id()).isEqualTo("low");
              assertThat(discarded.row().key().value()).isEqualTo("grab-jaw");
            });
  }

  @Test
  void aLowBreakElsewhereOrNotLowEnoughCounts() {
    for (Specimen low :
        List.of(
            Specimen.of("no jaw", Direction.WARP, Quantity.of("349", Unit.NEWTON)),
            Specimen.of("too far", Direction.WARP, Quantity.of("349", Unit.NEWTON))
                .withBreakFromJaw(Quantity.of("0.2", Unit.INCH)),
            Specimen.of("half", Direction.WARP, Quantity.of("350", Unit.NEWTON))
                .withBreakFromJaw(Quantity.of("1", Unit.MILLIMETER)))) {
      List<Specimen> specimens =
          new ArrayList<>(
              StrengthFixtures.specimens(Direction.WARP, Unit.NEWTON, "700", "700", "700"));
      specimens.add(low);
      ReportJudge.Judged result =
          judged(
              StrengthFixtures.breaking(Unit.NEWTON).specimens(specimens), CERTIFICATION, SIMPLE);
      assertThat(result.outcome()).as(low.id()).isEqualTo(TestOutcome.FAIL);
      assertThat(result.directions().get(0).discarded()).isEmpty();
    }
  }

  /** ISO 13934-1, as remembered: kept unless below the lowest of five normal breaks. */
  @Test
  void aJawBreakIsHeldAgainstFiveNormalBreaks() {
    String[] normal = {"150", "160", "170", "180", "190"};
    Specimen low =
        Specimen.of("low", Direction.WARP, Quantity.of("90", Unit.NEWTON))
            .withBreakFromJaw(Quantity.of("2", Unit.MILLIMETER));
    TestReportBuilder report =
        StrengthFixtures.report(
            Property.RESIDUAL_BREAKING_STRENGTH, StrengthFixtures.SHELL, StrengthFixtures.STRIP);
    List<Specimen> six =
        new ArrayList<>(StrengthFixtures.specimens(Direction.WARP, Unit.NEWTON, normal));
    six.add(low);
    assertThat(judged(report.specimens(six), CERTIFICATION, SIMPLE).outcome())
        .isEqualTo(TestOutcome.PASS);
    assertThat(judged(report.specimens(six.subList(1, 6)), CERTIFICATION, SIMPLE).outcome())
        .as("four normal breaks cannot tell, so it counts")
        .isEqualTo(TestOutcome.FAIL);
  }

  @Test
  void aSeamIsExcusedWhereAFabricShownToBeWeakerBrokeFirst() {
    TestReportBuilder report =
        StrengthFixtures.report(
                Property.SEAM_STRENGTH, StrengthFixtures.MAJOR_A, StrengthFixtures.SEAM)
            .specimens(
                List.of(
                    Specimen.of("s1", Direction.UNDIRECTED, Quantity.of("640", Unit.NEWTON))
                        .withFailure(FailureMode.FABRIC)));
    ReportJudge.Judged unknown = judged(report, CERTIFICATION, SIMPLE);
    assertThat(unknown.outcome()).isEqualTo(TestOutcome.FAIL);
    assertThat(unknown.remarks()).containsExactly(Remark.FABRIC_STRENGTH_MISSING);
    ReportJudge.Judged strong =
        judged(report.fabricStrength(Quantity.of("150", Unit.POUND_FORCE)), CERTIFICATION, SIMPLE);
    assertThat(strong.outcome())
        .as("667.2 N is no weaker than the limit")
        .isEqualTo(TestOutcome.FAIL);
    ReportJudge.Judged weak =
        judged(report.fabricStrength(Quantity.of("645", Unit.NEWTON)), CERTIFICATION, SIMPLE);
    assertThat(weak.outcome()).isEqualTo(TestOutcome.PASS);
    assertThat(weak.remarks()).containsExactly(Remark.FABRIC_BROKE_FIRST);
    assertThat(weak.text(weak.directions().get(0))).endsWith(", gave way: FABRIC 1");
    ReportJudge.Judged used =
        judged(
            report.origin(SpecimenOrigin.SAME_MODEL_AGE_AND_USE),
            new Purpose.AtLeastNewRequirement(new OriginId("POLICY")),
            SIMPLE);
    assertThat(used.outcome()).as("its fabric may be worn").isEqualTo(TestOutcome.FAIL);
    assertThat(used.remarks()).contains(Remark.FABRIC_BROKE_FIRST_IN_USE);
    report.origin(SpecimenOrigin.NEW_CLOTH);
    assertThat(
            judged(
                    report.specimens(
                        List.of(
                            Specimen.of("s1", Direction.UNDIRECTED, Quantity.of("640", Unit.NEWTON))
                                .withFailure(FailureMode.THREAD))),
                    CERTIFICATION,
                    SIMPLE)
                .outcome())
        .isEqualTo(TestOutcome.FAIL);
  }
}
