package org.ensemblerules.fleet;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;

/**
 * What a new element or layer costs today, in whatever currency the department counts in.
 *
 * @param kind the kind of element; not null
 * @param use its use; not null
 * @param layer the layer; empty for the whole element
 * @param amount what it costs, above 0 and at most 10 million, in at most two decimals; not null
 * @since 0.1
 */
public record UnitCost(ElementKind kind, Use use, Optional<LayerKind> layer, BigDecimal amount) {
  /**
   * Checks the amount.
   *
   * @throws org.ensemblerules.source.InvalidValueException if it is out of range
   */
  public UnitCost {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(layer, "layer");
    Money.require("UnitCost.amount", amount, 1, Money.MOST_OF_ONE);
  }
}
