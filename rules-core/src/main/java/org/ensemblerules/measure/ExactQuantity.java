package org.ensemblerules.measure;

import java.math.MathContext;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * An exact quantity that need not end as a decimal: a conversion or a mean before any rounding.
 *
 * <p>x in one unit is {@code y = (x + o) f / g - p} in another: f and o are the factor and the
 * offset of its own {@link Unit}, g and p those of the other. Offsets are zero but on temperature
 * scales. Nothing is rounded before {@link #rounded}.
 *
 * @param value the number; not null
 * @param unit the unit; not null
 * @since 0.1
 */
public record ExactQuantity(Rational value, Unit unit) {
  /** Checks for nulls. */
  public ExactQuantity {
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(unit, "unit");
  }

  /**
   * Converts exactly.
   *
   * @param other the unit wanted, of the same dimension; not null
   * @return the same size in that unit; never null
   * @throws InvalidValueException if the dimension differs
   */
  public ExactQuantity in(Unit other) {
    InvalidValueException.require(
        other.dimension() == unit.dimension(),
        "unit",
        other.symbol(),
        "a unit of dimension " + unit.dimension());
    return new ExactQuantity(inBase().dividedBy(other.factor()).minus(other.offset()), other);
  }

  /**
   * Rounds once, from the full value.
   *
   * @param rounding to which place, in this quantity's unit; not null
   * @return the rounded quantity; never null
   * @throws InvalidValueException if the rounded number has more digits than a quantity may have
   */
  public Quantity rounded(Rounding rounding) {
    return new Quantity(rounding.round(value), unit);
  }

  /**
   * Compares the size exactly, across units.
   *
   * @param other the other quantity, of the same dimension; not null
   * @return negative, zero or positive as this is smaller, equal or larger
   * @throws InvalidValueException if the dimensions differ
   */
  public int compareSize(ExactQuantity other) {
    return value.compareTo(other.in(unit).value);
  }

  private Rational inBase() {
    return value.plus(unit.offset()).times(unit.factor());
  }

  /** For people: to seven significant digits. */
  @Override
  public String toString() {
    return value.toDecimal(MathContext.DECIMAL32).stripTrailingZeros().toPlainString()
        + " "
        + unit.symbol();
  }
}
