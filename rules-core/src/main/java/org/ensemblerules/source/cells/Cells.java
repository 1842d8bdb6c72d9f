package org.ensemblerules.source.cells;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.TableFault;

/**
 * The rows of a table by what each is for, which no two may share. Of rows that share it the first
 * stands, and each other is a fault.
 *
 * @param <C> what a row is for, with equality
 * @param <R> the rows
 */
public final class Cells<C, R extends Row> {
  private final Map<C, R> rows = new LinkedHashMap<>();
  private final List<TableFault> faults = new ArrayList<>();

  private Cells() {}

  /**
   * Sorts rows.
   *
   * @param rows the rows; not null
   * @param cell what a row is for; not null
   * @param field the field that says so in the table file; not null
   * @param found how what a second row is for is shown; not null
   * @param allowed what is allowed, as in {@code each check once}; not null
   * @param <C> what a row is for
   * @param <R> the rows
   * @return the cells; never null
   */
  public static <C, R extends Row> Cells<C, R> of(
      List<R> rows, Function<R, C> cell, String field, Function<R, String> found, String allowed) {
    Cells<C, R> cells = new Cells<>();
    for (R row : rows) {
      if (cells.rows.putIfAbsent(cell.apply(row), row) != null) {
        cells.faults.add(
            new TableFault(FaultCode.DUPLICATE, row.key(), field, found.apply(row), allowed));
      }
    }
    return cells;
  }

  /**
   * Sorts rows by their keys.
   *
   * @param rows the rows; not null
   * @param <R> the rows
   * @return the cells; never null
   */
  public static <R extends Row> Cells<RowKey, R> byKey(List<R> rows) {
    return of(rows, Row::key, "key", row -> row.key().value(), "each key once");
  }

  /**
   * Returns the first row of each cell.
   *
   * @return an unmodifiable map in the order of the rows; never null
   */
  public Map<C, R> rows() {
    return Collections.unmodifiableMap(rows);
  }

  /**
   * Returns a fault for each row whose cell has one already.
   *
   * @return a new list in the order of the rows; never null
   */
  public List<TableFault> faults() {
    return new ArrayList<>(faults);
  }
}
