package org.ensemblerules.measure;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;

/**
 * An exact measured value with its unit, kept in the unit and digits it was given in.
 *
 * <p>Two quantities are equal only in the same unit and digits; {@link #compareSize} compares their
 * size exactly, across units, by the conversion of {@link ExactQuantity}.
 *
 * @param value the number, at most 30 digits and a scale from -9 to 20; not null
 * @param unit the unit; not null
 * @since 0.1
 */
public record Quantity(BigDecimal value, Unit unit) {
  /**
   * Checks the size of the number.
   *
   * @throws InvalidValueException if it has more digits or another scale than allowed
   */
  public Quantity {
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(unit, "unit");
    NumberSize.require("Quantity.value", value);
  }

  /**
   * Makes a quantity from decimal text.
   *
   * @param value the number as decimal text, as in {@code 25.4}; not null
   * @param unit the unit; not null
   * @return the quantity; never null
   * @throws InvalidValueException if the text is no decimal number or too long
   */
  public static Quantity of(String value, Unit unit) {
    try {
      return new Quantity(new BigDecimal(value), unit);
    } catch (NumberFormatException e) {
      throw new InvalidValueException("Quantity.value", value, "a decimal number");
    }
  }

  /**
   * Compares the size of two quantities exactly.
   *
   * @param other the other quantity, of the same dimension; not null
   * @return negative, zero or positive as this is smaller, equal or larger
   * @throws InvalidValueException if the dimensions differ
   */
  public int compareSize(Quantity other) {
    if (unit == other.unit) {
      return value.compareTo(other.value);
    }
    if (unit.dimension() != other.unit.dimension()) {
      throw new InvalidValueException(
          "Quantity.compareSize", other, "a quantity of dimension " + unit.dimension());
    }
    Optional<BigDecimal> factor = unit.decimalFactor();
    Optional<BigDecimal> otherFactor = other.unit.decimalFactor();
    // Decimals multiply without rounding, and much faster than fractions are brought to lowest
    // terms.
    return factor.isPresent() && otherFactor.isPresent()
        ? value.multiply(factor.get()).compareTo(other.value.multiply(otherFactor.get()))
        : exactly().compareSize(other.exactly());
  }

  /**
   * Returns the quantity as an exact number.
   *
   * @return the same size in the same unit; never null
   */
  public ExactQuantity exactly() {
    return new ExactQuantity(Rational.of(value), unit);
  }

  /**
   * Converts exactly, without rounding.
   *
   * @param other the unit wanted, of the same dimension; not null
   * @return the same size in that unit; never null
   * @throws InvalidValueException if the dimension differs
   */
  public ExactQuantity in(Unit other) {
    return exactly().in(other);
  }

  /**
   * Converts and rounds once.
   *
   * @param other the unit wanted, of the same dimension; not null
   * @param rounding to which place in that unit; not null
   * @return the rounded quantity; never null
   * @throws InvalidValueException if the dimension differs
   */
  public Quantity in(Unit other, Rounding rounding) {
    return in(other).rounded(rounding);
  }

  /**
   * Tells whether the quantity is above zero.
   *
   * @return true if it is above zero
   */
  public boolean isPositive() {
    return value.signum() > 0;
  }

  @Override
  public String toString() {
    return value.toPlainString() + " " + unit.symbol();
  }
}
