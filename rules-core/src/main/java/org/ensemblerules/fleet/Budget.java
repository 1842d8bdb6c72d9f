package org.ensemblerules.fleet;

import java.math.BigDecimal;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * What may be spent on new gear. What is not spent in a year is gone.
 *
 * @param perYear the amount for each calendar year, 0 to 1000000000000, in at most two decimals;
 *     not null
 * @param firstYear the first year, in which prices are those of today, 1900 to 2200
 * @param years how many years, 1 to 50
 * @since 0.1
 */
public record Budget(BigDecimal perYear, int firstYear, int years) {
  /**
   * Checks the numbers.
   *
   * @throws InvalidValueException if one is out of range
   */
  public Budget {
    Objects.requireNonNull(perYear, "perYear");
    Money.require("Budget.perYear", perYear, 0, Money.MOST_OF_A_YEAR);
    InvalidValueException.require(
        firstYear >= 1900 && firstYear <= 2200, "Budget.firstYear", firstYear, "1900 to 2200");
    InvalidValueException.require(years >= 1 && years <= 50, "Budget.years", years, "1 to 50");
  }
}
