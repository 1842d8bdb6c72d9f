package org.ensemblerules.care;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Known;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.TableResult;

/** Within what a wash must stay to count as a cleaning. */
public final class CareLimitTable {
  private record Cell(
      ElementKind element,
      Use use,
      Optional<LayerKind> layer,
      String subject,
      Optional<Bound> direction) {}

  private final ImmutableList<CareLimitRow> rows;

  private CareLimitTable(List<CareLimitRow> rows) {
    this.rows = ImmutableList.copyOf(rows);
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each limit of another dimension than what it limits, and each
   *     said twice in one direction for the same element and layer
   */
  public static TableResult<CareLimitTable> of(List<CareLimitRow> rows) {
    List<TableFault> faults = new ArrayList<>();
    Set<Cell> cells = new LinkedHashSet<>();
    for (CareLimitRow row : rows) {
      Optional<Bound> direction = Optional.empty();
      if (row.demand() instanceof CareDemand.Within within) {
        direction = Optional.of(within.limit().bound());
        if (within.limit().value().unit().dimension() != within.measure().dimension()) {
          faults.add(
              new TableFault(
                  row.key(),
                  "demand",
                  within.limit().toString(),
                  "a limit of dimension " + within.measure().dimension()));
        }
      }
      Cell cell =
          new Cell(row.element(), row.use(), row.layer(), row.demand().subject(), direction);
      if (!cells.add(cell)) {
        faults.add(
            new TableFault(
                row.key(),
                "demand",
                row.demand().subject(),
                "each subject once in each direction per element, use and layer"));
      }
    }
    return TableResult.of(faults, () -> new CareLimitTable(rows));
  }

  /**
   * Judges a wash. What the edition limits and nobody stated keeps the wash from counting, but is
   * no finding.
   *
   * @param wash how it was washed; not null
   * @param element what was washed; not null
   * @param layers which of its layers were washed; empty if it has none or nobody has said, so that
   *     the rows for every layer hold; not null
   * @return the answer; never null
   */
  public WashAnswer judge(WashRecord wash, Element element, Set<LayerKind> layers) {
    List<CareLimitRow> asked = rows.stream().filter(row -> row.holdsFor(element, layers)).toList();
    if (asked.isEmpty()) {
      return new WashAnswer.NoRule();
    }
    List<WashDeviation> deviations =
        asked.stream()
            .flatMap(row -> deviation(row, wash).stream())
            .collect(ImmutableList.toImmutableList());
    return deviations.isEmpty()
        ? new WashAnswer.Counts(asked)
        : new WashAnswer.OutsideLimits(deviations);
  }

  private static Optional<WashDeviation> deviation(CareLimitRow row, WashRecord wash) {
    if (row.demand() instanceof CareDemand.Forbidden forbidden) {
      return switch (wash.practised(forbidden.practice())) {
        case NO -> Optional.empty();
        case UNKNOWN -> notStated(row);
        case YES ->
            Optional.of(
                new WashDeviation(
                    row,
                    true,
                    Known.YES.name(),
                    row.demand().allowed(),
                    forbidden.practice().finding()));
      };
    }
    CareDemand.Within within = (CareDemand.Within) row.demand();
    return within.measure() == WashMeasure.EXTRACTION
        ? extraction(row, within.limit(), wash.extraction())
        : wash.measured(within.measure())
            .map(value -> measured(row, within, value))
            .orElseGet(() -> notStated(row));
  }

  private static Optional<WashDeviation> measured(
      CareLimitRow row, CareDemand.Within within, Quantity value) {
    Limit.Answer answer = within.limit().compare(value, ComparisonMethod.absolute());
    return answer.met()
        ? Optional.empty()
        : Optional.of(
            new WashDeviation(
                row,
                true,
                text(value, answer),
                row.demand().allowed(),
                within.measure().finding(within.limit().bound())));
  }

  private static String text(Quantity value, Limit.Answer answer) {
    return value
        + (value.unit() == answer.limit().value().unit()
            ? ""
            : " (about " + answer.observed() + ")")
        + (answer.secondUnitWouldDiffer()
            ? "; allowed by the number in the second unit, which does not count"
            : "");
  }

  private static Optional<WashDeviation> extraction(
      CareLimitRow row, Limit limit, Extraction extraction) {
    if (extraction instanceof Extraction.NotStated) {
      return notStated(row);
    }
    boolean met;
    if (extraction instanceof Extraction.Stated stated) {
      met = limit.compare(stated.force(), ComparisonMethod.absolute()).met();
    } else if (extraction instanceof Extraction.Computed computed) {
      met =
          limit.bound() == Bound.MAXIMUM
              ? computed.force().isAtMost(limit.value())
              : computed.force().isAtLeast(limit.value());
    } else {
      met = limit.bound() == Bound.MAXIMUM;
    }
    return met
        ? Optional.empty()
        : Optional.of(
            new WashDeviation(
                row, true, extraction.toString(), row.demand().allowed(), Optional.empty()));
  }

  private static Optional<WashDeviation> notStated(CareLimitRow row) {
    return Optional.of(
        new WashDeviation(row, false, "not stated", row.demand().allowed(), Optional.empty()));
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<CareLimitRow> rows() {
    return rows;
  }
}
