package org.ensemblerules.care;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.source.InvalidValueException;

/**
 * By how many powers of ten a cleaning lessened a count of bacteria: {@code log10(b / a)}, rounded
 * down, never up, with the count b before and a after. Counts may be means, so they need not be
 * whole. It is told exactly, by comparing whole numbers; no logarithm is worked out. Negative if
 * there are more than before. Plain arithmetic; printed examples come out.
 *
 * @since 0.1
 */
public sealed interface LogReduction extends CleaningResult {
  /** The most decimals asked for; each costs ten times the digits of the one before. */
  int MOST_DECIMALS = 3;

  /**
   * It was measured.
   *
   * @param ratio count before divided by count after, above zero; not null
   */
  record Reduced(Rational ratio) implements LogReduction {
    /**
     * Checks the ratio.
     *
     * @throws InvalidValueException if it is not above zero
     */
    public Reduced {
      InvalidValueException.require(ratio.signum() > 0, "Reduced.ratio", ratio, "above zero");
    }

    /**
     * Returns the whole logs, rounded down.
     *
     * @return the largest whole number n with before at least after x 10^n; negative if there are
     *     more than before
     */
    public int wholeLogs() {
      return floorLog(ratio, 1);
    }

    /**
     * Returns the logs, rounded down.
     *
     * @param decimals to how many decimals, 0 to 3
     * @return the largest such number not above the logarithm; never null
     * @throws InvalidValueException if the number of decimals is out of range
     */
    public BigDecimal roundedDown(int decimals) {
      InvalidValueException.require(
          decimals >= 0 && decimals <= MOST_DECIMALS,
          "decimals",
          decimals,
          "0 to " + MOST_DECIMALS);
      // The floor of p log x is the floor of log x^p.
      int power = BigInteger.TEN.pow(decimals).intValueExact();
      return BigDecimal.valueOf(floorLog(ratio, power), decimals);
    }
  }

  /**
   * None was found after; the reduction is at least that down to what could have been found.
   *
   * @param atLeast the reduction down to the limit of detection; not null
   */
  record AtLeast(Reduced atLeast) implements LogReduction {
    /**
     * Returns the whole logs that it is at least.
     *
     * @return the whole number, rounded down
     */
    public int wholeLogs() {
      return atLeast.wholeLogs();
    }
  }

  /** None was found after, and nobody said how few could have been found: no number follows. */
  record NoneFoundUnlimited() implements LogReduction {}

  /** There were none before, so nothing can be said of their reduction. */
  record NothingBefore() implements LogReduction {}

  /**
   * Computes the reduction.
   *
   * @param before the count before, zero or more; not null
   * @param after the count after, zero or more, in the same unit; not null
   * @param detectionLimit the least count that can be found, above zero; empty if not stated. A
   *     count after below it counts as none found
   * @return the reduction; never null
   * @throws InvalidValueException if a count is negative, the limit not above zero, or a number of
   *     more than 30 digits
   */
  static LogReduction of(BigDecimal before, BigDecimal after, Optional<BigDecimal> detectionLimit) {
    requireCount("before", before);
    requireCount("after", after);
    detectionLimit.ifPresent(
        limit ->
            InvalidValueException.require(
                limit.signum() > 0 && isShort(limit),
                "detectionLimit",
                limit,
                "above zero, at most 30 digits"));
    if (before.signum() == 0) {
      return new NothingBefore();
    }
    Optional<BigDecimal> coarser = detectionLimit.filter(limit -> after.compareTo(limit) < 0);
    if (coarser.isPresent()) {
      return new AtLeast(reduced(before, coarser.get()));
    }
    return after.signum() == 0 ? new NoneFoundUnlimited() : reduced(before, after);
  }

  private static Reduced reduced(BigDecimal before, BigDecimal after) {
    return new Reduced(Rational.of(before).dividedBy(Rational.of(after)));
  }

  private static void requireCount(String field, BigDecimal count) {
    InvalidValueException.require(
        count.signum() >= 0 && isShort(count), field, count, "zero or more, at most 30 digits");
  }

  private static boolean isShort(BigDecimal number) {
    return number.precision() <= 30 && Math.abs((long) number.scale()) <= 30;
  }

  /** The floor of log10(ratio^power), by comparing whole numbers only. */
  private static int floorLog(Rational ratio, int power) {
    BigInteger numerator = ratio.numerator().pow(power);
    BigInteger denominator = ratio.denominator().pow(power);
    // Digits differ by the logarithm to within one.
    int logs = digits(numerator) - digits(denominator);
    return reaches(numerator, denominator, logs) ? logs : logs - 1;
  }

  private static int digits(BigInteger positive) {
    return new BigDecimal(positive).precision();
  }

  private static boolean reaches(BigInteger numerator, BigInteger denominator, int logs) {
    return logs >= 0
        ? numerator.compareTo(denominator.multiply(BigInteger.TEN.pow(logs))) >= 0
        : numerator.multiply(BigInteger.TEN.pow(-logs)).compareTo(denominator) >= 0;
  }
}
