package org.ensemblerules.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.strength.numeric.CriticalDifference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each decision rule against worked examples of others. */
class DecisionRulesTest {
  private static final BigDecimal NINETY = new BigDecimal("90");
  private static final BigDecimal NINETY_FIVE = new BigDecimal("95");
  private static final BigDecimal NINETY_NINE = new BigDecimal("99");

  /** CMH-17-1G, the 18 strengths of a legacy program's results, as restated. */
  private static final String[] EIGHTEEN = {
    "137.4438", "139.5395", "150.89", "141.4474", "141.8203", "151.8821", "143.9245", "132.9732",
    "136.6419", "138.1723", "148.7668", "143.283", "143.5429", "141.7023", "137.4732", "152.338",
    "144.1589", "128.5218"
  };

  private static ReportJudge.Judged against(
      String limit, Unit unit, DecisionRule rule, Statistic statistic, String... values) {
    RequirementTable table =
        RequirementTable.of(
                List.of(
                    StrengthFixtures.requirement(
                        "breaking",
                        Property.BREAKING_STRENGTH,
                        StrengthFixtures.SHELL,
                        StrengthFixtures.GRAB,
                        EnumSet.of(Direction.WARP),
                        new SpecimenValue.AsRead(),
                        statistic,
                        Limit.atLeast(limit, unit))))
            .orElseThrow();
    ReportJudge.Result result =
        new StrengthTables(
                table,
                StrengthFixtures.methods(),
                StrengthFixtures.smallSamples(),
                StrengthFixtures.hydrostatic())
            .judge(StrengthFixtures.CERTIFICATION, rule)
            .judge(StrengthFixtures.PRODUCT, StrengthFixtures.breaking(unit, values).build());
    return (ReportJudge.Judged) result;
  }

  private static double worked(ReportJudge.Judged judged, String name) {
    return StrengthFixtures.figure(judged, name).doubleValue();
  }

  private static ReportJudge.Judged eighteen(DecisionRule rule) {
    return against("100", Unit.NEWTON, rule, Statistic.MEAN_OF_SPECIMENS, EIGHTEEN);
  }

  /** E1: mean, standard deviation, normal B 129.287 and A 120.336 (approximate factors). */
  @Test
  void normalToleranceOfTheEighteen() {
    ReportJudge.Judged b = eighteen(new DecisionRule.NormalTolerance(NINETY, NINETY_FIVE));
    assertThat(worked(b, "mean of specimens")).isCloseTo(141.91788, within(0.00001));
    assertThat(worked(b, "standard deviation")).isCloseTo(6.39788, within(0.00001));
    assertThat(worked(b, "lower bound"))
        .isCloseTo(129.287, within(0.02))
        .isCloseTo(129.290, within(0.0005));
    ReportJudge.Judged a = eighteen(new DecisionRule.NormalTolerance(NINETY_NINE, NINETY_FIVE));
    assertThat(worked(a, "lower bound"))
        .isCloseTo(120.336, within(0.02))
        .isCloseTo(120.355, within(0.001));
  }

  /** E1: non-parametric (Hanson-Koopmans) B 124.156, A 99.651. */
  @Test
  void smallSampleBoundOfTheEighteen() {
    ReportJudge.Judged b = eighteen(new DecisionRule.SmallSampleNonparametric(NINETY, NINETY_FIVE));
    assertThat(worked(b, "lower bound")).isCloseTo(124.156, within(0.0005));
    assertThat(b.outcome()).isEqualTo(TestOutcome.PASS);
    ReportJudge.Judged a =
        eighteen(new DecisionRule.SmallSampleNonparametric(NINETY_NINE, NINETY_FIVE));
    assertThat(worked(a, "lower bound")).isCloseTo(99.651, within(0.0005));
    assertThat(a.outcome()).as("99.65 N against 100 N").isEqualTo(TestOutcome.FAIL);
  }

