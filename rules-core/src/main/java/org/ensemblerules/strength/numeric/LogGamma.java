package org.ensemblerules.strength.numeric;

/**
 * The logarithm of the gamma function, by Stirling's series of seven terms from 16 on, and below by
 * {@code G(x + 1) = x G(x)}. Textbook formulas; within 2e-14 of another library, relative where
 * above 1.
 */
final class LogGamma {
  private static final double LARGE = 16;
  // Bernoulli numbers B(2k) / (2k (2k - 1)) of Stirling's series.
  private static final double[] STIRLING = {
    1.0 / 12, -1.0 / 360, 1.0 / 1260, -1.0 / 1680, 1.0 / 1188, -691.0 / 360360, 1.0 / 156
  };

  private LogGamma() {}

  /** For x above zero. */
  static double of(double x) {
    double product = 1;
    double shifted = x;
    while (shifted < LARGE) {
      product *= shifted;
      shifted += 1;
    }
    return main(shifted) + series(shifted) - Math.log(product);
  }

  /** What the logarithm is above (x - 1/2) log x - x + log(2 pi) / 2; for x above zero. */
  static double stirling(double x) {
    return x < LARGE ? of(x) - main(x) : series(x);
  }

  private static double main(double x) {
    return (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI);
  }

  private static double series(double x) {
    double inverse = 1 / x;
    double power = inverse;
    double series = 0;
    for (double coefficient : STIRLING) {
      series += coefficient * power;
      power *= inverse * inverse;
    }
    return series;
  }
}
