package org.ensemblerules.strength;

import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.strength.numeric.Integral;
import org.ensemblerules.strength.numeric.Normal;

/**
 * Conformance probability and the risks of deciding wrongly, for normal distributions (JCGM
 * 106:2012). All numbers are plain, in one unit of the caller's choice, and doubles.
 *
 * <p>In the formulas, F is the standard normal distribution and f its density; a and b are the ends
 * of the tolerance interval, c and d those of the acceptance interval, infinite where one-sided.
 *
 * @see org.ensemblerules.LaboratoryRules#conformanceProbability
 * @see org.ensemblerules.LaboratoryRules#globalRisk
 * @since 0.1
 */
public final class Risk {
  private static final double FAR = 12;

  private Risk() {}

  /**
   * A range of values; an infinite end for a one-sided one.
   *
   * @param lower the lower end, or negative infinity
   * @param upper the upper end, above the lower, or infinity
   */
  public record Interval(double lower, double upper) {
    /**
     * Checks the ends.
     *
     * @throws InvalidValueException if the lower end is not below the upper
     */
    public Interval {
      InvalidValueException.require(
          lower < upper, "Interval.lower", lower, "below the upper end, " + upper);
    }

    /**
     * Makes a range with a lower end only.
     *
     * @param lower the lower end
     * @return the range; never null
     * @throws InvalidValueException if the end is not a number
     */
    public static Interval atLeast(double lower) {
      return new Interval(lower, Double.POSITIVE_INFINITY);
    }

    /**
     * Makes a range with an upper end only.
     *
     * @param upper the upper end
     * @return the range; never null
     * @throws InvalidValueException if the end is not a number
     */
    public static Interval atMost(double upper) {
      return new Interval(Double.NEGATIVE_INFINITY, upper);
    }
  }

  /**
   * What a whole production and a test come to.
   *
   * @param conforming the probability that an item conforms
   * @param consumer the probability that an item does not conform and is accepted
   * @param producer the probability that an item conforms and is rejected
   */
  public record Global(double conforming, double consumer, double producer) {}

  /**
   * The probability that the true value lies in the tolerance interval: {@code F((b - y) / u) -
   * F((a - y) / u)}, y the measured value. Small tails keep their digits. Source: JCGM 106:2012,
   * 7.3.3 for one limit and 7.4 for two; the examples of both come out.
   *
   * @param measured the measured value
   * @param standardUncertainty u, above zero
   * @param tolerance the tolerance interval; not null
   * @return the probability, 0 to 1
   * @throws InvalidValueException if the value is not finite or u not above zero
   */
  public static double conformanceProbability(
      double measured, double standardUncertainty, Interval tolerance) {
    requireFinite("measured", measured);
    requireSpread("standardUncertainty", standardUncertainty);
    return inside(tolerance, measured, standardUncertainty);
  }

  /**
   * The largest probability that an item accepted at the edge of its acceptance range does not
   * conform, one-sided, with a guard band of r expanded uncertainties: {@code 1 - F(r k)}. Source:
   * the risks that ILAC-G8:09/2019 states of its guard bands, as restated, worked out from k.
   *
   * @param r the guard band in expanded uncertainties; negative for acceptance beyond the limit
   * @param coverageFactor k of the expanded uncertainty, above zero
   * @return the probability, 0 to 1
   * @throws InvalidValueException if r is not finite or k not above zero
   */
  public static double ofGuardBand(double r, double coverageFactor) {
    requireFinite("r", r);
    requireSpread("coverageFactor", coverageFactor);
    return Normal.above(r * coverageFactor);
  }

  /**
   * Consumer's and producer's risk of a production judged by a measurement. With {@code g(x) = f((x
   * - m) / s) / s} the density of true values and {@code h(x) = F((d - x) / u) - F((c - x) / u)}
   * the probability that one is accepted:
   *
   * <ul>
   *   <li>conforming: {@code F((b - m) / s) - F((a - m) / s)}
   *   <li>consumer: the integral of {@code g h} outside the tolerance interval
   *   <li>producer: the integral of {@code g (1 - h)} inside it
   * </ul>
   *
   * <p>Integrated over 12 standard deviations s to each side of the mean m. Source: JCGM 106:2012
   * on global risks (clause not seen); its example and a published table come out as printed, and
   * the four cases add up to within 1e-12.
   *
   * @param mean the mean of the production
   * @param deviation its standard deviation, above zero
   * @param standardUncertainty u of the measurement, above zero
   * @param tolerance where true values conform; not null
   * @param acceptance where measured values are accepted; not null
   * @return the probabilities; never null
   * @throws InvalidValueException if a number is not finite or a spread not above zero
   */
  public static Global global(
      double mean,
      double deviation,
      double standardUncertainty,
      Interval tolerance,
      Interval acceptance) {
    requireFinite("mean", mean);
    requireSpread("deviation", deviation);
    requireSpread("standardUncertainty", standardUncertainty);
    double from = mean - FAR * deviation;
    double to = mean + FAR * deviation;
    double low = Math.max(from, Math.min(to, tolerance.lower()));
    double high = Math.max(from, Math.min(to, tolerance.upper()));
    double consumer =
        joint(mean, deviation, standardUncertainty, acceptance, true, from, low)
            + joint(mean, deviation, standardUncertainty, acceptance, true, high, to);
    double producer = joint(mean, deviation, standardUncertainty, acceptance, false, low, high);
    return new Global(inside(tolerance, mean, deviation), consumer, producer);
  }

  /** The probability of a true value in a range and a measured one accepted, or not accepted. */
  private static double joint(
      double mean,
      double deviation,
      double uncertainty,
      Interval acceptance,
      boolean accepted,
      double from,
      double to) {
    double near = FAR * uncertainty;
    return Integral.of(
        truth ->
            Normal.density((truth - mean) / deviation)
                / deviation
                * (accepted
                    ? inside(acceptance, truth, uncertainty)
                    : Normal.below((acceptance.lower() - truth) / uncertainty)
                        + Normal.above((acceptance.upper() - truth) / uncertainty)),
        from,
        to,
        within(mean, from, to),
        within(acceptance.lower() - near, from, to),
        within(acceptance.lower(), from, to),
        within(acceptance.lower() + near, from, to),
        within(acceptance.upper() - near, from, to),
        within(acceptance.upper(), from, to),
        within(acceptance.upper() + near, from, to));
  }

  private static double inside(Interval interval, double center, double spread) {
    double low = (interval.lower() - center) / spread;
    double high = (interval.upper() - center) / spread;
    // The difference of the smaller tails keeps its digits.
    return low > 0
        ? Normal.above(low) - Normal.above(high)
        : Normal.below(high) - Normal.below(low);
  }

  private static double within(double place, double from, double to) {
    return Math.min(to, Math.max(from, place));
  }

  private static void requireFinite(String field, double value) {
    InvalidValueException.require(
        Double.isFinite(value), "Risk." + field, value, "a finite number");
  }

  private static void requireSpread(String field, double value) {
    InvalidValueException.require(
        Double.isFinite(value) && value > 0, "Risk." + field, value, "a finite number above zero");
  }
}