  /** E1: 95 % lower confidence bound of the mean 139.2946 (t = 1.7396, 17 degrees). */
  @Test
  void confidenceBoundOfTheMeanOfTheEighteen() {
    ReportJudge.Judged bound = eighteen(new DecisionRule.ConfidenceBoundOfMean(NINETY_FIVE));
    assertThat(worked(bound, "Student t")).isCloseTo(1.7396, within(0.00005));
    assertThat(worked(bound, "lower bound")).isCloseTo(139.2946, within(0.00005));
  }

  /** E9: passes on the mean and its bound, fails on the tolerance bound. The rule is named. */
  @Test
  void theRuleChangesTheVerdict() {
    String[] tear = {"24.1", "23.0", "22.4", "25.2", "23.7"};
    ReportJudge.Judged mean =
        against("22", Unit.POUND_FORCE, StrengthFixtures.SIMPLE, Statistic.MEAN_OF_SPECIMENS, tear);
    assertThat(mean.outcome()).isEqualTo(TestOutcome.PASS);
    assertThat(StrengthFixtures.figure(mean, "mean of specimens")).isEqualByComparingTo("23.68");
    assertThat(mean.rule().text()).isEqualTo("simple acceptance, absolute method");
    ReportJudge.Judged bound =
        against(
            "22",
            Unit.POUND_FORCE,
            new DecisionRule.ConfidenceBoundOfMean(NINETY_FIVE),
            Statistic.MEAN_OF_SPECIMENS,
            tear);
    assertThat(bound.outcome()).isEqualTo(TestOutcome.PASS);
    assertThat(worked(bound, "standard deviation")).isCloseTo(1.07098, within(0.000005));
    assertThat(worked(bound, "lower bound")).isCloseTo(22.659, within(0.0005));
    ReportJudge.Judged basis =
        against(
            "22",
            Unit.POUND_FORCE,
            new DecisionRule.NormalTolerance(NINETY, NINETY_FIVE),
            Statistic.MEAN_OF_SPECIMENS,
            tear);
    assertThat(basis.outcome()).isEqualTo(TestOutcome.FAIL);
    assertThat(worked(basis, "lower bound")).isCloseTo(20.03, within(0.005));
    assertThat(basis.rule().text())
        .isEqualTo("one-sided normal tolerance bound, coverage 90 %, confidence 95 %");
  }

  private static TestReportBuilder uncertain(String value, String expanded) {
    return StrengthFixtures.breaking(Unit.NEWTON, value)
        .uncertainty(
            new ExpandedUncertainty(Quantity.of(expanded, Unit.NEWTON), new BigDecimal("2")));
  }

  /** ILAC-G8 zones about a lower limit of 623 N with U = 8 N: A = 631 N, and 615 N below. */
  @ParameterizedTest
  @CsvSource({
    "631, 1, PASS",
    "630.99, 1, CONDITIONAL_PASS",
    "623, 1, CONDITIONAL_PASS",
    "622.99, 1, CONDITIONAL_FAIL",
    "615, 1, CONDITIONAL_FAIL",
    "614.99, 1, FAIL",
    "629.64, 0.83, PASS",
    "629.63, 0.83, CONDITIONAL_PASS",
    "623, 0, PASS",
    "622.99, 0, FAIL"
  })
  void guardBand(String value, String r, TestOutcome outcome) {
    assertThat(
            StrengthFixtures.judged(
                    uncertain(value, "8"),
                    StrengthFixtures.CERTIFICATION,
                    new DecisionRule.GuardBand(new BigDecimal(r)))
                .outcome())
        .isEqualTo(outcome);
  }

  /** A lower limit of 100 N, u = 4 N, computed before; here moved by 523 N to the table's limit. */
  @ParameterizedTest
  @CsvSource({
    "615, 0.0228",
    "619, 0.1587",
    "623, 0.5",
    "627, 0.8413",
    "628, 0.8944",
    "631, 0.9772"
  })
  void conformanceProbability(String value, double probability) {
    ReportJudge.Judged judged =
        StrengthFixtures.judged(
            uncertain(value, "8"),
            StrengthFixtures.CERTIFICATION,
            new DecisionRule.ConformanceProbability(NINETY_FIVE));
    assertThat(worked(judged, "conformance probability")).isCloseTo(probability, within(0.00005));
    assertThat(judged.outcome())
        .isEqualTo(probability >= 0.95 ? TestOutcome.PASS : TestOutcome.FAIL);
  }

