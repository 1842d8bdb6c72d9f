package org.ensemblerules.fleet;

import java.math.BigDecimal;
import org.ensemblerules.measure.NumberSize;
import org.ensemblerules.source.InvalidValueException;

/** Amounts of money: two decimals, counted in the smallest coin. */
final class Money {
  static final BigDecimal MOST_OF_ONE = BigDecimal.valueOf(10_000_000);
  static final BigDecimal MOST_OF_A_YEAR = BigDecimal.valueOf(1_000_000_000_000L);
  private static final int DECIMALS = 2;

  private Money() {}

  static void require(String field, BigDecimal amount, int leastSign, BigDecimal most) {
    NumberSize.require(field, amount);
    InvalidValueException.require(
        amount.signum() >= leastSign
            && amount.compareTo(most) <= 0
            && amount.stripTrailingZeros().scale() <= DECIMALS,
        field,
        amount,
        (leastSign > 0 ? "above 0" : "0 or more")
            + ", at most "
            + most.toPlainString()
            + ", two decimals");
  }

  static long coins(BigDecimal amount) {
    return amount.movePointRight(DECIMALS).longValueExact();
  }

  static BigDecimal amount(long coins) {
    return BigDecimal.valueOf(coins, DECIMALS);
  }
}
