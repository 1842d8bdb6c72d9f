package org.ensemblerules.repair;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.gear.Element;
import org.ensemblerules.source.InvalidValueException;

/**
 * What becomes of all that was found on an element.
 *
 * @param element the element; not null
 * @param orders one for each finding and each place it can mean, in the order of findings' names
 *     and sites; at least one; not null
 * @since 0.1
 */
public record RepairPlan(Element element, List<RepairOrder> orders) {
  /**
   * Copies the orders.
   *
   * @throws InvalidValueException if there is none
   */
  public RepairPlan {
    Objects.requireNonNull(element, "element");
    orders = List.copyOf(orders);
    InvalidValueException.require(
        !orders.isEmpty(), "RepairPlan.orders", orders, "at least one order");
  }

  /**
   * Returns the level that is as strict as every order.
   *
   * @return the level; never null
   */
  public RepairLevel level() {
    return orders.stream().map(RepairOrder::level).reduce(RepairLevel.ACCEPTABLE, RepairLevel::and);
  }

  /**
   * Tells whether the one who is to do the work may do all of it.
   *
   * @return true only if each order that repairs something is granted, and at least one is
   */
  public boolean granted() {
    List<RepairOrder> work =
        orders.stream().filter(order -> order.level().repairClass().isPresent()).toList();
    return !work.isEmpty() && work.stream().allMatch(order -> order.may().granted());
  }
}
