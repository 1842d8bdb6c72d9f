package org.ensemblerules.tables.message;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.GearRules;
import org.ensemblerules.gear.Element;
import org.ensemblerules.repair.RepairPlan;

/**
 * What is asked.
 *
 * @param element the element; not null
 * @param subject what the work is about; not null
 * @param work who is to do it; empty if nobody is named
 * @param cost what it costs; empty if nobody asks for advice on that
 * @since 0.1
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
   * Asks the rules.
   *
   * @param rules the rules; not null
   * @return the plan; never null
   */
  public RepairPlan plan(GearRules rules) {
    if (subject instanceof RepairSubject.Damage damage) {
      return work.map(who -> rules.repair(element, damage.findings(), who.doer(), who.on()))
          .orElseGet(() -> rules.repair(element, damage.findings()));
    }
    return work.map(who -> rules.closeLiner(element, who.doer(), who.on()))
        .orElseGet(() -> rules.closeLiner(element));
  }
}
