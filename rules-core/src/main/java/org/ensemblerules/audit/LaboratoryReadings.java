package org.ensemblerules.audit;

import static org.ensemblerules.audit.Orders.atLeast;
import static org.ensemblerules.audit.Orders.holds;

import java.util.Arrays;
import java.util.List;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.DiscardRow;
import org.ensemblerules.strength.HydrostaticRow;
import org.ensemblerules.strength.MethodRow;
import org.ensemblerules.strength.RequirementRow;
import org.ensemblerules.strength.SmallSampleRow;

/** How rows of measured strength are read to be compared. */
final class LaboratoryReadings {
  static final List<RowReading<?>> ALL =
      List.of(requirements(), methods(), discards(), smallSamples(), hydrostatic());

  private LaboratoryReadings() {}

  private static RowReading<RequirementRow> requirements() {
    return RowReading.of(
            RequirementRow.class,
            "strength-requirements",
            row ->
                List.of(
                    row.product().value(),
                    row.property().name(),
                    row.element().name(),
                    row.use().name(),
                    row.site().toString(),
                    row.construction().map(Enum::name).orElse("")))
        .extent(row -> List.of(row.directions().toString(), row.methods().toString()))
        .wording(row -> List.of(row.wording()))
        .asStrict(
            (one, other) ->
                one.methods().equals(other.methods())
                    && one.specimenValue().equals(other.specimenValue())
                    && one.statistic() == other.statistic()
                    && one.fabricFailsFirst() == other.fabricFailsFirst()
                    && holds(one.directions(), other.directions())
                    && one.leastSpecimens() >= other.leastSpecimens()
                    && atLeast(one.limit(), other.limit()));
  }

  private static RowReading<MethodRow> methods() {
    return RowReading.of(MethodRow.class, "strength-methods", row -> List.of(row.method().value()))
        .wording(row -> List.of(row.title()))
        .asStrict(
            (one, other) ->
                one.destructive() == other.destructive()
                    && one.leastTested() >= other.leastTested()
                    && one.leastKept() >= other.leastKept()
                    && Arrays.stream(Direction.values())
                        .allMatch(way -> one.leastTested(way) >= other.leastTested(way)));
  }

  private static RowReading<DiscardRow> discards() {
    return RowReading.of(
            DiscardRow.class, "strength-discards", row -> List.of(row.method().value()))
        .extent(row -> List.of(row.rule().getClass().getSimpleName()))
        // One more ground to discard a specimen lets a report leave out what it showed.
        .oneMoreIs(HowStrict.UNDECIDED);
  }

  private static RowReading<SmallSampleRow> smallSamples() {
    return RowReading.of(
        SmallSampleRow.class,
        "small-sample-factors",
        row ->
            List.of(
                row.coveragePercent().toPlainString(),
                row.confidencePercent().toPlainString(),
                Integer.toString(row.n())));
  }

  private static RowReading<HydrostaticRow> hydrostatic() {
    return RowReading.of(
            HydrostaticRow.class,
            "hydrostatic",
            row -> List.of(row.element().name(), row.use().name()))
        .wording(row -> List.of(row.wording()))
        .asStrict(
            (one, other) ->
                atLeast(one.pressure(), other.pressure())
                    && atLeast(one.dwell(), other.dwell())
                    && one.leastFabricSpots() >= other.leastFabricSpots()
                    && one.leastSeamSpots() >= other.leastSeamSpots());
  }
}
