package org.ensemblerules.strength.numeric;

/**
 * The standard normal distribution F, with the density {@code f(x) = exp(-x^2 / 2) / sqrt(2 pi)}.
 *
 * <p>Up to 2.5 from the middle {@code F(x) = 1/2 + f(x) (x + x^3/3 + x^5/(3 5) + ...)}; farther out
 * Laplace's continued fraction, {@code 1 - F(x) = f(x) / (x + 1 / (x + 2 / (x + ...)))}; 0 beyond
 * 40. Textbook formulas; checked against other libraries: probabilities within 1e-15, and within a
 * part in 1e12 down to the tails; quantiles within 1e-10.
 */
public final class Normal {
  private static final double LOG_ROOT_TWO_PI = 0.5 * Math.log(2 * Math.PI);
  // Where the series of the middle gives way to the continued fraction of the tail.
  private static final double TAIL = 2.5;
  private static final int TERMS = 500;

  private Normal() {}

  /**
   * The density.
   *
   * @param x where
   * @return the density at x
   */
  public static double density(double x) {
    return Math.exp(-0.5 * x * x - LOG_ROOT_TWO_PI);
  }

  /**
   * The probability of at most x.
   *
   * @param x where; may be infinite
   * @return the probability, accurate to its relative size in the lower tail too
   */
  public static double below(double x) {
    if (x < -TAIL) {
      return upperTail(-x);
    }
    if (x > TAIL) {
      return 1 - upperTail(x);
    }
    // x + x^3/3 + x^5/(3*5) + ..., all terms of one sign.
    double term = x;
    double sum = x;
    for (int k = 3; k < TERMS && Math.abs(term) > Math.abs(sum) * 1e-18; k += 2) {
      term *= x * x / k;
      sum += term;
    }
    return 0.5 + density(x) * sum;
  }

  /**
   * The probability of more than x.
   *
   * @param x where; may be infinite
   * @return the probability, accurate to its relative size in the upper tail too
   */
  public static double above(double x) {
    return below(-x);
  }

  /**
   * The value that a normal variable stays below with the given probability: the root of {@code
   * F(x) = p}, by Halley's steps within a bracket.
   *
   * @param probability above 0 and below 1
   * @return the quantile
   */
  public static double quantile(double probability) {
    if (probability > 0.5) {
      // The smaller of the two probabilities keeps its digits.
      return -quantile(1 - probability);
    }
    double low = -40;
    double high = 0;
    double x = -1;
    for (int i = 0; i < TERMS; i++) {
      double excess = below(x) - probability;
      if (excess > 0) {
        high = x;
      } else {
        low = x;
      }
      double step = excess / density(x);
      double next = x - step / (1 + x * step / 2);
      if (!(next > low && next < high)) {
        next = (low + high) / 2;
      }
      if (Math.abs(next - x) <= 4e-16 * Math.abs(x)) {
        return next;
      }
      x = next;
    }
    return x;
  }

  /** Laplace's continued fraction, from the far end. */
  private static double upperTail(double x) {
    if (x > 40) {
      return 0;
    }
    double fraction = x;
    for (int k = 120; k >= 1; k--) {
      fraction = x + k / fraction;
    }
    return density(x) / fraction;
  }
}
