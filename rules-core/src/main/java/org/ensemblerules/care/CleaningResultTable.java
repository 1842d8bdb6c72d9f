package org.ensemblerules.care;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Maps;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * What a cleaning must achieve, contaminant by contaminant.
 *
 * @since 0.1
 */
public final class CleaningResultTable {
  private final ImmutableList<CleaningResultRow> rows;
  private final Map<Contaminant, CleaningResultRow> byContaminant;

  private CleaningResultTable(
      List<CleaningResultRow> rows, Map<Contaminant, CleaningResultRow> byContaminant) {
    this.rows = ImmutableList.copyOf(rows);
    this.byContaminant = byContaminant;
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each contaminant named twice and each removal that is no
   *     ratio
   */
  public static Checked<CleaningResultTable, TableFault> of(List<CleaningResultRow> rows) {
    Cells<Contaminant, CleaningResultRow> byContaminant =
        Cells.of(
            rows,
            CleaningResultRow::contaminant,
            "contaminant",
            row -> row.contaminant().name(),
            "each contaminant once");
    List<TableFault> faults = byContaminant.faults();
    for (CleaningResultRow row : rows) {
      if (row.demand() instanceof CleaningDemand.Removal removal
          && removal.limit().value().unit().dimension() != Dimension.RATIO) {
        faults.add(
            new TableFault(row.key(), "demand", removal.toString(), "a limit of dimension RATIO"));
      }
    }
    return Checked.of(faults, () -> new CleaningResultTable(rows, byContaminant.rows()));
  }

  /**
   * Judges every contaminant that a row or a result names. A removal is compared with its limit by
   * the absolute method, logs with whole logs after they were rounded down; equal is enough.
   *
   * @param results the result of each contaminant, an average where the rows ask for one; not null
   * @return an answer for each, in the order of the contaminants; empty if there is neither row nor
   *     result
   */
  public Map<Contaminant, CleaningAnswer> judge(Map<Contaminant, CleaningResult> results) {
    EnumMap<Contaminant, CleaningAnswer> answers = new EnumMap<>(Contaminant.class);
    for (Contaminant contaminant : Contaminant.values()) {
      Optional<CleaningResult> result = Optional.ofNullable(results.get(contaminant));
      CleaningResultRow row = byContaminant.get(contaminant);
      if (row != null) {
        answers.put(
            contaminant,
            result
                .map(measured -> judge(row, measured))
                .orElseGet(() -> new CleaningAnswer.NoResult(row, "not stated")));
      } else if (result.isPresent()) {
        answers.put(contaminant, new CleaningAnswer.NoRule());
      }
    }
    return Maps.immutableEnumMap(answers);
  }

  private static CleaningAnswer judge(CleaningResultRow row, CleaningResult result) {
    if (result instanceof RemovalEfficiency.NothingBefore
        || result instanceof LogReduction.NothingBefore) {
      return new CleaningAnswer.NoResult(row, "there was nothing before");
    }
    if (row.demand() instanceof CleaningDemand.Removal demand
        && result instanceof RemovalEfficiency.Removed removed) {
      return demand.limit().compare(removed.percent(), ComparisonMethod.absolute()).met()
          ? new CleaningAnswer.Meets(row)
          : new CleaningAnswer.Fails(row, removed.percent().toString());
    }
    if (row.demand() instanceof CleaningDemand.WholeLogs demand
        && result instanceof LogReduction reduction) {
      return judge(row, demand.logs(), reduction);
    }
    return new CleaningAnswer.NoResult(row, "the result is not of the kind that the row asks for");
  }

  private static CleaningAnswer judge(CleaningResultRow row, int logs, LogReduction reduction) {
    if (reduction instanceof LogReduction.Reduced reduced) {
      return reduced.wholeLogs() >= logs
          ? new CleaningAnswer.Meets(row)
          : new CleaningAnswer.Fails(row, reduced.wholeLogs() + " whole logs");
    }
    if (reduction instanceof LogReduction.AtLeast least) {
      return least.wholeLogs() >= logs
          ? new CleaningAnswer.Meets(row)
          : new CleaningAnswer.NoResult(
              row, "none found, but shown only to be at least " + least.wholeLogs() + " logs");
    }
    return new CleaningAnswer.NoResult(row, "none found, and no limit of detection was stated");
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<CleaningResultRow> rows() {
    return rows;
  }
}
