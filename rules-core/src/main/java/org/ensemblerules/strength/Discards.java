package org.ensemblerules.strength;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rational;

/**
 * Applies a method's rules for discarding to one direction: first what speaks for itself (slips,
 * tears off the line, faults), then breaks at a jaw, which are compared with the others.
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
    for (Specimen specimen : rest.keySet()) {
      rules.stream()
          .filter(row -> isLowAtJaw(specimen, row.rule(), rest))
          .findFirst()
          .ifPresent(row -> discarded.put(specimen, row));
    }
    return discarded;
  }

  private static boolean speaksForItself(Specimen specimen, DiscardRule rule) {
    return (rule instanceof DiscardRule.Slipped && specimen.slipped())
        || (rule instanceof DiscardRule.LeftMarkedLine && specimen.leftMarkedLine())
        || (rule instanceof DiscardRule.RecordedFault && specimen.fault().isPresent());
  }

  private static boolean isLowAtJaw(
      Specimen specimen, DiscardRule rule, Map<Specimen, Rational> rest) {
    Rational value = rest.getOrDefault(specimen, Rational.ZERO);
    if (rule instanceof DiscardRule.JawBreakBelowOthers low
        && brokeWithin(specimen, low.within())) {
      List<Rational> others = new ArrayList<>();
      rest.forEach(
          (other, itsValue) -> {
            if (!other.equals(specimen)) {
              others.add(itsValue);
            }
          });
      return !others.isEmpty()
          && value.compareTo(
                  Sample.of(others)
                      .mean()
                      .times(Rational.of(low.belowPercentOfOthers().movePointLeft(2))))
              < 0;
    }
    if (rule instanceof DiscardRule.JawBreakBelowNormal low
        && brokeWithin(specimen, low.within())) {
      List<Rational> normal = new ArrayList<>();
      rest.forEach(
          (other, itsValue) -> {
            if (!brokeWithin(other, low.within())) {
              normal.add(itsValue);
            }
          });
      Optional<Rational> lowest = normal.stream().min(Rational::compareTo);
      return normal.size() >= low.normalBreaks()
          && lowest.map(least -> value.compareTo(least) < 0).orElse(false);
    }
    return false;
  }

  private static boolean brokeWithin(Specimen specimen, Quantity within) {
    return specimen.fromJaw().map(distance -> distance.compareSize(within) <= 0).orElse(false);
  }
}
