package org.ensemblerules.issue;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.gear.NamedElement;

/**
 * One element of a delivery.
 *
 * @param element the element; not null
 * @param discrepancies how it differs from what was ordered, or is not shown not to; empty if it
 *     can be accepted; not null
 * @since 0.1
 */
public record DeliveryLine(NamedElement element, List<Objection> discrepancies) {
  /** Copies the list. */
  public DeliveryLine {
    Objects.requireNonNull(element, "element");
    discrepancies = ImmutableList.copyOf(discrepancies);
  }

  /**
   * Tells whether it can be accepted.
   *
   * @return true only if nothing differs
   */
  public boolean isAccepted() {
    return discrepancies.isEmpty();
  }
}
