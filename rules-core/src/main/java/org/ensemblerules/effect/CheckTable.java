package org.ensemblerules.effect;

import com.google.common.collect.ImmutableList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * Of each check: who does it, what must be shown, and what passing it settles.
 *
 * @since 0.1
 */
public final class CheckTable {
  private final ImmutableList<CheckRow> rows;
  private final Map<Check, CheckRow> byCheck;

  private CheckTable(List<CheckRow> rows) {
    this.rows = ImmutableList.copyOf(rows);
    this.byCheck = new EnumMap<>(Check.class);
    rows.forEach(row -> byCheck.put(row.check(), row));
  }

  /**
   * Compiles rows.
   *
   * @param rows one row for each check; not null
   * @return the table, or a fault for each check that has no row or more than one
   */
  public static Checked<CheckTable, TableFault> of(List<CheckRow> rows) {
    Cells<Check, CheckRow> byCheck =
        Cells.of(rows, CheckRow::check, "check", row -> row.check().name(), "each check once");
    List<TableFault> faults = byCheck.faults();
    Set<Check> missing = EnumSet.allOf(Check.class);
    missing.removeAll(byCheck.rows().keySet());
    if (!missing.isEmpty()) {
      faults.add(
          new TableFault(
              FaultCode.GAP,
              new RowKey("checks"),
              "check",
              "no row for " + missing,
              "a row for each"));
    }
    return Checked.of(faults, () -> new CheckTable(rows));
  }

  /**
   * Returns the row of a check.
   *
   * @param check the check; not null
   * @return its row; never null
   */
  public CheckRow row(Check check) {
    return Objects.requireNonNull(byCheck.get(check), "a compiled table has a row for each check");
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<CheckRow> rows() {
    return rows;
  }
}
