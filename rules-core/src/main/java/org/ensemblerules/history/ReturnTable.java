package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Multimaps;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * How elements are inspected before they serve again, by how they came back.
 *
 * @since 0.1
 */
public final class ReturnTable {
  private final ImmutableList<ReturnRow> rows;
  private final ImmutableListMultimap<Transfer, ReturnRow> byTransfer;

  private ReturnTable(List<ReturnRow> rows) {
    this.rows = ImmutableList.copyOf(rows);
    this.byTransfer = Multimaps.index(this.rows, ReturnRow::back);
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each transfer named twice and, unless there are no rows, for
   *     the transfers of what comes back that none names
   */
  public static Checked<ReturnTable, TableFault> of(List<ReturnRow> rows) {
    List<TableFault> faults =
        Cells.of(
                rows,
                ReturnRow::back,
                "transfers",
                row -> row.back() + " again",
                "each transfer once")
            .faults();
    Set<Transfer> missing = EnumSet.noneOf(Transfer.class);
    Arrays.stream(Transfer.values()).filter(Transfer::comesBack).forEach(missing::add);
    rows.forEach(row -> missing.remove(row.back()));
    if (!rows.isEmpty() && !missing.isEmpty()) {
      faults.add(
          new TableFault(
              FaultCode.GAP,
              rows.get(0).key(),
              "transfers",
              "no row for " + missing,
              "a row for every transfer with which an element comes from others' hands"));
    }
    return Checked.of(faults, () -> new ReturnTable(rows));
  }

  /**
   * Lays rows beside these, as overlays do: each asks for its own inspection.
   *
   * @param more the rows; not null
   * @return the table with them; never null
   */
  public ReturnTable with(List<ReturnRow> more) {
    return new ReturnTable(Stream.concat(rows.stream(), more.stream()).toList());
  }

  /**
   * Lists what is asked of an element that came back.
   *
   * @param back the transfer with which it came; not null
   * @return the rows, the table's own first; empty if no rule covers it
   */
  public List<ReturnRow> rows(Transfer back) {
    return byTransfer.get(back);
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<ReturnRow> rows() {
    return rows;
  }
}
