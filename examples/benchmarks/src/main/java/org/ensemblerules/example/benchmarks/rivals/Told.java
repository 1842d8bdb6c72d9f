package org.ensemblerules.example.benchmarks.rivals;

import java.math.BigDecimal;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;

/**
 * How large a defect is told to be, as a request gives it.
 *
 * @param by by what it is told; PRESENCE if by nothing; not null
 * @param number the number; of a grade its place among all grades; not null
 * @param unit its unit; ONE for what is no length or area; not null
 */
public record Told(ExtentKind by, BigDecimal number, Unit unit) {
  /** Of lengths and areas, so many parts of a millimeter or square millimeter are one step. */
  private static final BigDecimal PARTS = BigDecimal.valueOf(1_000_000);

  /** Tells that it is there, and no more. */
  static Told present() {
    return new Told(ExtentKind.PRESENCE, BigDecimal.ZERO, Unit.ONE);
  }

  /** Tells how many there are. */
  static Told count(int count) {
    return new Told(ExtentKind.COUNT, BigDecimal.valueOf(count), Unit.ONE);
  }

  /** Tells a grade. */
  static Told grade(Grade grade) {
    return new Told(ExtentKind.GRADE, BigDecimal.valueOf(grade.ordinal()), Unit.ONE);
  }

  /** Tells a length or an area. */
  static Told size(ExtentKind by, Quantity size) {
    return new Told(by, size.value(), size.unit());
  }

  /**
   * Returns the size as a whole number for the rivals, who know no units: lengths in millionths of
   * a millimeter, areas in millionths of a square millimeter.
   *
   * @return the exact size
   * @throws ArithmeticException if it is no whole number
   */
  long whole() {
    return by == ExtentKind.LENGTH || by == ExtentKind.AREA
        ? number.multiply(millimeters(unit)).multiply(PARTS).longValueExact()
        : number.longValueExact();
  }

  /** By factors of its own: 1 in is 25.4 mm. */
  private static BigDecimal millimeters(Unit unit) {
    return new BigDecimal(
        switch (unit) {
          case MILLIMETER, SQUARE_MILLIMETER -> "1";
          case CENTIMETER -> "10";
          case SQUARE_CENTIMETER -> "100";
          case METER -> "1000";
          case INCH -> "25.4";
          case SQUARE_INCH -> "645.16";
          default -> throw new IllegalStateException("no unit of a length or an area: " + unit);
        });
  }
}
