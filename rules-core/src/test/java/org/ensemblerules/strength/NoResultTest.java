package org.ensemblerules.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.ensemblerules.strength.StrengthFixtures.CERTIFICATION;
import static org.ensemblerules.strength.StrengthFixtures.SIMPLE;
import static org.ensemblerules.strength.StrengthFixtures.USED;
import static org.ensemblerules.strength.StrengthFixtures.breaking;
import static org.ensemblerules.strength.StrengthFixtures.judge;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rounding;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.junit.jupiter.api.Test;

/** Bad input has a named reason or cannot be built; it never passes. */
class NoResultTest {
  private static final BigDecimal NINETY_FIVE = new BigDecimal("95");
  private static final DecisionRule GUARD = new DecisionRule.GuardBand(BigDecimal.ONE);

  private static void expect(ReportJudge.Result result, NoResultReason reason, String detail) {
    assertThat(result)
        .isInstanceOfSatisfying(
            ReportJudge.NoResult.class,
            none -> {
              assertThat(none.reason()).isEqualTo(reason);
              assertThat(none.detail()).contains(detail);
            });
  }

  @Test
  void specimens() {
    expect(
        judge(breaking(Unit.NEWTON), CERTIFICATION, SIMPLE),
        NoResultReason.NO_SPECIMENS,
        "no specimens");
    expect(
        judge(
            breaking(Unit.NEWTON, "700"),
            CERTIFICATION,
            new DecisionRule.ConfidenceBoundOfMean(NINETY_FIVE)),
        NoResultReason.TWO_SPECIMENS_NEEDED,
        "1 specimen");
    List<Specimen> mixed =
        new ArrayList<>(StrengthFixtures.specimens(Direction.WARP, Unit.NEWTON, "700"));
    mixed.add(Specimen.of("other", Direction.WARP, Quantity.of("160", Unit.POUND_FORCE)));
    expect(
        judge(breaking(Unit.NEWTON).specimens(mixed), CERTIFICATION, SIMPLE),
        NoResultReason.MIXED_UNITS,
        "[N, lbf]");
    expect(
        judge(
            breaking(Unit.NEWTON)
                .specimens(StrengthFixtures.specimens(Direction.FILL, Unit.NEWTON, "700")),
            CERTIFICATION,
            SIMPLE),
        NoResultReason.DIRECTION_MISSING,
        "WARP");
    expect(
        judge(breaking(Unit.KILOPASCAL, "700"), CERTIFICATION, SIMPLE),
        NoResultReason.UNIT_DOES_NOT_FIT,
        "kPa");
  }

  @Test
  void discarded() {
    List<Specimen> specimens =
        StrengthFixtures.specimens(Direction.WARP, Unit.NEWTON, "700", "700", "700").stream()
            .map(specimen -> specimen.id().endsWith("1") ? specimen : specimen.withFault("torn"))
            .toList();
    expect(
        judge(breaking(Unit.NEWTON).specimens(specimens), CERTIFICATION, SIMPLE),
        NoResultReason.TOO_MANY_DISCARDED,
        "3 tested, 1 kept");
    MethodTable five =
        MethodTable.of(
                List.of(
                    new MethodRow(
                        StrengthFixtures.row("grab"),
                        StrengthFixtures.GRAB,
                        "a test method",
                        true,
                        8,
                        Map.of(Direction.WARP, 5),
                        3)),
                List.of())
            .orElseThrow();
    expect(
        new StrengthTables(
                StrengthFixtures.requirements(),
                five,
                StrengthFixtures.smallSamples(),
                StrengthFixtures.hydrostatic())
            .judge(CERTIFICATION, SIMPLE)
            .judge(
                StrengthFixtures.PRODUCT,
                breaking(Unit.NEWTON, "700", "700", "700", "700").build()),
        NoResultReason.TOO_FEW_SPECIMENS,
        "at least 5 tested and 3 kept");
  }

