package org.ensemblerules.issue;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSortedMap;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.ruleset.RuleSet;

/**
 * A delivery held against its order: what can be accepted, what cannot and why, what is missing.
 * What is accepted is not in service yet; its verdict says what must come first.
 *
 * @param order the order; not null
 * @param lines one for each element delivered, by their ids; not null
 * @param missing how many of each size are still to come; what was not accepted does not count; not
 *     null
 * @since 0.1
 */
public record Delivery(Order order, List<DeliveryLine> lines, Map<String, Integer> missing) {
  /** Copies the collections. */
  public Delivery {
    Objects.requireNonNull(order, "order");
    lines = ImmutableList.copyOf(lines);
    missing = ImmutableSortedMap.copyOf(missing);
  }

  /**
   * Holds a delivery against its order. Of more elements of a size than were ordered, those are too
   * many that come last by their ids.
   *
   * @param rules the rules; not null
   * @param order the order; not null
   * @param delivered what came, in any order; not null
   * @param known the ids that the department has given already; not null
   * @param notices the notices that are not settled; not null
   * @param asOf the day of delivery; not null
   * @return what can be accepted and what cannot; never null
   */
  public static Delivery of(
      RuleSet rules,
      Order order,
      Collection<Element> delivered,
      Set<ElementId> known,
      List<SafetyNotice> notices,
      LocalDate asOf) {
    Set<ElementId> once = new HashSet<>();
    Set<ElementId> again = new HashSet<>(known);
    delivered.stream().map(Element::id).filter(id -> !once.add(id)).forEach(again::add);
    Map<String, Integer> open = new HashMap<>(order.sizes());
    DeliveryCheck check = new DeliveryCheck(rules, order, again, notices, asOf);
    List<DeliveryLine> lines =
        delivered.stream()
            .sorted(Comparator.comparing(Element::id).thenComparing(Element::toString))
            .map(element -> check.of(element, open))
            .toList();
    open.values().removeIf(count -> count == 0);
    return new Delivery(order, lines, open);
  }

  /**
   * Tells whether the order is fulfilled by what was delivered.
   *
   * @return true only if each element can be accepted and none is missing
   */
  public boolean isAsOrdered() {
    return missing.isEmpty() && lines.stream().allMatch(DeliveryLine::isAccepted);
  }
}
