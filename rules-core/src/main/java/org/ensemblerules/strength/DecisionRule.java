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
 */
public sealed interface DecisionRule {
  /**
   * The value against the limit, without regard to uncertainty.
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
   * A guard band w = r U inside and outside the limit: pass, conditional pass, conditional fail,
   * fail (ILAC-G8).
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
   * The probability that the true value conforms, for a normal error of measurement (JCGM 106).
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
   * The one-sided confidence bound of the mean must conform: the lower one for a minimum, the upper
   * one for a maximum.
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
   * A one-sided tolerance bound must conform: mean minus (for a maximum plus) k standard
   * deviations, k from the noncentral t distribution, for a normal population.
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
   * The small-sample lower bound x(r) (x(1)/x(r))^k, without a supposed normal distribution. Only
   * for a minimum; rank r and exponent k stand in {@link SmallSampleTable}.
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
