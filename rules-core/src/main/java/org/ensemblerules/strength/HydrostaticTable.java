package org.ensemblerules.strength;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * What moisture barriers must hold at fixed pressure.
 *
 * @since 0.1
 */
public final class HydrostaticTable {
  private record Cell(ElementKind element, Use use) {}

  private final ImmutableMap<Cell, HydrostaticRow> cells;

  private HydrostaticTable(Map<Cell, HydrostaticRow> cells) {
    this.cells = ImmutableMap.copyOf(cells);
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each element named twice
   */
  public static Checked<HydrostaticTable, TableFault> of(List<HydrostaticRow> rows) {
    Cells<Cell, HydrostaticRow> cells =
        Cells.of(
            rows,
            row -> new Cell(row.element(), row.use()),
            "elements",
            row -> row.element() + " " + row.use(),
            "each element and use once");
    return Checked.of(cells.faults(), () -> new HydrostaticTable(cells.rows()));
  }

  /**
   * Judges a trial at pressure p for time t by a row that asks for P and T. Holding stands if
   * {@code p >= P}, {@code t >= T} and enough spots were tested, none unknown. A leak stands if
   * {@code p <= P} and {@code t <= T}, whatever the spots. Units are converted exactly; equal
   * conforms; rounding is the comparison's. This is our own reading of a requirement to hold.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param trial the trial; not null
   * @param comparison how pressure and time applied are compared with those required; not null
   * @return what the trial shows; never null
   * @throws InvalidValueException if the comparison rounds to an interval coarser than the last
   *     place of the pressure or of the time required
   */
  public HydrostaticResult judge(
      ElementKind element, Use use, HydrostaticTrial trial, ComparisonMethod comparison) {
    HydrostaticRow row = cells.get(new Cell(element, use));
    if (row == null) {
      return new HydrostaticResult.NoRule();
    }
    InvalidValueException.require(
        row.pressure().allows(comparison) && row.dwell().allows(comparison),
        "comparison",
        comparison,
        "no interval coarser than the last places of " + row.pressure() + " and " + row.dwell());
    Set<HydrostaticFault> milder = milder(row, trial, comparison);
    Set<HydrostaticFault> harder = harder(row, trial, comparison);
    List<HydrostaticTrial.Spot> leaks =
        trial.spots().stream().filter(spot -> spot.leaked() == YesNoUnknown.YES).toList();
    if (!leaks.isEmpty()) {
      return harder.isEmpty()
          ? new HydrostaticResult.Leaked(row, leaks, milder)
          : new HydrostaticResult.ConditionsNotKept(row, harder);
    }
    return milder.isEmpty()
        ? new HydrostaticResult.Held(row)
        : new HydrostaticResult.ConditionsNotKept(row, milder);
  }

  private static Set<HydrostaticFault> milder(
      HydrostaticRow row, HydrostaticTrial trial, ComparisonMethod comparison) {
    Set<HydrostaticFault> faults = EnumSet.noneOf(HydrostaticFault.class);
    if (!row.pressure().compare(trial.pressure(), comparison).met()) {
      faults.add(HydrostaticFault.PRESSURE_TOO_LOW);
    }
    if (!row.dwell().compare(trial.dwell(), comparison).met()) {
      faults.add(HydrostaticFault.DWELL_TOO_SHORT);
    }
    long seams = trial.spots().stream().filter(HydrostaticTrial.Spot::seam).count();
    if (trial.spots().size() - seams < row.leastFabricSpots()) {
      faults.add(HydrostaticFault.TOO_FEW_FABRIC_SPOTS);
    }
    if (seams < row.leastSeamSpots()) {
      faults.add(HydrostaticFault.TOO_FEW_SEAM_SPOTS);
    }
    if (trial.spots().stream().anyMatch(spot -> spot.leaked() == YesNoUnknown.UNKNOWN)) {
      faults.add(HydrostaticFault.SPOT_UNKNOWN);
    }
    return faults;
  }

  private static Set<HydrostaticFault> harder(
      HydrostaticRow row, HydrostaticTrial trial, ComparisonMethod comparison) {
    Set<HydrostaticFault> faults = EnumSet.noneOf(HydrostaticFault.class);
    if (isOver(row.pressure(), trial.pressure(), comparison)) {
      faults.add(HydrostaticFault.PRESSURE_TOO_HIGH);
    }
    if (isOver(row.dwell(), trial.dwell(), comparison)) {
      faults.add(HydrostaticFault.DWELL_TOO_LONG);
    }
    return faults;
  }

  private static boolean isOver(Limit required, Quantity applied, ComparisonMethod comparison) {
    Limit most = new Limit(Bound.MAXIMUM, required.value(), required.alsoPrinted());
    return !most.compare(applied, comparison).met();
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<HydrostaticRow> rows() {
    return ImmutableList.copyOf(cells.values());
  }
}
