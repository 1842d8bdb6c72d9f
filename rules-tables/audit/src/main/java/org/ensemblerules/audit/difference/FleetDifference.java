package org.ensemblerules.audit.difference;

import java.time.LocalDate;
import java.util.Objects;
import java.util.function.Consumer;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.verdict.Assessment;

/**
 * What other rules, as the next edition, would change across a fleet on one day. Every element can
 * be judged by every set of rules, so none is left out.
 *
 * <p>An element is judged by what is on its record. What was looked at under the rules now may not
 * be all that the other rules want looked at; then the element leaves service until that is done,
 * and this belongs to what adopting them costs.
 *
 * @param now the identity of the rules now; not null
 * @param then the identity of the other rules; not null
 * @param asOf the day judged for; not null
 * @param counts how many elements they do something to; not null
 * @since 0.1
 */
public record FleetDifference(Identity now, Identity then, LocalDate asOf, FleetCounts counts) {
  /** Checks for nulls. */
  public FleetDifference {
    Objects.requireNonNull(now, "now");
    Objects.requireNonNull(then, "then");
    Objects.requireNonNull(asOf, "asOf");
    Objects.requireNonNull(counts, "counts");
  }

  /**
   * Counts what other rules change. Elements are judged one by one and none is kept.
   *
   * @param now the rules now; not null
   * @param then the other rules; not null
   * @param fleet the elements, each read once, in any order; not null
   * @param asOf the day judged for; not null
   * @return the counts; never null
   */
  public static FleetDifference between(
      GearRules now, GearRules then, Iterable<Assessment> fleet, LocalDate asOf) {
    return between(now, then, fleet, asOf, difference -> {});
  }

  /**
   * Counts what other rules change, and hands over what they change for each element.
   *
   * @param now the rules now; not null
   * @param then the other rules; not null
   * @param fleet the elements, each read once, in any order; not null
   * @param asOf the day judged for; not null
   * @param each what takes the difference of each element, in the order of the fleet, those without
   *     a difference too; not null
   * @return the counts; never null
   */
  public static FleetDifference between(
      GearRules now,
      GearRules then,
      Iterable<Assessment> fleet,
      LocalDate asOf,
      Consumer<ElementDifference> each) {
    FleetCounting counting = new FleetCounting();
    for (Assessment assessment : fleet) {
      ElementDifference difference = ElementDifference.of(now, then, assessment, asOf);
      counting.add(difference);
      each.accept(difference);
    }
    return new FleetDifference(now.identity(), then.identity(), asOf, counting.counts());
  }
}
