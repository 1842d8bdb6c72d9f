package org.ensemblerules.strength;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rational;

/**
 * Applies a method's rules for discarding to one direction: first what speaks for itself (slips,
 * tears off the line, faults), then breaks at a jaw, which are compared with the others, by the
 * formulas of {@link DiscardRule}. What one rule on jaws discards still counts for the next.
 */
final class Discards {
  private Discards() {}

  static Map<Specimen, DiscardRow> of(Map<Specimen, Rational> tested, List<DiscardRow> rules) {
    Map<Specimen, DiscardRow> discarded = new LinkedHashMap<>();
    for (Specimen specimen : tested.keySet()) {
      rules.stream()
          .filter(row -> speaksForItself(specimen, row.rule()))
          .findFirst()
          .ifPresent(row -> discarded.put(specimen, row));
    }
    Map<Specimen, Rational> rest = new LinkedHashMap<>(tested);
    rest.keySet().removeAll(discarded.keySet());
    Map<Specimen, DiscardRow> atJaw = new HashMap<>();
    for (DiscardRow row : rules) {
      lowAtJaw(rest, row.rule()).forEach(low -> atJaw.putIfAbsent(low, row));
    }
    for (Specimen specimen : rest.keySet()) {
      Optional.ofNullable(atJaw.get(specimen)).ifPresent(row -> discarded.put(specimen, row));
    }
    return discarded;
  }

  private static boolean speaksForItself(Specimen specimen, DiscardRule rule) {
    return (rule instanceof DiscardRule.Slipped && specimen.slipped())
        || (rule instanceof DiscardRule.LeftMarkedLine && specimen.leftMarkedLine())
        || (rule instanceof DiscardRule.RecordedFault && specimen.fault().isPresent());
  }

  /** What all have in common is worked out once, so that many specimens take no longer each. */
  private static List<Specimen> lowAtJaw(Map<Specimen, Rational> rest, DiscardRule rule) {
    if (rule instanceof DiscardRule.JawBreakBelowOthers low && rest.size() > 1) {
      Rational sum = rest.values().stream().reduce(Rational.ZERO, Rational::plus);
      Rational others = Rational.of(rest.size() - 1L);
      Rational share = Rational.of(low.belowPercentOfOthers().movePointLeft(2));
      return specimens(
          rest,
          (specimen, value) ->
              brokeWithin(specimen, low.within())
                  && value.compareTo(sum.minus(value).dividedBy(others).times(share)) < 0);
    }
    if (rule instanceof DiscardRule.JawBreakBelowNormal low) {
      List<Specimen> normal =
          specimens(rest, (specimen, value) -> !brokeWithin(specimen, low.within()));
      Optional<Rational> lowest = normal.stream().map(rest::get).min(Rational::compareTo);
      return lowest.isEmpty() || normal.size() < low.normalBreaks()
          ? List.of()
          : specimens(
              rest,
              (specimen, value) ->
                  brokeWithin(specimen, low.within()) && value.compareTo(lowest.get()) < 0);
    }
    return List.of();
  }

  private static List<Specimen> specimens(
      Map<Specimen, Rational> values, BiPredicate<Specimen, Rational> which) {
    return values.entrySet().stream()
        .filter(each -> which.test(each.getKey(), each.getValue()))
        .map(Map.Entry::getKey)
        .toList();
  }

  private static boolean brokeWithin(Specimen specimen, Quantity within) {
    return specimen.fromJaw().map(distance -> distance.compareSize(within) <= 0).orElse(false);
  }
}
