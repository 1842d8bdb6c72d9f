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
 * A number that a judgment used, by name.
 *
 * @param name what it is, as in {@code mean}; not null
 * @param value the number; not null
 * @param unit its unit; empty for a plain number
 * @param exact whether the value shown is the exact one; otherwise it is shown rounded, while the
 *     judgment used the full number
 */
public record Figure(String name, BigDecimal value, Optional<Unit> unit, boolean exact) {
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
  }

  static Figure of(String name, ExactQuantity quantity) {
    return of(name, quantity.value(), Optional.of(quantity.unit()));
  }

  static Figure of(String name, Rational value, Optional<Unit> unit) {
    BigDecimal full = value.toDecimal(MathContext.DECIMAL128);
    boolean exact = value.equalsDecimal(full);
    return new Figure(name, exact ? full : value.toDecimal(SHOWN), unit, exact);
  }

  static Figure count(String name, int count) {
    return new Figure(name, BigDecimal.valueOf(count), Optional.empty(), true);
  }

  static Figure given(String name, BigDecimal value) {
    return new Figure(name, value, Optional.empty(), true);
  }

  static Figure worked(String name, double value, Optional<Unit> unit) {
    return new Figure(name, new BigDecimal(value).round(SHOWN), unit, false);
  }

  @Override
  public String toString() {
    return name
        + (exact ? " = " : " ~ ")
        + value.toPlainString()
        + unit.map(known -> " " + known.symbol()).orElse("");
  }
}