  @Test
  void peaks() {
    TestReportBuilder report =
        StrengthFixtures.report(
            Property.TEAR_RESISTANCE, StrengthFixtures.SHELL, StrengthFixtures.TEAR);
    expect(
        judge(
            report.specimens(
                List.of(Specimen.of("w", Direction.WARP, Quantity.of("200", Unit.NEWTON)))),
            CERTIFICATION,
            SIMPLE),
        NoResultReason.PEAKS_MISSING,
        "MEAN_OF_HIGHEST_PEAKS 5");
    expect(
        judge(
            report.specimens(
                List.of(
                    Specimen.of(
                        "w",
                        Direction.WARP,
                        new Reading.MeanOfHighestPeaks(3, Quantity.of("200", Unit.NEWTON))))),
            CERTIFICATION,
            SIMPLE),
        NoResultReason.PEAKS_MISSING,
        "specimen w");
  }

  @Test
  void uncertainties() {
    expect(
        judge(breaking(Unit.NEWTON, "700"), CERTIFICATION, GUARD),
        NoResultReason.UNCERTAINTY_MISSING,
        "needs U");
    for (String impossible : List.of("0", "-4")) {
      for (DecisionRule rule : List.of(GUARD, SIMPLE)) {
        expect(
            judge(
                breaking(Unit.NEWTON, "700")
                    .uncertainty(
                        new ExpandedUncertainty(
                            Quantity.of(impossible, Unit.NEWTON), new BigDecimal("2"))),
                CERTIFICATION,
                rule),
            NoResultReason.UNCERTAINTY_NOT_POSITIVE,
            "above zero");
      }
    }
    expect(
        judge(
            breaking(Unit.NEWTON, "700")
                .uncertainty(
                    new ExpandedUncertainty(Quantity.of("1", Unit.PERCENT), new BigDecimal("2"))),
            CERTIFICATION,
            GUARD),
        NoResultReason.UNIT_DOES_NOT_FIT,
        "U = 1 %");
  }

  @Test
  void purposes() {
    expect(
        judge(
            breaking(Unit.NEWTON, "700").origin(SpecimenOrigin.THIS_ELEMENT),
            CERTIFICATION,
            SIMPLE),
        NoResultReason.PURPOSE_DOES_NOT_FIT,
        "THIS_ELEMENT");
    expect(
        judge(breaking(Unit.NEWTON, "700"), USED, SIMPLE),
        NoResultReason.PURPOSE_DOES_NOT_FIT,
        "NEW_CLOTH");
    expect(
        judge(
            TestReport.builder(
                ElementKind.COAT,
                Use.STRUCTURAL,
                StrengthFixtures.SHELL,
                Property.BREAKING_STRENGTH,
                StrengthFixtures.GRAB),
            USED,
            SIMPLE),
        NoResultReason.ORIGIN_UNKNOWN,
        "came from");
    TestReportBuilder used = breaking(Unit.NEWTON, "700").origin(SpecimenOrigin.THIS_ELEMENT);
    Purpose without =
        new Purpose.AtLeastShareOfNewValue(StrengthFixtures.POLICY, NINETY_FIVE, Map.of());
    expect(judge(used, without, SIMPLE), NoResultReason.VALUE_WHEN_NEW_MISSING, "WARP");
    Purpose share =
        new Purpose.AtLeastShareOfNewValue(
            StrengthFixtures.POLICY,
            NINETY_FIVE,
            Map.of(Direction.WARP, Quantity.of("700", Unit.NEWTON)));
    expect(
        judge(used, share, new DecisionRule.SimpleAcceptance(ComparisonMethod.roundedToLimit())),
        NoResultReason.RULE_DOES_NOT_FIT,
        "last place");
  }

