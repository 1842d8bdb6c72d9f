package org.ensemblerules.repair;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.measure.NumberSize;
import org.ensemblerules.source.InvalidValueException;

/**
 * What a repair costs and what the element is worth, all in one currency, whichever it is.
 *
 * @param repair what the repair costs, 0 or more; not null
 * @param replacement what a new element costs, above 0; empty if not known
 * @param depreciated what the element is still worth, 0 or more; empty if not known
 * @since 0.1
 */
public record RepairCost(
    BigDecimal repair, Optional<BigDecimal> replacement, Optional<BigDecimal> depreciated) {
  /**
   * Checks the amounts.
   *
   * @throws InvalidValueException if an amount is out of range, or of another size than {@link
   *     NumberSize} allows
   */
  public RepairCost {
    Objects.requireNonNull(repair, "repair");
    Objects.requireNonNull(replacement, "replacement");
    Objects.requireNonNull(depreciated, "depreciated");
    require("RepairCost.repair", repair, 0);
    replacement.ifPresent(amount -> require("RepairCost.replacement", amount, 1));
    depreciated.ifPresent(amount -> require("RepairCost.depreciated", amount, 0));
  }

  private static void require(String field, BigDecimal amount, int leastSign) {
    InvalidValueException.require(
        amount.signum() >= leastSign, field, amount, leastSign == 0 ? "0 or more" : "above 0");
    NumberSize.require(field, amount);
  }

  /** The value that a policy holds the cost against. */
  Optional<BigDecimal> value(CostPolicy.Against against) {
    return against == CostPolicy.Against.REPLACEMENT_VALUE ? replacement : depreciated;
  }
}
