package org.ensemblerules.tables.message;

import java.util.Objects;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.repair.RepairCost;

/**
 * What it costs, and what the owner thinks worth it.
 *
 * @param policy the owner's policy; not null
 * @param cost the cost; not null
 * @since 0.1
 */
public record RepairPrice(CostPolicy policy, RepairCost cost) {
  /** Checks for nulls. */
  public RepairPrice {
    Objects.requireNonNull(policy, "policy");
    Objects.requireNonNull(cost, "cost");
  }
}
