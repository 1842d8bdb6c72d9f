package org.ensemblerules.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * An exact number: a fraction in lowest terms. Unit factors and means need not end as decimals.
 * Sums, products, quotients and comparisons are exact; only {@link #toDecimal} and {@link
 * #toDouble} round.
 *
 * @param numerator the numerator, with the sign; not null
 * @param denominator the denominator, above zero; not null
 * @since 0.1
 */
public record Rational(BigInteger numerator, BigInteger denominator)
    implements Comparable<Rational> {
  /** Zero. */
  public static final Rational ZERO = new Rational(BigInteger.ZERO, BigInteger.ONE);

  private static final int MOST_SCALE = 1000;

  /**
   * Reduces to lowest terms.
   *
   * @throws InvalidValueException if the denominator is zero
   */
  public Rational {
    Objects.requireNonNull(numerator, "numerator");
    InvalidValueException.require(
        denominator.signum() != 0, "Rational.denominator", denominator, "not zero");
    BigInteger common = numerator.gcd(denominator);
    if (denominator.signum() < 0) {
      common = common.negate();
    }
    numerator = numerator.divide(common);
    denominator = denominator.divide(common);
  }

  /**
   * Makes an exact number of a decimal.
   *
   * @param value the decimal, its scale from -1000 to 1000; not null
   * @return the same number; never null
   * @throws InvalidValueException if the scale is out of range: every power of ten is written out
   */
  public static Rational of(BigDecimal value) {
    if (value.scale() < -MOST_SCALE || value.scale() > MOST_SCALE) {
      throw new InvalidValueException(
          "Rational.value",
          "a number of scale " + value.scale(),
          "a scale from -" + MOST_SCALE + " to " + MOST_SCALE);
    }
    BigInteger unscaled = value.unscaledValue();
    return value.scale() >= 0
        ? new Rational(unscaled, BigInteger.TEN.pow(value.scale()))
        : new Rational(unscaled.multiply(BigInteger.TEN.pow(-value.scale())), BigInteger.ONE);
  }

  /**
   * Makes an exact number of a whole one.
   *
   * @param value the whole number
   * @return the same number; never null
   */
  public static Rational of(long value) {
    return new Rational(BigInteger.valueOf(value), BigInteger.ONE);
  }

  /**
   * Adds.
   *
   * @param other the number to add; not null
   * @return the exact sum; never null
   */
  public Rational plus(Rational other) {
    return new Rational(
        numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
        denominator.multiply(other.denominator));
  }

  /**
   * Subtracts.
   *
   * @param other the number to subtract; not null
   * @return the exact difference; never null
   */
  public Rational minus(Rational other) {
    return plus(other.negated());
  }

  /**
   * Multiplies.
   *
   * @param other the factor; not null
   * @return the exact product; never null
   */
  public Rational times(Rational other) {
    return new Rational(
        numerator.multiply(other.numerator), denominator.multiply(other.denominator));
  }

  /**
   * Divides.
   *
   * @param other the divisor; not null
   * @return the exact quotient; never null
   * @throws InvalidValueException if the divisor is zero
   */
  public Rational dividedBy(Rational other) {
    return new Rational(
        numerator.multiply(other.denominator), denominator.multiply(other.numerator));
  }

  /**
   * Turns the sign.
   *
   * @return the negative of this number; never null
   */
  public Rational negated() {
    return new Rational(numerator.negate(), denominator);
  }

  /**
   * Returns the sign.
   *
   * @return -1, 0 or 1
   */
  public int signum() {
    return numerator.signum();
  }

  /**
   * Returns the number to so many significant digits.
   *
   * @param digits how many, and how the last one is rounded; not null, not unlimited
   * @return the decimal; never null
   */
  public BigDecimal toDecimal(MathContext digits) {
    return new BigDecimal(numerator).divide(new BigDecimal(denominator), digits);
  }

  /**
   * Tells whether a decimal is exactly this number.
   *
   * @param value the decimal; not null
   * @return true if they are the same number
   */
  public boolean equalsDecimal(BigDecimal value) {
    return compareTo(of(value)) == 0;
  }

  /**
   * Returns the number as floating point.
   *
   * @return the nearest double, within a unit in its last place
   */
  public double toDouble() {
    return toDecimal(MathContext.DECIMAL128).doubleValue();
  }

  @Override
  public int compareTo(Rational other) {
    return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
  }

  @Override
  public String toString() {
    return denominator.equals(BigInteger.ONE)
        ? numerator.toString()
        : numerator + "/" + denominator;
  }
}
