package org.ensemblerules.tables.message;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.Element;
import org.ensemblerules.repair.RepairOrders;
import org.ensemblerules.repair.RepairPlan;

/**
 * What is asked.
 *
 * @param element the element; not null
 * @param subject what the work is about; not null
 * @param work who is to do it; empty if nobody is named
 * @param cost what it costs; empty if nobody asks for advice on that
 */
public record RepairRequest(
    Element element, RepairSubject subject, Optional<RepairWork> work, Optional<RepairPrice> cost) {
  /** Checks for nulls. */
  public RepairRequest {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(work, "work");
    Objects.requireNonNull(cost, "cost");
  }

  /**
   * Asks for the answer.
   *
   * @param orders the function that answers; not null
   * @return the plan; never null
   */
  public RepairPlan plan(RepairOrders orders) {
    if (subject instanceof RepairSubject.Damage damage) {
      return work.map(who -> orders.plan(element, damage.findings(), who.doer(), who.on()))
          .orElseGet(() -> orders.plan(element, damage.findings()));
    }
    return work.map(who -> orders.closeLiner(element, who.doer(), who.on()))
        .orElseGet(() -> orders.closeLiner(element));
  }
}
