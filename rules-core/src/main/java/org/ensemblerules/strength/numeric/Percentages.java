package org.ensemblerules.strength.numeric;

import org.ensemblerules.measure.ExactQuantity;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;

/**
 * Exact percentages of one measure by another, across units: plain arithmetic, rounded by whoever
 * prints them. None is a limit. {@code LaboratoryRules} has the sources.
 */
public final class Percentages {
  private static final Rational HUNDRED = Rational.of(100);

  private Percentages() {}

  /**
   * Seam efficiency {@code 100 S / B}: S is the force that breaks the seam, B that which breaks the
   * fabric.
   *
   * @param seam the force to break the seam; not null
   * @param fabric the force to break the fabric, above zero; not null
   * @return the percentage, exact; never null
   * @throws InvalidValueException if the dimensions differ or the fabric's force is not above zero
   */
  public static ExactQuantity seamEfficiency(Quantity seam, Quantity fabric) {
    return percent(of(seam, fabric, "fabric"));
  }

  /**
   * Retention {@code 100 x / x0}: x is the value now, x0 the value when new. On a temperature scale
   * the zero is that of the unit of x0.
   *
   * @param now the value now; not null
   * @param whenNew the value when new, above zero; not null
   * @return the percentage, exact; never null
   * @throws InvalidValueException if the dimensions differ or the value when new is not above zero
   */
  public static ExactQuantity retention(Quantity now, Quantity whenNew) {
    return percent(of(now, whenNew, "whenNew"));
  }

  /**
   * Shrinkage {@code 100 (a - b) / a}: a is the length before, b the length after. Growth is
   * negative.
   *
   * @param before the length before, above zero; not null
   * @param after the length after; not null
   * @return the percentage, exact; never null
   * @throws InvalidValueException if the dimensions differ or the length before is not above zero
   */
  public static ExactQuantity shrinkage(Quantity before, Quantity after) {
    return percent(Rational.of(1).minus(of(after, before, "before")));
  }

  private static Rational of(Quantity part, Quantity whole, String field) {
    InvalidValueException.require(whole.isPositive(), "Percentages." + field, whole, "above zero");
    return part.in(whole.unit()).value().dividedBy(Rational.of(whole.value()));
  }

  private static ExactQuantity percent(Rational ratio) {
    return new ExactQuantity(ratio.times(HUNDRED), Unit.PERCENT);
  }
}
