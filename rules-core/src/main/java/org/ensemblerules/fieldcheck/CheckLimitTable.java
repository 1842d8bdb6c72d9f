package org.ensemblerules.fieldcheck;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.effect.Check;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * What values measured in hand checks must be.
 *
 * @since 0.1
 */
public final class CheckLimitTable {
  private final ImmutableList<CheckLimitRow> rows;
  private final Map<Check, CheckLimitRow> byCheck;

  private CheckLimitTable(List<CheckLimitRow> rows, Map<Check, CheckLimitRow> byCheck) {
    this.rows = ImmutableList.copyOf(rows);
    this.byCheck = byCheck;
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each check named twice
   */
  public static Checked<CheckLimitTable, TableFault> of(List<CheckLimitRow> rows) {
    Cells<Check, CheckLimitRow> byCheck =
        Cells.of(
            rows,
            CheckLimitRow::check,
            "check",
            row -> row.check().name(),
            "each check at most once");
    return Checked.of(byCheck.faults(), () -> new CheckLimitTable(rows, byCheck.rows()));
  }

  /**
   * Judges the overlap of coat and trousers.
   *
   * @param leastMeasured the least overlap seen in any posture, a length, zero or more; not null
   * @return the answer; never null
   * @throws InvalidValueException if the value is negative or no length
   */
  public LimitAnswer overlap(Quantity leastMeasured) {
    return judge(Check.FIT_AND_OVERLAP, leastMeasured);
  }

  /**
   * Judges a value measured in a check, by the absolute method.
   *
   * @param check the check; not null
   * @param measured the value, of the limit's dimension, zero or more; not null
   * @return the answer; never null
   * @throws InvalidValueException if the value is negative or of another dimension
   */
  public LimitAnswer judge(Check check, Quantity measured) {
    InvalidValueException.require(
        measured.value().signum() >= 0, "measured", measured, "zero or more");
    CheckLimitRow row = byCheck.get(check);
    if (row == null) {
      return new LimitAnswer.NoRule();
    }
    Limit.Answer comparison = row.limit().compare(measured, ComparisonMethod.absolute());
    return comparison.met()
        ? new LimitAnswer.Meets(row, comparison)
        : new LimitAnswer.Fails(row, comparison);
  }

  /**
   * Finds what a value measured in a check must be.
   *
   * @param check the check; not null
   * @return the row; empty if the check measures nothing
   */
  public Optional<CheckLimitRow> row(Check check) {
    return Optional.ofNullable(byCheck.get(check));
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<CheckLimitRow> rows() {
    return rows;
  }
}
