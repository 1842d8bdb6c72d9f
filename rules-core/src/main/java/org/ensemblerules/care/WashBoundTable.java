package org.ensemblerules.care;

import com.google.common.collect.ImmutableMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * How far limits of washes can go: how loose they can be made, and what values there are.
 *
 * @since 0.1
 */
public final class WashBoundTable {
  private record Cell(WashMeasure measure, WashBoundRow.Reach reach, Bound bound) {
    static Cell of(WashBoundRow row) {
      return new Cell(row.measure(), row.reach(), row.limit().bound());
    }
  }

  private final ImmutableMap<Cell, WashBoundRow> cells;

  private WashBoundTable(Map<Cell, WashBoundRow> cells) {
    this.cells = ImmutableMap.copyOf(cells);
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each end named twice and for each that no value can have
   */
  public static Checked<WashBoundTable, TableFault> of(List<WashBoundRow> rows) {
    Cells<Cell, WashBoundRow> cells =
        Cells.of(
            rows,
            Cell::of,
            "limit",
            row -> row.reach() + " " + row.limit().bound() + " of " + row.measure() + " again",
            "each end of each measure once");
    List<TableFault> faults = cells.faults();
    WashBoundTable table = new WashBoundTable(cells.rows());
    for (WashBoundRow row : rows) {
      table
          .crossedBy(row.measure(), row.limit())
          .ifPresent(
              end ->
                  faults.add(
                      new TableFault(
                          row.key(),
                          "limit",
                          row.limit().toString(),
                          "a value that there is: " + end.limit() + " by row " + end.key())));
    }
    return Checked.of(faults, () -> table);
  }

  /**
   * Finds how loose a limit can be made.
   *
   * @param measure what it limits; not null
   * @param bound on which side; not null
   * @return the row; empty if nothing says so, so that it can't be made looser at all
   */
  public Optional<WashBoundRow> loosest(WashMeasure measure, Bound bound) {
    return Optional.ofNullable(cells.get(new Cell(measure, WashBoundRow.Reach.LOOSEST, bound)));
  }

  /**
   * Finds the end of all values that a limit lies beyond, compared exactly across units; at the end
   * is not beyond it.
   *
   * @param measure what is limited; not null
   * @param limit the limit; not null
   * @return the row; empty if a value may be as large as the limit, as far as the rows say, or if
   *     the limit is of another dimension than the measure
   */
  public Optional<WashBoundRow> crossedBy(WashMeasure measure, Limit limit) {
    return limit.value().unit().dimension() != measure.dimension()
        ? Optional.empty()
        : cells.values().stream()
            .filter(row -> row.measure() == measure && row.reach() == WashBoundRow.Reach.POSSIBLE)
            .filter(row -> !row.limit().compare(limit.value(), ComparisonMethod.absolute()).met())
            .findFirst();
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<WashBoundRow> rows() {
    return cells.values().asList();
  }
}
