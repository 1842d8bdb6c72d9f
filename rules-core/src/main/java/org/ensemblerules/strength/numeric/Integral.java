package org.ensemblerules.strength.numeric;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * Integrals of smooth functions by Gauss-Legendre quadrature over panels that are halved.
 *
 * <p>A panel from a to b gives {@code h (w1 f(c + h x1) + ... + w16 f(c + h x16))} with {@code c =
 * (a + b) / 2} and {@code h = (b - a) / 2}; x are the roots of the Legendre polynomial of degree
 * 16. Panels are halved, up to 25 times, until that changes the sum by no more than a part in 1e14,
 * or by 1e-16. The method is a textbook's.
 */
public final class Integral {
  private static final int POINTS = 16;
  private static final double[] NODES = new double[POINTS];
  private static final double[] WEIGHTS = new double[POINTS];
  private static final double TOLERANCE = 1e-14;
  // Below this, what halving would still change is noise: integrals here are probabilities.
  private static final double NOISE = 1e-16;
  private static final int DEEPEST = 25;

  static {
    // Roots of the Legendre polynomial by Newton's method.
    for (int i = 0; i < POINTS; i++) {
      double x = Math.cos(Math.PI * (i + 0.75) / (POINTS + 0.5));
      double slope = 1;
      for (int step = 0; step < 50; step++) {
        double before = 1;
        double value = x;
        for (int k = 2; k <= POINTS; k++) {
          double next = ((2 * k - 1) * x * value - (k - 1) * before) / k;
          before = value;
          value = next;
        }
        slope = POINTS * (x * value - before) / (x * x - 1);
        double change = value / slope;
        x -= change;
        if (Math.abs(change) < 1e-16) {
          break;
        }
      }
      NODES[i] = x;
      WEIGHTS[i] = 2 / ((1 - x * x) * slope * slope);
    }
  }

  private Integral() {}

  /**
   * Integrates over the range between the first and the last break.
   *
   * @param function the function; smooth between breaks; not null
   * @param breaks at least two finite places, in any order, where the range starts, ends and where
   *     the function changes quickly; not null
   * @return the integral
   */
  public static double of(DoubleUnaryOperator function, double... breaks) {
    double[] places = breaks.clone();
    Arrays.sort(places);
    double sum = 0;
    for (int i = 1; i < places.length; i++) {
      if (places[i] > places[i - 1]) {
        double whole = panel(function, places[i - 1], places[i]);
        sum += halved(function, places[i - 1], places[i], whole, DEEPEST);
      }
    }
    return sum;
  }

  private static double halved(
      DoubleUnaryOperator function, double from, double to, double whole, int depth) {
    double middle = (from + to) / 2;
    double left = panel(function, from, middle);
    double right = panel(function, middle, to);
    if (depth == 0
        || Math.abs(left + right - whole) <= Math.max(NOISE, TOLERANCE * Math.abs(whole))) {
      return left + right;
    }
    return halved(function, from, middle, left, depth - 1)
        + halved(function, middle, to, right, depth - 1);
  }

  private static double panel(DoubleUnaryOperator function, double from, double to) {
    double half = (to - from) / 2;
    double center = (to + from) / 2;
    double sum = 0;
    for (int i = 0; i < POINTS; i++) {
      sum += WEIGHTS[i] * function.applyAsDouble(center + half * NODES[i]);
    }
    return sum * half;
  }
}
