package org.ensemblerules.schedule;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.TableFault;

/**
 * Which tasks elements have, and when. Rows stand beside each other; none replaces another.
 *
 * @since 0.1
 */
public final class TaskTable {
  private record Cell(ElementKind element, Use use) {}

  private record Said(OriginId by, List<String> what) {}

  private final ImmutableList<TaskRow> rows;
  private final ImmutableListMultimap<Cell, TaskRow> cells;

  private TaskTable(List<TaskRow> rows) {
    this.rows = ImmutableList.copyOf(rows);
    this.cells =
        rows.stream()
            .collect(
                ImmutableListMultimap.toImmutableListMultimap(
                    row -> new Cell(row.element(), row.use()), row -> row));
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each key named twice and each row that says again what
   *     another of the same origin says
   */
  public static Checked<TaskTable, TableFault> of(List<TaskRow> rows) {
    List<TableFault> faults = new ArrayList<>();
    Set<RowKey> keys = new HashSet<>();
    // A layer may say again what another says; each then stands for itself.
    Set<Said> said = new HashSet<>();
    for (TaskRow row : rows) {
      if (!keys.add(row.key())) {
        faults.add(
            new TableFault(
                FaultCode.DUPLICATE, row.key(), "key", row.key().value(), "each key once"));
      } else if (!said.add(new Said(row.provenance().origin(), row.canonical()))) {
        faults.add(
            new TableFault(
                FaultCode.DUPLICATE,
                row.key(),
                "timing",
                row.timing().text(),
                "each timing once per task, element and use"));
      }
    }
    return Checked.of(faults, () -> new TaskTable(rows));
  }

  /**
   * Adds rows beside those of this table, as a department's own policy does.
   *
   * @param more the rows; not null
   * @return the table of both, or its faults
   */
  public Checked<TaskTable, TableFault> with(List<TaskRow> more) {
    return of(Stream.concat(rows.stream(), more.stream()).toList());
  }

  /**
   * Finds the rows for an element.
   *
   * @param element the element; not null
   * @return the rows in table order; empty if the table has none
   */
  public List<TaskRow> rows(Element element) {
    return cells.get(new Cell(element.kind(), element.use()));
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<TaskRow> rows() {
    return rows;
  }
}
