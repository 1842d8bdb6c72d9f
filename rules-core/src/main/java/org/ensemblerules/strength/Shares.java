package org.ensemblerules.strength;

import java.math.BigDecimal;
import org.ensemblerules.measure.NumberSize;
import org.ensemblerules.source.InvalidValueException;

/** Probabilities and shares that are given in percent. */
final class Shares {
  // Closer to nothing or all, double precision can no longer tell the quantiles.
  private static final BigDecimal LEAST = new BigDecimal("0.0001");
  private static final BigDecimal MOST = new BigDecimal("99.9999");

  private Shares() {}

  /** Refuses what is no share between nothing and all, or is not told from one of them. */
  static void requirePercent(String field, BigDecimal percent) {
    InvalidValueException.require(
        percent.compareTo(LEAST) >= 0 && percent.compareTo(MOST) <= 0,
        field,
        percent,
        "from " + LEAST + " to " + MOST);
    NumberSize.require(field, percent);
  }

  /** The probability, percent over 100, as the nearest double: between 0 and 1. */
  static double ofPercent(BigDecimal percent) {
    return percent.movePointLeft(2).doubleValue();
  }
}