  @Test
  void rules() {
    TestReportBuilder residual =
        StrengthFixtures.report(
                Property.RESIDUAL_BREAKING_STRENGTH, StrengthFixtures.SHELL, StrengthFixtures.STRIP)
            .specimens(StrengthFixtures.specimens(Direction.WARP, Unit.NEWTON, "700", "20", "700"));
    expect(
        judge(residual, CERTIFICATION, new DecisionRule.ConfidenceBoundOfMean(NINETY_FIVE)),
        NoResultReason.RULE_DOES_NOT_FIT,
        "each specimen");
    expect(
        judge(
            breaking(Unit.NEWTON, "700", "710"),
            CERTIFICATION,
            new DecisionRule.SmallSampleNonparametric(new BigDecimal("50"), NINETY_FIVE)),
        NoResultReason.NO_TABLE_VALUE,
        "2 specimens");
  }

  @Test
  void rowsAndMethods() {
    expect(
        StrengthFixtures.tables()
            .judge(CERTIFICATION, SIMPLE)
            .judge(new OriginId("OTHER"), breaking(Unit.NEWTON, "700").build()),
        NoResultReason.NO_REQUIREMENT,
        "OTHER has no row");
    expect(
        judge(
            StrengthFixtures.report(
                    Property.BREAKING_STRENGTH, StrengthFixtures.SHELL, StrengthFixtures.STRIP)
                .specimens(StrengthFixtures.specimens(Direction.WARP, Unit.NEWTON, "700")),
            CERTIFICATION,
            SIMPLE),
        NoResultReason.OTHER_METHOD,
        "accepted: [GRAB_TEST]");
  }

  @Test
  void whatIsImpossibleCannotBeBuilt() {
    assertThatThrownBy(() -> Quantity.of("NaN", Unit.NEWTON))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("NaN");
    Quantity negative = Quantity.of("-1", Unit.NEWTON);
    assertThatThrownBy(() -> Specimen.of("s", Direction.WARP, negative))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("Reading.value: given -1 N, allowed: zero or more");
    assertThatThrownBy(() -> new Reading.Peaks(List.of(negative)))
        .isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(() -> new DecisionRule.GuardBand(new BigDecimal("-1")))
        .isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(() -> new DecisionRule.ConformanceProbability(new BigDecimal("100")))
        .isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(
            () -> new ExpandedUncertainty(Quantity.of("1", Unit.NEWTON), BigDecimal.ZERO))
        .isInstanceOf(InvalidValueException.class);
    Specimen once = Specimen.of("s", Direction.WARP, Quantity.of("700", Unit.NEWTON));
    TestReportBuilder twice = breaking(Unit.NEWTON).specimens(List.of(once, once));
    assertThatThrownBy(twice::build)
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("WARP s", "each name once");
    // Growth in the wash is a negative shrinkage.
    assertThat(new Reading.Single(Quantity.of("-1", Unit.PERCENT)).quantities()).hasSize(1);
  }

  /** Rounded to the nearest 150 N, 75.1 N would be 150 N and meet a limit of 100 N. */
  @Test
  void roundingCoarserThanTheLimitHasNoResult() {
    DecisionRule coarse =
        new DecisionRule.SimpleAcceptance(
            new ComparisonMethod.RoundedTo(Rounding.toNearest("150")));
    expect(
        judge(breaking(Unit.NEWTON, "700"), CERTIFICATION, coarse),
        NoResultReason.RULE_DOES_NOT_FIT,
        "to the nearest 150, HALF_EVEN are coarser than the last place of 623 N");
    expect(
        judge(
            breaking(Unit.NEWTON, "75.1").origin(SpecimenOrigin.THIS_ELEMENT),
            new Purpose.AtLeastShareOfNewValue(
                StrengthFixtures.POLICY,
                new BigDecimal("90"),
                Map.of(Direction.WARP, Quantity.of("111", Unit.NEWTON))),
            coarse),
        NoResultReason.RULE_DOES_NOT_FIT,
        "last place of 111 N");
    assertThat(
            judge(
                breaking(Unit.NEWTON, "622.6"),
                CERTIFICATION,
                new DecisionRule.SimpleAcceptance(
                    new ComparisonMethod.RoundedTo(Rounding.toNearest("1")))))
        .isInstanceOfSatisfying(
            ReportJudge.Judged.class,
            judged -> assertThat(judged.outcome()).isEqualTo(TestOutcome.PASS));
  }
}
