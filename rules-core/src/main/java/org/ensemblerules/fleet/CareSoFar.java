package org.ensemblerules.fleet;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.repair.CostView;
import org.ensemblerules.repair.RepairCost;

/**
 * What washes and repairs an element had so far, and how their cost looks beside a new one. Advice
 * only: it retires nothing and keeps nothing in service. The cost is the sum of the prices that are
 * known, exact; {@link CostView#of} holds it against the price of a new element.
 *
 * @param element the element; not null
 * @param cleanings how many cleanings are on record
 * @param repairs how many repairs are on record
 * @param withoutPrice how many of both have no price
 * @param spent what the others cost together; not null
 * @param view how that looks beside the owner's policy; not null
 * @since 0.1
 */
public record CareSoFar(
    NamedElement element,
    long cleanings,
    long repairs,
    long withoutPrice,
    BigDecimal spent,
    CostView view) {
  /** Checks for nulls. */
  public CareSoFar {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(spent, "spent");
    Objects.requireNonNull(view, "view");
  }

  /**
   * Adds up what is on record by the day an element was judged for, whether or not it counts.
   *
   * @param judged the element; not null
   * @param costs what cleanings and repairs cost; not null
   * @param prices what new gear costs; not null
   * @param policy up to what share the owner thinks it worth its cost; not null
   * @return the sums; never null
   */
  public static CareSoFar of(
      JudgedElement judged, CareCosts costs, Prices prices, CostPolicy policy) {
    History history = judged.kept().assessment().history();
    List<Optional<BigDecimal>> cleanings =
        by(judged, history.events(WorkEvent.Cleaned.class).stream())
            .map(done -> Optional.ofNullable(costs.cleaning().get(done.kind())))
            .toList();
    List<Optional<BigDecimal>> repairs =
        by(judged, history.events(WorkEvent.Repaired.class).stream())
            .map(done -> Optional.ofNullable(costs.repair().get(done.repairClass())))
            .toList();
    BigDecimal spent =
        Stream.concat(cleanings.stream(), repairs.stream())
            .flatMap(Optional::stream)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    NamedElement element = judged.element().named();
    return new CareSoFar(
        element,
        cleanings.size(),
        repairs.size(),
        Stream.concat(cleanings.stream(), repairs.stream()).filter(Optional::isEmpty).count(),
        spent,
        CostView.of(
            policy,
            new RepairCost(
                spent,
                prices.today(element.kind(), element.use(), Optional.empty()),
                Optional.empty())));
  }

  private static <E extends Event> Stream<E> by(JudgedElement judged, Stream<E> events) {
    return events.filter(event -> event.when().date().possiblyBy(judged.verdict().asOf()));
  }
}
