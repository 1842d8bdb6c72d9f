package org.ensemblerules.issue;

import com.google.common.collect.ImmutableSortedMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.InvalidValueException;

/**
 * One line of an order: elements of one kind, and how many of each size.
 *
 * @param id what the order is called, 1 to 100 characters; not null
 * @param kind the kind of element; not null
 * @param use its use; not null
 * @param model the model; empty if any is good
 * @param sizes how many of each size, as labels print it, each 1 to 100000; at least one; not null
 * @param claimedEdition the edition of the product standard that labels must claim, as they print
 *     it, 1 to 100 characters; empty if any is good
 * @param leastMonths for how many months age must leave it in service from the day of delivery, 0
 *     to 1200; it may not be out on the day so many months later
 * @since 0.1
 */
public record Order(
    String id,
    ElementKind kind,
    Use use,
    Optional<GearModel> model,
    Map<String, Integer> sizes,
    Optional<String> claimedEdition,
    int leastMonths) {
  private static final int MOST = 100_000;
  private static final int MOST_MONTHS = 1200;

  /**
   * Copies the sizes and checks the values.
   *
   * @throws InvalidValueException if a text is blank or too long, or a number out of range
   */
  public Order {
    InvalidValueException.requireText("Order.id", id, 100);
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(model, "model");
    sizes = ImmutableSortedMap.copyOf(sizes);
    InvalidValueException.require(!sizes.isEmpty(), "Order.sizes", sizes, "at least one size");
    sizes.forEach(
        (size, count) -> {
          InvalidValueException.requireText("Order.sizes", size, 60);
          InvalidValueException.require(
              count >= 1 && count <= MOST, "Order.sizes", count, "1 to " + MOST);
        });
    claimedEdition.ifPresent(
        text -> InvalidValueException.requireText("Order.claimedEdition", text, 100));
    InvalidValueException.require(
        leastMonths >= 0 && leastMonths <= MOST_MONTHS,
        "Order.leastMonths",
        leastMonths,
        "0 to " + MOST_MONTHS);
  }
}
