package org.ensemblerules.strength;

import java.math.BigDecimal;
import org.ensemblerules.source.InvalidValueException;

/** Probabilities and shares that are given in percent. */
final class Shares {
  private static final BigDecimal HUNDRED = new BigDecimal(100);

  private Shares() {}

  /** Refuses what is no share between nothing and all. */
  static void requirePercent(String field, BigDecimal percent) {
    InvalidValueException.require(
        percent.signum() > 0 && percent.compareTo(HUNDRED) < 0,
        field,
        percent,
        "above 0, below 100");
  }

  /** The probability, between 0 and 1. */
  static double ofPercent(BigDecimal percent) {
    return percent.movePointLeft(2).doubleValue();
  }
}
