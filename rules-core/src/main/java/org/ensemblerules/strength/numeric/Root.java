package org.ensemblerules.strength.numeric;

import java.util.function.DoubleUnaryOperator;

/** The place where a rising function passes zero. */
final class Root {
  private static final int STEPS = 300;

  private Root() {}

  /**
   * Finds the root of a rising function: bracketed by doubling, then by the false position with
   * halving, so that it always ends. Good to four units in the last place of the bracket, as far as
   * the function tells its own sign.
   */
  static double ofRising(DoubleUnaryOperator function, double start) {
    double width = Math.max(1, Math.abs(start) * 0.1);
    double low = start - width;
    double high = start + width;
    double atLow = function.applyAsDouble(low);
    double atHigh = function.applyAsDouble(high);
    for (int i = 0; i < STEPS && atLow > 0; i++) {
      width *= 2;
      high = low;
      atHigh = atLow;
      low -= width;
      atLow = function.applyAsDouble(low);
    }
    for (int i = 0; i < STEPS && atHigh < 0; i++) {
      width *= 2;
      low = high;
      atLow = atHigh;
      high += width;
      atHigh = function.applyAsDouble(high);
    }
    int sameSide = 0;
    for (int i = 0; i < STEPS; i++) {
      if (atLow == 0 || high - low <= 4 * Math.ulp(low)) {
        return atLow == 0 ? low : (low + high) / 2;
      }
      double guess = low - atLow * (high - low) / (atHigh - atLow);
      boolean halve = sameSide >= 2 || !(guess > low && guess < high);
      double next = halve ? (low + high) / 2 : guess;
      double at = function.applyAsDouble(next);
      if (at == 0 || next == low || next == high) {
        return next;
      }
      boolean replacesLow = at < 0;
      sameSide = halve ? 0 : sameSide + 1;
      if (replacesLow) {
        low = next;
        atLow = at;
      } else {
        high = next;
        atHigh = at;
      }
    }
    return (low + high) / 2;
  }
}
