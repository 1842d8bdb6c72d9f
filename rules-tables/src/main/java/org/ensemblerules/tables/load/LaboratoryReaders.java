package org.ensemblerules.tables.load;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.ruleset.StrengthKinds;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.DiscardRow;
import org.ensemblerules.strength.DiscardRule;
import org.ensemblerules.strength.HydrostaticRow;
import org.ensemblerules.strength.MethodRow;
import org.ensemblerules.strength.SmallSampleRow;
import org.ensemblerules.strength.TestMethod;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** Readers of the tables that say how tests are made and their specimens counted. */
final class LaboratoryReaders {
  private enum Kind {
    SLIPPED,
    LEFT_MARKED_LINE,
    RECORDED_FAULT,
    JAW_BREAK_BELOW_OTHERS,
    JAW_BREAK_BELOW_NORMAL
  }

  /** The tables whose rows are read here. */
  static final List<TableType<?>> TYPES =
      List.of(
          new TableType<>(StrengthKinds.METHODS, LaboratoryReaders::methods),
          new TableType<>(StrengthKinds.DISCARDS, LaboratoryReaders::discards),
          new TableType<>(StrengthKinds.HYDROSTATIC, LaboratoryReaders::hydrostatic),
          new TableType<>(StrengthKinds.SMALL_SAMPLES, LaboratoryReaders::smallSamples));

  private LaboratoryReaders() {}

  static Optional<List<MethodRow>> methods(FamilyHead head, ObjectCursor row) {
    Optional<TestMethod> method = row.required("method", RequirementReader::method);
    Optional<String> title = row.required("title", JsonCursor::text);
    Optional<Boolean> destructive = row.required("destructive", JsonCursor::bool);
    Optional<Integer> tested = row.required("leastTested", LaboratoryReaders::count);
    Optional<Map<Direction, Integer>> testedIn =
        row.optional("leastTestedIn", LaboratoryReaders::byDirection);
    Optional<Integer> kept = row.required("leastKept", LaboratoryReaders::count);
    return row.make(
        () ->
            List.of(
                new MethodRow(
                    head.provenance(),
                    method.orElseThrow(),
                    title.orElseThrow(),
                    destructive.orElseThrow(),
                    tested.orElseThrow(),
                    testedIn.orElse(Map.of()),
                    kept.orElseThrow())));
  }

  static Optional<List<DiscardRow>> discards(FamilyHead head, ObjectCursor row) {
    Optional<TestMethod> method = row.required("method", RequirementReader::method);
    Optional<DiscardRule> rule = row.required("rule", LaboratoryReaders::rule);
    return row.make(
        () -> List.of(new DiscardRow(head.provenance(), method.orElseThrow(), rule.orElseThrow())));
  }

  static Optional<List<HydrostaticRow>> hydrostatic(FamilyHead head, ObjectCursor row) {
    Combinations gear = Combinations.read(row);
    Optional<Limit> pressure = row.required("pressure", LimitReader::limit);
    Optional<Limit> dwell = row.required("dwell", LimitReader::limit);
    Optional<Integer> fabric = row.required("leastFabricSpots", LaboratoryReaders::countOrNone);
    Optional<Integer> seam = row.required("leastSeamSpots", LaboratoryReaders::countOrNone);
    Optional<String> wording = row.required("wording", JsonCursor::text);
    return row.make(
        () ->
            gear.rows(
                (element, use) ->
                    Stream.of(
                        new HydrostaticRow(
                            head.provenance(element, use),
                            element,
                            use,
                            pressure.orElseThrow(),
                            dwell.orElseThrow(),
                            fabric.orElseThrow(),
                            seam.orElseThrow(),
                            wording.orElseThrow()))));
  }

  static Optional<List<SmallSampleRow>> smallSamples(FamilyHead head, ObjectCursor row) {
    Optional<BigDecimal> coverage = row.required("coveragePercent", JsonCursor::decimalOrText);
    Optional<BigDecimal> confidence = row.required("confidencePercent", JsonCursor::decimalOrText);
    Optional<Integer> n = row.required("n", LaboratoryReaders::count);
    Optional<Integer> rank = row.required("rank", LaboratoryReaders::count);
    Optional<BigDecimal> exponent = row.required("exponent", JsonCursor::decimalOrText);
    return row.make(
        () ->
            List.of(
                new SmallSampleRow(
                    head.provenance(),
                    coverage.orElseThrow(),
                    confidence.orElseThrow(),
                    n.orElseThrow(),
                    rank.orElseThrow(),
                    exponent.orElseThrow())));
  }

  private static Optional<DiscardRule> rule(JsonCursor at) {
    ObjectCursor rule = at.object();
    Optional<Kind> kind = rule.required("kind", name -> name.enumOf(Kind.class));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    return switch (kind.get()) {
      case SLIPPED -> rule.make(DiscardRule.Slipped::new);
      case LEFT_MARKED_LINE -> rule.make(DiscardRule.LeftMarkedLine::new);
      case RECORDED_FAULT -> rule.make(DiscardRule.RecordedFault::new);
      case JAW_BREAK_BELOW_OTHERS -> {
        Optional<Quantity> within = rule.required("within", ValueReaders::quantity);
        Optional<BigDecimal> share =
            rule.required("belowPercentOfOthers", JsonCursor::decimalOrText);
        yield rule.make(
            () -> new DiscardRule.JawBreakBelowOthers(within.orElseThrow(), share.orElseThrow()));
      }
      case JAW_BREAK_BELOW_NORMAL -> {
        Optional<Quantity> within = rule.required("within", ValueReaders::quantity);
        Optional<Integer> breaks = rule.required("normalBreaks", LaboratoryReaders::count);
        yield rule.make(
            () -> new DiscardRule.JawBreakBelowNormal(within.orElseThrow(), breaks.orElseThrow()));
      }
    };
  }

  private static Optional<Map<Direction, Integer>> byDirection(JsonCursor at) {
    ObjectCursor object = at.object();
    Map<Direction, Integer> counts = new EnumMap<>(Direction.class);
    for (Direction direction : Direction.values()) {
      object
          .optional(direction.name(), LaboratoryReaders::count)
          .ifPresent(count -> counts.put(direction, count));
    }
    return object.make(() -> counts);
  }

  private static Optional<Integer> count(JsonCursor at) {
    return at.integer(1, Integer.MAX_VALUE);
  }

  private static Optional<Integer> countOrNone(JsonCursor at) {
    return at.integer(0, Integer.MAX_VALUE);
  }
}
