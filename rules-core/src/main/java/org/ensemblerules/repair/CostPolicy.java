package org.ensemblerules.repair;

import java.math.BigDecimal;
import java.util.Objects;
import org.ensemblerules.measure.NumberSize;
import org.ensemblerules.source.InvalidValueException;

/**
 * Up to what share of a value the owner thinks a repair worth its cost, as {@link CostView#of}
 * compares them. It is the owner's own: no standard sets one, so there is no default. Whatever it
 * says is advice, and changes nothing that a rule calls for.
 *
 * @param against what the cost is held against; not null
 * @param mostPercent the largest share in percent, above 0 and at most 1000; not null
 * @since 0.1
 */
public record CostPolicy(Against against, BigDecimal mostPercent) {
  private static final BigDecimal LARGEST = BigDecimal.valueOf(1000);

  /** What a cost is held against. */
  public enum Against {
    /** What a new element costs. */
    REPLACEMENT_VALUE,
    /** What the element is still worth. */
    DEPRECIATED_VALUE
  }

  /**
   * Checks the share.
   *
   * @throws InvalidValueException if it is out of range, or of another size than {@link NumberSize}
   *     allows
   */
  public CostPolicy {
    Objects.requireNonNull(against, "against");
    Objects.requireNonNull(mostPercent, "mostPercent");
    InvalidValueException.require(
        mostPercent.signum() > 0 && mostPercent.compareTo(LARGEST) <= 0,
        "CostPolicy.mostPercent",
        mostPercent,
        "above 0, at most 1000");
    NumberSize.require("CostPolicy.mostPercent", mostPercent);
  }
}
