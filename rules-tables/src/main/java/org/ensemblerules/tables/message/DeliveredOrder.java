package org.ensemblerules.tables.message;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.gear.Element;
import org.ensemblerules.issue.Order;

/**
 * An order and what came for it.
 *
 * @param order the order; not null
 * @param delivered the elements that came; not null
 * @since 0.1
 */
public record DeliveredOrder(Order order, List<Element> delivered) {
  /** Copies the list. */
  public DeliveredOrder {
    Objects.requireNonNull(order, "order");
    delivered = List.copyOf(delivered);
  }
}
