package org.ensemblerules.strength;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.measure.Unit;

/**
 * Sorts the specimens of a report by direction and leaves out what the method discards. What counts
 * in either sense is taken without its sign. There is no result if more were discarded than kept,
 * fewer tested than the method asks for, or fewer kept than the method or the requirement asks for;
 * the first of these is our own reading.
 */
final class SpecimenSets {
  /** The specimens of one direction, their values in the report's unit. */
  record Kept(
      Direction direction,
      Unit unit,
      ImmutableMap<Specimen, Rational> values,
      ImmutableList<Discarded> discarded) {}

  private SpecimenSets() {}

  static List<Kept> of(
      TestReport report, RequirementRow row, MethodRow method, List<DiscardRow> rules)
      throws Stopped {
    if (report.specimens().isEmpty()) {
      throw new Stopped(NoResultReason.NO_SPECIMENS, "the report has no specimens");
    }
    Unit unit = oneUnit(report);
    Map<Direction, Map<Specimen, Rational>> sets = new EnumMap<>(Direction.class);
    for (Specimen specimen : report.specimens()) {
      Rational read = SpecimenValues.of(specimen, row.specimenValue());
      Rational value =
          read.signum() < 0 && row.property().countsInEitherSense() ? read.negated() : read;
      sets.computeIfAbsent(specimen.direction(), any -> new LinkedHashMap<>()).put(specimen, value);
    }
    for (Direction direction : row.directions()) {
      if (!sets.containsKey(direction)) {
        throw new Stopped(
            NoResultReason.DIRECTION_MISSING,
            direction + " has no specimens; required: " + row.directions());
      }
    }
    List<Kept> kept = new ArrayList<>();
    for (Map.Entry<Direction, Map<Specimen, Rational>> set : sets.entrySet()) {
      kept.add(kept(set.getKey(), unit, set.getValue(), row, method, rules));
    }
    return kept;
  }

  private static Unit oneUnit(TestReport report) throws Stopped {
    List<Unit> units =
        report.specimens().stream()
            .flatMap(specimen -> specimen.reading().quantities().stream())
            .map(Quantity::unit)
            .distinct()
            .toList();
    if (units.size() > 1) {
      throw new Stopped(
          NoResultReason.MIXED_UNITS,
          "readings in " + units.stream().map(Unit::symbol).toList() + "; one unit is allowed");
    }
    return units.get(0);
  }

  private static Kept kept(
      Direction direction,
      Unit unit,
      Map<Specimen, Rational> tested,
      RequirementRow row,
      MethodRow method,
      List<DiscardRow> rules)
      throws Stopped {
    Map<Specimen, DiscardRow> discarded = Discards.of(tested, rules);
    ImmutableMap.Builder<Specimen, Rational> kept = ImmutableMap.builder();
    ImmutableList.Builder<Discarded> left = ImmutableList.builder();
    int keptCount = 0;
    for (Map.Entry<Specimen, Rational> specimen : tested.entrySet()) {
      Optional<DiscardRow> rule = Optional.ofNullable(discarded.get(specimen.getKey()));
      if (rule.isPresent()) {
        left.add(new Discarded(specimen.getKey(), rule.get()));
      } else {
        kept.put(specimen);
        keptCount++;
      }
    }
    String counts = direction + ": " + tested.size() + " tested, " + keptCount + " kept";
    if (discarded.size() > keptCount) {
      throw new Stopped(NoResultReason.TOO_MANY_DISCARDED, counts);
    }
    int leastTested = method.leastTested(direction);
    int leastKept = Math.max(method.leastKept(), row.leastSpecimens());
    if (tested.size() < leastTested || keptCount < leastKept) {
      throw new Stopped(
          NoResultReason.TOO_FEW_SPECIMENS,
          counts + "; at least " + leastTested + " tested and " + leastKept + " kept");
    }
    return new Kept(direction, unit, kept.buildOrThrow(), left.build());
  }
}
