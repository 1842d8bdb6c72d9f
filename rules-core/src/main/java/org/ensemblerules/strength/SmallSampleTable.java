package org.ensemblerules.strength;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * Ranks and exponents of the small-sample bound of {@link DecisionRule.SmallSampleNonparametric}.
 * Nothing is interpolated: what the table lacks gives no result. Percentages are compared as
 * numbers, so that 90 and 90.0 are one.
 *
 * @since 0.1
 */
public final class SmallSampleTable {
  // Percentages without trailing zeros, so that 90 and 90.0 are one.
  private record Cell(BigDecimal coverage, BigDecimal confidence, int n) {
    Cell {
      coverage = coverage.stripTrailingZeros();
      confidence = confidence.stripTrailingZeros();
    }
  }

  private final ImmutableMap<Cell, SmallSampleRow> cells;

  private SmallSampleTable(Map<Cell, SmallSampleRow> cells) {
    this.cells = ImmutableMap.copyOf(cells);
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each case named twice
   */
  public static Checked<SmallSampleTable, TableFault> of(List<SmallSampleRow> rows) {
    Cells<Cell, SmallSampleRow> cells =
        Cells.of(
            rows,
            row -> new Cell(row.coveragePercent(), row.confidencePercent(), row.n()),
            "n",
            row ->
                row.n()
                    + " for "
                    + row.coveragePercent().toPlainString()
                    + " % with "
                    + row.confidencePercent().toPlainString()
                    + " % confidence",
            "each case once");
    return Checked.of(cells.faults(), () -> new SmallSampleTable(cells.rows()));
  }

  /**
   * Finds rank and exponent.
   *
   * @param coveragePercent the coverage in percent; not null
   * @param confidencePercent the confidence in percent; not null
   * @param n how many specimens
   * @return the row; empty if the table has none
   */
  public Optional<SmallSampleRow> row(
      BigDecimal coveragePercent, BigDecimal confidencePercent, int n) {
    return Optional.ofNullable(cells.get(new Cell(coveragePercent, confidencePercent, n)));
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<SmallSampleRow> rows() {
    return ImmutableList.copyOf(cells.values());
  }
}
