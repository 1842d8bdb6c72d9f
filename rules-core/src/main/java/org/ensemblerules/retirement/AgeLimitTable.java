package org.ensemblerules.retirement;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * How old elements and their layers may become.
 *
 * @since 0.1
 */
public final class AgeLimitTable {
  private record Cell(ElementKind element, Use use, Optional<LayerKind> layer) {
    static Cell of(AgeLimitRow row) {
      return new Cell(row.element(), row.use(), row.layer());
    }
  }

  private final ImmutableList<AgeLimitRow> rows;
  private final ImmutableMap<Cell, AgeLimitRow> cells;
  private final ImmutableListMultimap<Cell, AgeLimitRow> beside;

  private AgeLimitTable(Map<Cell, AgeLimitRow> cells, List<AgeLimitRow> beside) {
    this.rows = ImmutableList.<AgeLimitRow>builder().addAll(cells.values()).addAll(beside).build();
    this.cells = ImmutableMap.copyOf(cells);
    this.beside =
        beside.stream()
            .collect(ImmutableListMultimap.toImmutableListMultimap(Cell::of, row -> row));
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each element and layer named twice
   */
  public static Checked<AgeLimitTable, TableFault> of(List<AgeLimitRow> rows) {
    Cells<Cell, AgeLimitRow> cells =
        Cells.of(
            rows,
            Cell::of,
            "layers",
            row -> Cell.of(row).toString(),
            "each element and layer once");
    return Checked.of(cells.faults(), () -> new AgeLimitTable(cells.rows(), List.of()));
  }

  /**
   * Adds rows that apply beside those of this table, as overlays have them; none replaces another.
   *
   * @param more the rows; not null
   * @return the table of both; never null
   */
  public AgeLimitTable with(List<AgeLimitRow> more) {
    return new AgeLimitTable(
        cells, Stream.concat(beside.values().stream(), more.stream()).toList());
  }

  /**
   * Answers for each row that applies by when age takes an element or a layer out of service; the
   * first day of all counts.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param layer the labeled layer; empty for an element with one label of its own
   * @param manufactured when it was made; not null
   * @return the answer of the table's own row, then those of the rows added beside it; never empty
   */
  public List<AgeAnswer> answers(
      ElementKind element, Use use, Optional<LayerKind> layer, MarkedDate manufactured) {
    AgeAnswer own = answer(element, use, layer, manufactured);
    List<AgeLimitRow> more = beside.get(new Cell(element, use, layer));
    return more.isEmpty()
        ? ImmutableList.of(own)
        : Stream.concat(Stream.of(own), more.stream().map(row -> answer(row, manufactured)))
            .collect(ImmutableList.toImmutableList());
  }

  /**
   * Answers by when age takes an element or a layer out of service: the first day out is {@code
   * made + years}, the same day of the month so many years later, and the day before is the last.
   * Made is the earliest day that the date of manufacture can mean: the first of a month, 1 January
   * of a year. A limit that ends on 29 February of a common year ends on 28 February. That the
   * anniversary itself is out, and the earliest day counts, is our own reading, the stricter one.
   * Only the table's own rows are asked, not those added beside them.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param layer the labeled layer; empty for an element with one label of its own
   * @param manufactured when it was made; not null
   * @return the answer; never null
   */
  public AgeAnswer answer(
      ElementKind element, Use use, Optional<LayerKind> layer, MarkedDate manufactured) {
    AgeLimitRow row = cells.get(new Cell(element, use, layer));
    return row == null ? new AgeAnswer.NoRule() : answer(row, manufactured);
  }

  private static AgeAnswer answer(AgeLimitRow row, MarkedDate manufactured) {
    if (row.limit() instanceof AgeLimit.Years limit) {
      return manufactured
          .earliest()
          .<AgeAnswer>map(day -> new AgeAnswer.LeavesOn(row, day.plusYears(limit.years())))
          .orElseGet(() -> new AgeAnswer.DateUnknown(row));
    }
    return row.limit() instanceof AgeLimit.NoneSet
        ? new AgeAnswer.NoLimitSet(row)
        : new AgeAnswer.LimitNotSeen(row);
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<AgeLimitRow> rows() {
    return rows;
  }
}