  /** On each specimen the lowest counts: a good mean does not hide it. */
  @Test
  void theLowestSpecimenCounts() {
    String[] values = {"120", "130", "99"};
    assertThat(
            against("100", Unit.NEWTON, StrengthFixtures.SIMPLE, Statistic.EACH_SPECIMEN, values)
                .outcome())
        .isEqualTo(TestOutcome.FAIL);
    assertThat(
            against(
                    "100",
                    Unit.NEWTON,
                    StrengthFixtures.SIMPLE,
                    Statistic.MEAN_OF_SPECIMENS,
                    values)
                .outcome())
        .isEqualTo(TestOutcome.PASS);
  }

  /** A change counts in either sense: growth of 4 % is over 3 %, shrinkage of 3 % is not. */
  @ParameterizedTest
  @CsvSource({"-4, FAIL", "4, FAIL", "-3, PASS", "3, PASS"})
  void changesInEitherSense(String percent, TestOutcome outcome) {
    TestReportBuilder report =
        StrengthFixtures.report(Property.WASH_CHANGE, StrengthFixtures.SHELL, StrengthFixtures.TEAR)
            .specimens(StrengthFixtures.specimens(Direction.WARP, Unit.PERCENT, percent));
    assertThat(
            StrengthFixtures.judged(report, StrengthFixtures.CERTIFICATION, StrengthFixtures.SIMPLE)
                .outcome())
        .isEqualTo(outcome);
  }

  /** ASTM E29: 99.5 N passes 100 N by the rounding method and fails by the absolute one. */
  @Test
  void roundingForConformance() {
    DecisionRule rounded = new DecisionRule.SimpleAcceptance(ComparisonMethod.roundedToLimit());
    ReportJudge.Judged judged =
        against("100", Unit.NEWTON, rounded, Statistic.MEAN_OF_SPECIMENS, "99.5");
    assertThat(judged.outcome()).isEqualTo(TestOutcome.PASS);
    assertThat(StrengthFixtures.figure(judged, "value rounded for comparison"))
        .isEqualByComparingTo("100");
    assertThat(
            against(
                    "100",
                    Unit.NEWTON,
                    StrengthFixtures.SIMPLE,
                    Statistic.MEAN_OF_SPECIMENS,
                    "99.5")
                .outcome())
        .isEqualTo(TestOutcome.FAIL);
  }

  /** For a maximum the bound is the upper one. */
  @Test
  void boundsOfAMaximumLieAbove() {
    TestReportBuilder report =
        StrengthFixtures.report(
                Property.HEAT_SHRINKAGE, StrengthFixtures.SHELL, StrengthFixtures.TEAR)
            .specimens(
                StrengthFixtures.specimens(Direction.WARP, Unit.PERCENT, "9.0", "9.5", "9.9"));
    assertThat(
            StrengthFixtures.judged(report, StrengthFixtures.CERTIFICATION, StrengthFixtures.SIMPLE)
                .outcome())
        .isEqualTo(TestOutcome.PASS);
    ReportJudge.Judged bound =
        StrengthFixtures.judged(
            report,
            StrengthFixtures.CERTIFICATION,
            new DecisionRule.ConfidenceBoundOfMean(NINETY_FIVE));
    assertThat(worked(bound, "upper bound")).isGreaterThan(10);
    assertThat(bound.outcome()).isEqualTo(TestOutcome.FAIL);
  }

  /** AATCC 127-2003 Table VI, N = 1 to 5; N = 2 is printed 0.01 lower than 16.13 / root 2. */
  @ParameterizedTest
  @CsvSource({"1, 16.13", "2, 11.40", "3, 9.31", "4, 8.06", "5, 7.21"})
  void criticalDifferences(int n, double printed) {
    assertThat(CriticalDifference.ofMeans(Quantity.of("16.13", Unit.MILLIBAR), n))
        .isCloseTo(printed, within(0.011));
  }
}
