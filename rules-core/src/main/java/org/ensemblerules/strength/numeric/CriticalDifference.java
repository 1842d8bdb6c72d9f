package org.ensemblerules.strength.numeric;

import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;

/**
 * How far apart two means must lie to be told apart, from a method's precision statement.
 *
 * <p>{@code D(n) = D(1) / sqrt(n)}: D(1) is the critical difference of single determinations, n how
 * many are behind each of the two means. D(n) is in the unit of D(1), in double precision.
 *
 * @see org.ensemblerules.LaboratoryRules#criticalDifference
 */
public final class CriticalDifference {
  private CriticalDifference() {}

  /**
   * Works out the critical difference of means of so many determinations each, from that of single
   * ones: it falls with the root of their number.
   *
   * @param single the critical difference of single determinations, above zero; not null
   * @param determinations how many are behind each mean, 1 or more
   * @return the critical difference in the same unit
   * @throws InvalidValueException if a number is out of range
   */
  public static double ofMeans(Quantity single, int determinations) {
    InvalidValueException.require(
        single.isPositive(), "CriticalDifference.single", single, "above zero");
    InvalidValueException.require(
        determinations >= 1, "CriticalDifference.determinations", determinations, "1 or more");
    return single.value().doubleValue() / Math.sqrt(determinations);
  }
}
