package org.ensemblerules.measure;

import java.math.BigDecimal;
import org.ensemblerules.source.InvalidValueException;

/**
 * How large and how fine a number may be. Exact arithmetic writes a number out in full, so that a
 * short text such as {@code 1e-999999999} would otherwise take hours and all memory.
 *
 * @since 0.1
 */
public final class NumberSize {
  /** What is allowed, in words. */
  public static final String ALLOWED = "at most 30 digits, scale -9 to 20";

  private static final int MOST_DIGITS = 30;
  private static final int SMALLEST_SCALE = -9;
  private static final int LARGEST_SCALE = 20;

  private NumberSize() {}

  /**
   * Refuses a number that is too long, too large or too fine.
   *
   * @param field the name of the field, for the refusal; not null
   * @param value the number; not null
   * @return the number, unchanged; never null
   * @throws InvalidValueException if it has more than 30 digits or a scale outside -9 to 20
   */
  public static BigDecimal require(String field, BigDecimal value) {
    // The scale first: what is far out of it is not looked at any further.
    boolean scaled = value.scale() >= SMALLEST_SCALE && value.scale() <= LARGEST_SCALE;
    if (!scaled || value.precision() > MOST_DIGITS) {
      throw new InvalidValueException(
          field,
          "a number of precision " + value.precision() + " and scale " + value.scale(),
          ALLOWED);
    }
    return value;
  }
}
