package org.ensemblerules.repair;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * How the cost of a repair looks beside the owner's policy. Advice only: it makes nothing
 * repairable, retires nothing, and no order rests on it.
 *
 * @since 0.1
 */
public sealed interface CostView {
  /**
   * The cost is within the policy.
   *
   * @param policy the policy; not null
   * @param cost the cost; not null
   */
  record Within(CostPolicy policy, RepairCost cost) implements CostView {
    /** Checks for nulls. */
    public Within {
      Objects.requireNonNull(policy, "policy");
      Objects.requireNonNull(cost, "cost");
    }

    @Override
    public String text() {
      return "advice: " + cost.repair() + " is within " + share(policy) + " by the owner's policy";
    }
  }

  /**
   * The cost is above the policy.
   *
   * @param policy the policy; not null
   * @param cost the cost; not null
   */
  record Above(CostPolicy policy, RepairCost cost) implements CostView {
    /** Checks for nulls. */
    public Above {
      Objects.requireNonNull(policy, "policy");
      Objects.requireNonNull(cost, "cost");
    }

    @Override
    public String text() {
      return "advice: "
          + cost.repair()
          + " is above "
          + share(policy)
          + "; the owner's policy is to replace the element";
    }
  }

  /**
   * The value that the policy asks for is not known.
   *
   * @param policy the policy; not null
   * @param cost the cost; not null
   */
  record ValueUnknown(CostPolicy policy, RepairCost cost) implements CostView {
    /** Checks for nulls. */
    public ValueUnknown {
      Objects.requireNonNull(policy, "policy");
      Objects.requireNonNull(cost, "cost");
    }

    @Override
    public String text() {
      return "advice: no " + policy.against() + " is known to hold the cost against";
    }
  }

  /**
   * Looks at a cost c beside a value v and a share of q percent: above the policy if {@code 100 c >
   * q v}. The comparison is exact; the cost at the very share is within it. Plain arithmetic.
   *
   * @param policy the owner's policy; not null
   * @param cost the cost; not null
   * @return the view; never null
   */
  static CostView of(CostPolicy policy, RepairCost cost) {
    Optional<BigDecimal> value = cost.value(policy.against());
    if (value.isEmpty()) {
      return new ValueUnknown(policy, cost);
    }
    boolean above =
        cost.repair().movePointRight(2).compareTo(value.get().multiply(policy.mostPercent())) > 0;
    return above ? new Above(policy, cost) : new Within(policy, cost);
  }

  private static String share(CostPolicy policy) {
    return policy.mostPercent().toPlainString() + " % of the " + policy.against();
  }

  /**
   * Returns the view in words, marked as advice.
   *
   * @return the text; never null
   */
  String text();
}
