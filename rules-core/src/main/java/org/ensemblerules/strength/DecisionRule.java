package org.ensemblerules.strength;

import java.math.BigDecimal;
import java.util.Objects;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.NumberSize;
import org.ensemblerules.source.InvalidValueException;

/**
 * How a value and a limit become an outcome. Which rule holds is a matter of agreement or policy;
 * the same numbers pass under one and fail under another. All but simple acceptance compare
 * unrounded values.
 *
 * <p>In the formulas, L is the limit and y the value compared, both in the unit of L: the mean, or
 * the worst specimen where each must conform. F is the standard normal distribution; x is the mean
 * and s the standard deviation of n specimens.
 *
 * @since 0.1
 */
public sealed interface DecisionRule {
  /**
   * The value against the limit, without regard to uncertainty: {@code y >= L} for a minimum,
   * {@code y <= L} for a maximum, with y exact or rounded once. A value at the limit conforms.
   * Sources: ILAC-G8:09/2019, as restated, for the rule; ASTM E29 for the comparison.
   *
   * @param comparison the absolute or the rounding method; not null
   */
  record SimpleAcceptance(ComparisonMethod comparison) implements DecisionRule {
    /** Checks for nulls. */
    public SimpleAcceptance {
      Objects.requireNonNull(comparison, "comparison");
    }

    @Override
    public String text() {
      return "simple acceptance, " + comparison;
    }
  }

  /**
   * A guard band {@code w = r U} inside and outside the limit, with the expanded uncertainty U. Let
   * {@code m = y - L} for a minimum, {@code m = L - y} for a maximum, exact:
   *
   * <ul>
   *   <li>{@code w <= m}: pass
   *   <li>{@code 0 <= m < w}: conditional pass
   *   <li>{@code -w <= m < 0}: conditional fail, unless w is zero
   *   <li>anything else: fail
   * </ul>
   *
   * <p>Source: ILAC-G8:09/2019, as restated. That a value on an edge has the better of two outcomes
   * is our own reading.
   *
   * @param r how many expanded uncertainties wide, zero or more; not null
   */
  record GuardBand(BigDecimal r) implements DecisionRule {
    /**
     * Checks the width.
     *
     * @throws InvalidValueException if it is negative, or of another size than {@link NumberSize}
     *     allows
     */
    public GuardBand {
      InvalidValueException.require(r.signum() >= 0, "GuardBand.r", r, "zero or more");
      NumberSize.require("GuardBand.r", r);
    }

    @Override
    public String text() {
      return "guard band w = r U, r = " + r.toPlainString();
    }
  }

  /**
   * The probability that the true value conforms, for a normal error of measurement: {@code p =
   * F((y - L) / u)} for a minimum, {@code p = F((L - y) / u)} for a maximum, with the standard
   * uncertainty {@code u = U / k}. It passes if 100 p is at least the percentage, compared in
   * double precision. Source: JCGM 106:2012, 7.3.3, whose two examples come out.
   *
   * @param leastPercent the least probability that passes, in percent, from 0.0001 to 99.9999; not
   *     null
   */
  record ConformanceProbability(BigDecimal leastPercent) implements DecisionRule {
    /**
     * Checks the probability.
     *
     * @throws InvalidValueException if it is out of range
     */
    public ConformanceProbability {
      Shares.requirePercent("ConformanceProbability.leastPercent", leastPercent);
    }

    @Override
    public String text() {
      return "conformance probability of at least " + leastPercent.toPlainString() + " %";
    }
  }

  /**
   * The one-sided confidence bound of the mean must conform: {@code x - t s / sqrt(n)} for a
   * minimum, {@code x + t s / sqrt(n)} for a maximum. t is the quantile of Student's t at the
   * confidence, with n - 1 degrees of freedom; n is 2 or more. A bound at the limit conforms, in
   * double precision. It gives no result where each specimen must conform. Source: the interval of
   * a mean in the NIST/SEMATECH e-Handbook, 1.3.5.2, taken to one side.
   *
   * @param confidencePercent the confidence in percent, from 0.0001 to 99.9999; not null
   */
  record ConfidenceBoundOfMean(BigDecimal confidencePercent) implements DecisionRule {
    /**
     * Checks the confidence.
     *
     * @throws InvalidValueException if it is out of range
     */
    public ConfidenceBoundOfMean {
      Shares.requirePercent("ConfidenceBoundOfMean.confidencePercent", confidencePercent);
    }

    @Override
    public String text() {
      return "one-sided confidence bound of the mean, " + confidencePercent.toPlainString() + " %";
    }
  }

  /**
   * A one-sided tolerance bound must conform, for a normal population: {@code x - k s} for a
   * minimum, {@code x + k s} for a maximum. {@code k = t / sqrt(n)}, where t is the quantile at the
   * confidence of the noncentral t with n - 1 degrees of freedom and noncentrality {@code z
   * sqrt(n)}, and z the normal quantile at the coverage; n is 2 or more. A bound at the limit
   * conforms, in double precision. Sources: NIST/SEMATECH e-Handbook, 7.2.6.3, which approximates
   * k; the tables of CMH-17-1G, as restated, agree with the exact k within 0.002.
   *
   * @param coveragePercent the share of the population that conforms, in percent; not null
   * @param confidencePercent the confidence in percent; not null
   */
  record NormalTolerance(BigDecimal coveragePercent, BigDecimal confidencePercent)
      implements DecisionRule {
    /**
     * Checks the shares.
     *
     * @throws InvalidValueException if one is out of range
     */
    public NormalTolerance {
      Shares.requirePercent("NormalTolerance.coveragePercent", coveragePercent);
      Shares.requirePercent("NormalTolerance.confidencePercent", confidencePercent);
    }

    @Override
    public String text() {
      return "one-sided normal tolerance bound, coverage "
          + coveragePercent.toPlainString()
          + " %, confidence "
          + confidencePercent.toPlainString()
          + " %";
    }
  }

  /**
   * The small-sample lower bound {@code x(r) (x(1) / x(r))^k} must conform, without a supposed
   * normal distribution. x(1) is the lowest and x(r) the r-th lowest of n specimens, all above
   * zero; rank r and exponent k stand in {@link SmallSampleTable}. Only for a minimum. A bound at
   * the limit conforms, in double precision. Source: CMH-17-1G, tables 8.5.14 and 8.5.15, as
   * restated.
   *
   * @param coveragePercent the coverage in percent; not null
   * @param confidencePercent the confidence in percent; not null
   */
  record SmallSampleNonparametric(BigDecimal coveragePercent, BigDecimal confidencePercent)
      implements DecisionRule {
    /**
     * Checks the shares.
     *
     * @throws InvalidValueException if one is out of range
     */
    public SmallSampleNonparametric {
      Shares.requirePercent("SmallSampleNonparametric.coveragePercent", coveragePercent);
      Shares.requirePercent("SmallSampleNonparametric.confidencePercent", confidencePercent);
    }

    @Override
    public String text() {
      return "small-sample non-parametric bound, coverage "
          + coveragePercent.toPlainString()
          + " %, confidence "
          + confidencePercent.toPlainString()
          + " %";
    }
  }

  /**
   * Returns the rule on one line.
   *
   * @return the text; never null
   */
  String text();
}
