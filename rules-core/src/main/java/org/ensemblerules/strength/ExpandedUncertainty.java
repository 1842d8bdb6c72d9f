package org.ensemblerules.strength;

import java.math.BigDecimal;
import java.util.Objects;
import org.ensemblerules.measure.NumberSize;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;

/**
 * The expanded uncertainty {@code U = k u} that a laboratory states for its result: u is the
 * standard uncertainty, k the coverage factor, as JCGM 100 has them. Kept as given, without
 * rounding. Zero or less can be recorded, as reports have it; it gives no result.
 *
 * @param expanded U, a difference: its unit may be another of the same dimension; not null
 * @param coverageFactor k, above zero, as stated with U; not null
 * @since 0.1
 */
public record ExpandedUncertainty(Quantity expanded, BigDecimal coverageFactor) {
  /**
   * Checks the coverage factor.
   *
   * @throws InvalidValueException if it is not above zero, or of another size than {@link
   *     NumberSize} allows
   */
  public ExpandedUncertainty {
    Objects.requireNonNull(expanded, "expanded");
    InvalidValueException.require(
        coverageFactor.signum() > 0,
        "ExpandedUncertainty.coverageFactor",
        coverageFactor,
        "above zero");
    NumberSize.require("ExpandedUncertainty.coverageFactor", coverageFactor);
  }

  @Override
  public String toString() {
    return "U = " + expanded + ", k = " + coverageFactor.toPlainString();
  }
}
