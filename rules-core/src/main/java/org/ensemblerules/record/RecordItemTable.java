package org.ensemblerules.record;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.EvidenceTables;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * What is recorded of elements.
 *
 * @since 0.1
 */
public final class RecordItemTable {
  private record Cell(ElementKind element, Use use, RecordItem item) {}

  private final ImmutableList<RecordItemRow> rows;
  private final ImmutableMap<Cell, RecordItemRow> cells;

  private RecordItemTable(List<RecordItemRow> rows, Map<Cell, RecordItemRow> cells) {
    this.rows = ImmutableList.copyOf(rows);
    this.cells = ImmutableMap.copyOf(cells);
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each item named twice of an element and each detail that its
   *     item does not have
   */
  public static Checked<RecordItemTable, TableFault> of(List<RecordItemRow> rows) {
    Cells<Cell, RecordItemRow> cells =
        Cells.of(
            rows,
            row -> new Cell(row.element(), row.use(), row.item()),
            "item",
            row -> row.item().name(),
            "each item once per element and use");
    List<TableFault> faults = cells.faults();
    for (RecordItemRow row : rows) {
      if (!row.item().details().containsAll(row.details())) {
        faults.add(
            new TableFault(
                row.key(),
                "details",
                row.details().toString(),
                "details of " + row.item() + ": " + row.item().details()));
      }
    }
    return Checked.of(faults, () -> new RecordItemTable(rows, cells.rows()));
  }

  /**
   * Finds what is asked of an item.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param item the item; not null
   * @return the row; empty if no rule asks for it
   */
  public Optional<RecordItemRow> row(ElementKind element, Use use, RecordItem item) {
    return Optional.ofNullable(cells.get(new Cell(element, use, item)));
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<RecordItemRow> rows() {
    return rows;
  }

  /**
   * Tells whether a file holds what it must. Nothing unknown counts as present: a date is there
   * only to the day, a maker only by name.
   *
   * @param file the file; not null
   * @param evidence by what it is decided which inspections count; not null
   * @param asOf the day asked about; what certainly happened later is left out; not null
   * @return an answer for each item; never null
   */
  public FileReport check(RecordFile file, EvidenceTables evidence, LocalDate asOf) {
    return RecordCheck.check(file, this, evidence, asOf);
  }
}
