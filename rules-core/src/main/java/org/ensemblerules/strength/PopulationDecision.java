package org.ensemblerules.strength;

import com.google.common.collect.ImmutableList;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.strength.numeric.StudentT;

/**
 * Decision rules that look from the specimens to the population behind them, by the formulas that
 * {@link DecisionRule} has. Mean, standard deviation (to 34 digits) and the distance of the mean
 * from the limit are exact; factor, bound and the last comparison are in double precision.
 */
final class PopulationDecision {
  private PopulationDecision() {}

  static Decision of(
      DecisionRule rule, EffectiveLimit limit, Sample sample, SmallSampleTable smallSamples)
      throws Stopped {
    if (sample.size() < 2) {
      throw new Stopped(
          NoResultReason.TWO_SPECIMENS_NEEDED, rule.text() + ": " + sample.size() + " specimen");
    }
    if (rule instanceof DecisionRule.SmallSampleNonparametric small) {
      return smallSample(small, limit, sample, smallSamples);
    }
    int n = sample.size();
    ImmutableList.Builder<Figure> figures = ImmutableList.builder();
    double factor;
    if (rule instanceof DecisionRule.NormalTolerance tolerance) {
      factor =
          StudentT.toleranceFactor(
              n,
              Shares.ofPercent(tolerance.coveragePercent()),
              Shares.ofPercent(tolerance.confidencePercent()));
      figures.add(
          Figure.given("coverage in percent", tolerance.coveragePercent()),
          Figure.given("confidence in percent", tolerance.confidencePercent()),
          Figure.worked("tolerance factor k", factor, Optional.empty()));
    } else {
      BigDecimal confidence = ((DecisionRule.ConfidenceBoundOfMean) rule).confidencePercent();
      double t = StudentT.quantile(Shares.ofPercent(confidence), n - 1, 0);
      factor = t / Math.sqrt(n);
      figures.add(
          Figure.given("confidence in percent", confidence),
          Figure.count("degrees of freedom", n - 1),
          Figure.worked("Student t", t, Optional.empty()));
    }
    Rational mean = sample.mean();
    Rational deviation = sample.standardDeviation();
    double distance = factor * deviation.toDouble();
    boolean minimum = limit.bound() == Bound.MINIMUM;
    double bound = mean.toDouble() + (minimum ? -distance : distance);
    Optional<Unit> unit = Optional.of(limit.value().unit());
    figures.add(
        limit.compared("mean of specimens", mean),
        Figure.of("standard deviation", deviation, unit).shownTo(limit.places(), Rational.ZERO),
        limit.compared(Figure.worked(minimum ? "lower bound" : "upper bound", bound, unit)),
        Figure.of(Decision.limitName(limit), limit.value()));
    return new Decision(
        limit.margin(mean).toDouble() >= distance ? TestOutcome.PASS : TestOutcome.FAIL,
        figures.build(),
        false);
  }

  private static Decision smallSample(
      DecisionRule.SmallSampleNonparametric rule,
      EffectiveLimit limit,
      Sample sample,
      SmallSampleTable smallSamples)
      throws Stopped {
    if (limit.bound() != Bound.MINIMUM) {
      throw new Stopped(
          NoResultReason.RULE_DOES_NOT_FIT, "the bound is a lower one; the limit is a maximum");
    }
    SmallSampleRow row =
        smallSamples
            .row(rule.coveragePercent(), rule.confidencePercent(), sample.size())
            .orElseThrow(
                () ->
                    new Stopped(
                        NoResultReason.NO_TABLE_VALUE,
                        "no rank and exponent for " + sample.size() + " specimens"));
    List<Rational> ascending = sample.ascending();
    Rational lowest = ascending.get(0);
    Rational ranked = ascending.get(row.rank() - 1);
    if (lowest.signum() <= 0) {
      throw new Stopped(NoResultReason.RULE_DOES_NOT_FIT, "the bound needs values above zero");
    }
    double bound = bound(lowest.toDouble(), ranked.toDouble(), row.exponent().doubleValue());
    Optional<Unit> unit = Optional.of(limit.value().unit());
    return new Decision(
        bound >= limit.value().value().toDouble() ? TestOutcome.PASS : TestOutcome.FAIL,
        ImmutableList.of(
            Figure.given("coverage in percent", rule.coveragePercent()),
            Figure.given("confidence in percent", rule.confidencePercent()),
            Figure.count("rank r", row.rank()),
            Figure.given("exponent k", row.exponent()),
            limit.compared("lowest specimen", lowest),
            limit.compared("specimen of rank r", ranked),
            limit.compared(Figure.worked("lower bound", bound, unit)),
            Figure.of(Decision.limitName(limit), limit.value())),
        false);
  }

  /** {@code x(r) (x(1) / x(r))^k}, in double precision. */
  static double bound(double lowest, double ranked, double exponent) {
    return ranked * Math.pow(lowest / ranked, exponent);
  }
}
