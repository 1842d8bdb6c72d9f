package org.ensemblerules.inspection;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Multimaps;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * How long elements may stay in service without an inspection of each kind.
 *
 * @since 0.1
 */
public final class IntervalTable {
  private record Cell(InspectionKind inspection, ElementKind element, Use use) {
    static Cell of(IntervalRow row) {
      return new Cell(row.inspection(), row.element(), row.use());
    }
  }

  private final ImmutableList<IntervalRow> rows;
  private final ImmutableMap<Cell, IntervalRow> cells;
  private final ImmutableListMultimap<Cell, IntervalRow> beside;
  private final ImmutableListMultimap<Cell, IntervalRow> byCell;

  private IntervalTable(
      List<IntervalRow> rows, Map<Cell, IntervalRow> cells, List<IntervalRow> beside) {
    this.rows = ImmutableList.<IntervalRow>builder().addAll(rows).addAll(beside).build();
    this.cells = ImmutableMap.copyOf(cells);
    this.beside = Multimaps.index(beside, Cell::of);
    this.byCell = Multimaps.index(this.rows, Cell::of);
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each inspection and element named twice
   */
  public static Checked<IntervalTable, TableFault> of(List<IntervalRow> rows) {
    Cells<Cell, IntervalRow> cells =
        Cells.of(
            rows,
            Cell::of,
            "elements",
            row -> Cell.of(row).toString(),
            "each inspection once per element and use");
    return Checked.of(cells.faults(), () -> new IntervalTable(rows, cells.rows(), List.of()));
  }

  /**
   * Adds rows that apply beside those of this table, as overlays have them; none replaces another.
   *
   * @param more the rows; not null
   * @return the table of both; never null
   */
  public IntervalTable with(List<IntervalRow> more) {
    return new IntervalTable(
        cells.values().asList(),
        cells,
        Stream.concat(beside.values().stream(), more.stream()).toList());
  }

  /**
   * Lists the rows for a kind of inspection of an element. Each must be kept.
   *
   * @param inspection the kind of inspection; not null
   * @param element the element; not null
   * @return the rows, those added beside the table last; empty if there is none
   */
  public List<IntervalRow> rows(InspectionKind inspection, Element element) {
    return byCell.get(new Cell(inspection, element.kind(), element.use()));
  }

  /**
   * Finds the table's own row for a kind of inspection of an element.
   *
   * @param inspection the kind of inspection; not null
   * @param element the element; not null
   * @return the row; empty if the table itself sets no interval
   */
  public Optional<IntervalRow> row(InspectionKind inspection, Element element) {
    return Optional.ofNullable(cells.get(new Cell(inspection, element.kind(), element.use())));
  }

  /**
   * Returns the day by which the next inspection of a kind is due: the later of {@code inService +
   * firstMonths} and {@code last + repeatMonths}. In service counts by its earliest day. Months are
   * added to the same day of the month, or to the last one of a month that is shorter.
   *
   * @param row the interval; not null
   * @param element the element; not null
   * @param last the day of the last valid one; empty if there was none
   * @return the last day on which it is in time, the later of the first one's and the next one's;
   *     empty if there was none and it is not known when the element was placed in service
   */
  public static Optional<LocalDate> dueBy(
      IntervalRow row, Element element, Optional<LocalDate> last) {
    int months =
        element.cbrnOption() == YesNoUnknown.NO
            ? row.firstMonths()
            : row.firstMonthsWithCbrnOption();
    // One made early takes nothing off the time to the first: the repeats begin after it.
    Optional<LocalDate> first = element.inService().earliest().map(day -> day.plusMonths(months));
    Optional<LocalDate> repeated = last.map(day -> day.plusMonths(row.repeatMonths()));
    if (first.isEmpty() || repeated.isEmpty()) {
      return first.isPresent() ? first : repeated;
    }
    return first.get().isAfter(repeated.get()) ? first : repeated;
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<IntervalRow> rows() {
    return rows;
  }
}
