package org.ensemblerules.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * Rounding to the nearest multiple of an interval, as in 0.1, 1, 0.5, 5 or 50: {@code d n}, where d
 * is the interval and n the whole number nearest to {@code x / d}, exact. {@link Ties} tell which
 * of two that are equally near. Sources: ASTM E29, ISO 80000-1 Annex B and 40 CFR 1065.20(e), as
 * remembered; their examples come out.
 *
 * <p>Each call rounds once, from the full value; rounding what was rounded before can give another
 * result (12.251 to 12.25 to 12.2, where 12.3 is right), so keep the full value until the end.
 *
 * @param interval the interval, above zero, in the unit of what is rounded; not null
 * @param ties what becomes of halves; not null
 * @since 0.1
 */
public record Rounding(BigDecimal interval, Ties ties) {
  /**
   * Checks the interval.
   *
   * @throws InvalidValueException if the interval is not above zero, or of another size than {@link
   *     NumberSize} allows
   */
  public Rounding {
    Objects.requireNonNull(ties, "ties");
    InvalidValueException.require(
        interval.signum() > 0, "Rounding.interval", interval, "above zero");
    NumberSize.require("Rounding.interval", interval);
  }

  /**
   * Rounds halves to the even multiple.
   *
   * @param interval the interval as decimal text, above zero; not null
   * @return the rounding; never null
   * @throws InvalidValueException if the text is no decimal number above zero
   */
  public static Rounding toNearest(String interval) {
    return new Rounding(decimal(interval), Ties.HALF_EVEN);
  }

  /**
   * Rounds halves to the multiple of larger magnitude. Only where a rule says so by name.
   *
   * @param interval the interval as decimal text, above zero; not null
   * @return the rounding; never null
   * @throws InvalidValueException if the text is no decimal number above zero
   */
  public static Rounding halfUpToNearest(String interval) {
    return new Rounding(decimal(interval), Ties.HALF_UP);
  }

  /**
   * Rounds to the last place that a number is written to: 100 to ones, 2.5 to tenths.
   *
   * @param written the number whose places count; not null
   * @param ties what becomes of halves; not null
   * @return the rounding; never null
   */
  public static Rounding toLastPlaceOf(BigDecimal written, Ties ties) {
    return new Rounding(BigDecimal.ONE.movePointLeft(written.scale()), ties);
  }

  /**
   * Rounds.
   *
   * @param value the full value; not null
   * @return the nearest multiple of the interval; never null
   */
  public BigDecimal round(BigDecimal value) {
    return round(Rational.of(value));
  }

  /**
   * Rounds.
   *
   * @param value the full value; not null
   * @return the nearest multiple of the interval; never null
   */
  public BigDecimal round(Rational value) {
    Rational multiples = value.dividedBy(Rational.of(interval));
    BigInteger whole =
        new BigDecimal(multiples.numerator())
            .divide(new BigDecimal(multiples.denominator()), 0, ties.mode())
            .toBigIntegerExact();
    return interval.multiply(new BigDecimal(whole));
  }

  /**
   * Tells whether the interval is coarser than the place in which a number ends as written.
   *
   * @param written the number; not null
   * @return true if rounding by this keeps less than the number says
   */
  public boolean isCoarserThanLastPlaceOf(BigDecimal written) {
    return interval.compareTo(BigDecimal.ONE.movePointLeft(written.scale())) > 0;
  }

  private static BigDecimal decimal(String text) {
    try {
      return new BigDecimal(text);
    } catch (NumberFormatException e) {
      throw new InvalidValueException("Rounding.interval", text, "a decimal number above zero");
    }
  }

  @Override
  public String toString() {
    return "to the nearest " + interval.toPlainString() + ", " + ties;
  }
}
