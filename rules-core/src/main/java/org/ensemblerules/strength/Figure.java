package org.ensemblerules.strength;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.measure.ExactQuantity;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;

/**
 * A number that a judgment used, by name. An exact one has up to 34 digits; what does not end
 * within them, or was worked out in double precision, is rounded to 12 significant digits, halves
 * to even.
 *
 * @param name what it is, as in {@code mean}; not null
 * @param value the number; not null
 * @param unit its unit; empty for a plain number
 * @param exact whether the value is the exact one; otherwise it is rounded, while the judgment used
 *     the full number
 * @param shown the number as a report prints it: the value, or rounded to the digits that the limit
 *     asks for; not null
 * @since 0.1
 */
public record Figure(
    String name, BigDecimal value, Optional<Unit> unit, boolean exact, BigDecimal shown) {
  private static final MathContext SHOWN = new MathContext(12, RoundingMode.HALF_EVEN);

  /**
   * Checks the name.
   *
   * @throws InvalidValueException if the name is blank or too long
   */
  public Figure {
    InvalidValueException.requireText("Figure.name", name, 80);
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(shown, "shown");
  }

  private static Figure of(String name, BigDecimal value, Optional<Unit> unit, boolean exact) {
    return new Figure(name, value, unit, exact, value);
  }

  static Figure of(String name, ExactQuantity quantity) {
    return of(name, quantity.value(), Optional.of(quantity.unit()));
  }

  static Figure of(String name, Rational value, Optional<Unit> unit) {
    BigDecimal full = value.toDecimal(MathContext.DECIMAL128);
    boolean exact = value.equalsDecimal(full);
    return of(name, exact ? full : value.toDecimal(SHOWN), unit, exact);
  }

  /**
   * Prints the value to a number of decimal places, or to as many more as it takes for the printed
   * number to lie on the same side of the edge as the value itself.
   */
  Figure shownTo(int places, Rational edge) {
    Rational full = Rational.of(value);
    int side = full.compareTo(edge);
    int scale = places;
    BigDecimal rounded = value;
    while (scale < value.scale()) {
      rounded = value.setScale(scale, RoundingMode.HALF_EVEN);
      if (Rational.of(rounded).compareTo(edge) == side) {
        return new Figure(name, value, unit, exact, rounded);
      }
      scale++;
    }
    return this;
  }

  static Figure count(String name, int count) {
    return of(name, BigDecimal.valueOf(count), Optional.empty(), true);
  }

  static Figure given(String name, BigDecimal value) {
    return of(name, value, Optional.empty(), true);
  }

  static Figure worked(String name, double value, Optional<Unit> unit) {
    return of(name, new BigDecimal(value).round(SHOWN), unit, false);
  }

  @Override
  public String toString() {
    return name
        + (exact && shown.compareTo(value) == 0 ? " = " : " ~ ")
        + shown.toPlainString()
        + unit.map(known -> " " + known.symbol()).orElse("");
  }
}
