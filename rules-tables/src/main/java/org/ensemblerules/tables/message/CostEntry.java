package org.ensemblerules.tables.message;

import java.math.BigDecimal;
import java.util.Objects;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.fleet.CareCosts;
import org.ensemblerules.fleet.UnitCost;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.source.InvalidValueException;

/**
 * An entry of what things cost.
 *
 * @since 0.1
 */
public sealed interface CostEntry {
  /**
   * What new gear costs.
   *
   * @param cost the cost; not null
   */
  record NewGear(UnitCost cost) implements CostEntry {
    /** Checks for null. */
    public NewGear {
      Objects.requireNonNull(cost, "cost");
    }
  }

  /**
   * What a cleaning costs.
   *
   * @param cleaning which; not null
   * @param amount what it costs, 0 or more; not null
   */
  record Cleaning(CleaningKind cleaning, BigDecimal amount) implements CostEntry {
    /**
     * Checks the amount.
     *
     * @throws InvalidValueException if it is out of range
     */
    public Cleaning {
      Objects.requireNonNull(cleaning, "cleaning");
      CareCosts.requireAmount("CostEntry.amount", amount);
    }
  }

  /**
   * What a repair costs.
   *
   * @param repair which; not null
   * @param amount what it costs, 0 or more; not null
   */
  record Repair(RepairClass repair, BigDecimal amount) implements CostEntry {
    /**
     * Checks the amount.
     *
     * @throws InvalidValueException if it is out of range
     */
    public Repair {
      Objects.requireNonNull(repair, "repair");
      CareCosts.requireAmount("CostEntry.amount", amount);
    }
  }

  /**
   * Up to what share of a new element the owner thinks care worth its cost.
   *
   * @param policy the policy; not null
   */
  record Worth(CostPolicy policy) implements CostEntry {
    /** Checks for null. */
    public Worth {
      Objects.requireNonNull(policy, "policy");
    }
  }
}
