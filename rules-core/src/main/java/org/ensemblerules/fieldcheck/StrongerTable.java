package org.ensemblerules.fieldcheck;

import com.google.common.collect.ImmutableList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.Check;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * Which check outranks which. No check outranks itself, so that a repeat never answers a failure;
 * and the leak check and the barrier under pressure never stand in for one another, as on used gear
 * the two do not agree.
 *
 * @since 0.1
 */
public final class StrongerTable {
  private static final Set<Check> NEVER_FOR_ONE_ANOTHER =
      EnumSet.of(Check.LINER_LEAKAGE, Check.BARRIER_UNDER_PRESSURE);

  private final ImmutableList<StrongerRow> rows;
  private final Map<Check, StrongerRow> byCheck;

  private StrongerTable(List<StrongerRow> rows, Map<Check, StrongerRow> byCheck) {
    this.rows = ImmutableList.copyOf(rows);
    this.byCheck = byCheck;
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each check named twice, each that would outrank itself, and
   *     each way from the leak check to the barrier under pressure or back
   */
  public static Checked<StrongerTable, TableFault> of(List<StrongerRow> rows) {
    Cells<Check, StrongerRow> cells =
        Cells.of(
            rows,
            StrongerRow::check,
            "check",
            row -> row.check().name(),
            "each check at most once");
    List<TableFault> faults = cells.faults();
    Map<Check, StrongerRow> byCheck = new EnumMap<>(Check.class);
    byCheck.putAll(cells.rows());
    for (StrongerRow row : byCheck.values()) {
      Set<Check> above = above(row.check(), byCheck);
      if (above.contains(row.check())) {
        faults.add(
            new TableFault(
                row.key(),
                "stronger",
                row.stronger().name(),
                "a check that does not lead back to " + row.check()));
      }
      if (NEVER_FOR_ONE_ANOTHER.contains(row.check())
          && NEVER_FOR_ONE_ANOTHER.stream()
              .anyMatch(other -> other != row.check() && above.contains(other))) {
        faults.add(
            new TableFault(
                row.key(),
                "stronger",
                row.stronger().name(),
                "no way between " + NEVER_FOR_ONE_ANOTHER));
      }
    }
    return Checked.of(faults, () -> new StrongerTable(rows, byCheck));
  }

  private static Set<Check> above(Check check, Map<Check, StrongerRow> byCheck) {
    Set<Check> above = EnumSet.noneOf(Check.class);
    StrongerRow row = byCheck.get(check);
    while (row != null && above.add(row.stronger())) {
      row = byCheck.get(row.stronger());
    }
    return above;
  }

  /**
   * Finds the check that follows a failed one.
   *
   * @param failed the check that failed; not null
   * @return the row that names the next check; empty if the table names none
   */
  public Optional<StrongerRow> next(Check failed) {
    return Optional.ofNullable(byCheck.get(failed));
  }

  /**
   * Tells whether a later check outranks a failed one. A repeat of the same check never does.
   *
   * @param later the later check; not null
   * @param failed the check that failed; not null
   * @return true if rows lead from the failed check to the later one
   */
  public boolean outranks(Check later, Check failed) {
    return above(failed, byCheck).contains(later);
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<StrongerRow> rows() {
    return rows;
  }
}
