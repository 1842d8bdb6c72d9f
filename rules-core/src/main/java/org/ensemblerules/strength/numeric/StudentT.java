package org.ensemblerules.strength.numeric;

/**
 * Student's t distribution, central and noncentral: T = (Z + delta) / W, where Z is standard normal
 * and W, independent of it, the root of a chi-square variable over its degrees of freedom.
 *
 * <p>{@code P(T <= t)} is the integral of {@code F(t w - delta) g(w)} over {@code w > 0}, where F
 * is the standard normal distribution and {@code g(w) = 2 (v/2)^(v/2) / G(v/2) w^(v-1) exp(-v w^2 /
 * 2)} the density of W with v degrees of freedom. Taken over 12 of its deviations, {@code 1 /
 * sqrt(2 v)}, to each side of 1. Textbook formulas, checked against other libraries and printed
 * tables.
 *
 * <p>With up to 1,000,000 degrees of freedom, a central probability is within 1e-13. No report that
 * can be read has as many specimens.
 */
public final class StudentT {
  private static final double SPREAD = 12;

  private StudentT() {}

  /**
   * The probability of at most t.
   *
   * @param t where
   * @param degrees degrees of freedom, at least 1
   * @param delta the noncentrality; 0 for the central distribution
   * @return the probability
   */
  public static double below(double t, int degrees, double delta) {
    double half = degrees / 2.0;
    double logScale = Math.log(2) + 0.5 * Math.log(half / (2 * Math.PI)) - LogGamma.stirling(half);
    double spread = SPREAD / Math.sqrt(2.0 * degrees);
    double from = Math.max(0, 1 - spread);
    double to = 1 + spread;
    double rise = delta / t;
    double width = SPREAD / Math.abs(t);
    return Integral.of(
        w -> w == 0 ? 0 : Normal.below(t * w - delta) * Math.exp(logScale - logFall(w, half)),
        from,
        Math.min(1, to),
        to,
        within(rise - width, from, to),
        within(rise, from, to),
        within(rise + width, from, to));
  }

  /**
   * How far the density of the root lies below its scale, as a logarithm. Written so that nothing
   * large cancels: with many degrees of freedom the noise of such a difference would be the answer.
   */
  private static double logFall(double w, double half) {
    double beyond = w - 1;
    return half * (beyond * beyond + 2 * (beyond - Math.log1p(beyond))) + Math.log(w);
  }

  private static double within(double place, double from, double to) {
    return Double.isNaN(place) ? from : Math.min(to, Math.max(from, place));
  }

  /**
   * The value that T stays below with the given probability.
   *
   * @param probability above 0 and below 1
   * @param degrees degrees of freedom, at least 1
   * @param delta the noncentrality; 0 for the central distribution
   * @return the quantile
   */
  public static double quantile(double probability, int degrees, double delta) {
    if (probability > 0.5) {
      // The smaller of the two probabilities keeps its digits.
      return -quantile(1 - probability, degrees, -delta);
    }
    return Root.ofRising(
        t -> below(t, degrees, delta) - probability, delta + Normal.quantile(probability));
  }

  /**
   * The factor k of a one-sided tolerance bound, mean minus k standard deviations, for a normal
   * population: {@code k = t / sqrt(n)}, t the quantile at the confidence with n - 1 degrees of
   * freedom and noncentrality {@code z sqrt(n)}, z the normal quantile at the coverage. Exact
   * factors computed elsewhere agree to four decimals, the tables of CMH-17-1G, as restated, within
   * 0.002.
   *
   * @param n how many specimens, at least 2
   * @param coverage the share of the population above the bound, between 0 and 1
   * @param confidence the confidence, between 0 and 1
   * @return k
   */
  public static double toleranceFactor(int n, double coverage, double confidence) {
    return toleranceFactor(n, n - 1, coverage, confidence);
  }

  /**
   * The factor k where the standard deviation is pooled from several groups: the same formula with
   * its degrees of freedom. Source: CMH-17-1G, 8.3.11.1.2, as restated, whose four groups come out
   * within 0.05.
   *
   * @param n how many specimens are behind the mean, at least 1
   * @param degrees degrees of freedom of the standard deviation, at least 1
   * @param coverage the share of the population above the bound, between 0 and 1
   * @param confidence the confidence, between 0 and 1
   * @return k
   */
  public static double toleranceFactor(int n, int degrees, double coverage, double confidence) {
    double root = Math.sqrt(n);
    return quantile(confidence, degrees, Normal.quantile(coverage) * root) / root;
  }
}
