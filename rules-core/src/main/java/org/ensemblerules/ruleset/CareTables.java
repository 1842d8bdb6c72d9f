package org.ensemblerules.ruleset;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.care.CareLimitTable;
import org.ensemblerules.care.CareRouteTable;
import org.ensemblerules.care.CleaningResultTable;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.repair.RepairLimitTable;

/**
 * How gear is cleaned and repaired.
 *
 * @param limits within what a wash must stay; not null
 * @param results what a cleaning must achieve; not null
 * @param routes what is done after what it met; not null
 * @param repairLimits how lightly repairs may be taken at the most; not null
 */
public record CareTables(
    CareLimitTable limits,
    CleaningResultTable results,
    CareRouteTable routes,
    RepairLimitTable repairLimits) {
  /** Checks for nulls. */
  public CareTables {
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(results, "results");
    Objects.requireNonNull(routes, "routes");
    Objects.requireNonNull(repairLimits, "repairLimits");
  }

  /**
   * Returns tables without rows: they answer that no rule covers what they are asked.
   *
   * @param anatomy which parts exist; not null
   * @return the tables; never null
   */
  public static CareTables none(AnatomyTable anatomy) {
    return new CareTables(
        CareLimitTable.of(List.of()).orElseThrow(),
        CleaningResultTable.of(List.of()).orElseThrow(),
        CareRouteTable.of(List.of()).orElseThrow(),
        RepairLimitTable.of(List.of(), anatomy).orElseThrow());
  }

  /**
   * Returns these with other limits of washes.
   *
   * @param other within what a wash must stay; not null
   * @return the changed tables; never null
   */
  public CareTables with(CareLimitTable other) {
    return new CareTables(other, results, routes, repairLimits);
  }

  /**
   * Returns these with other results.
   *
   * @param other what a cleaning must achieve; not null
   * @return the changed tables; never null
   */
  public CareTables with(CleaningResultTable other) {
    return new CareTables(limits, other, routes, repairLimits);
  }

  /**
   * Returns these with other routes.
   *
   * @param other what is done after what it met; not null
   * @return the changed tables; never null
   */
  public CareTables with(CareRouteTable other) {
    return new CareTables(limits, results, other, repairLimits);
  }

  /**
   * Returns these with other limits of repairs.
   *
   * @param other how lightly repairs may be taken at the most; not null
   * @return the changed tables; never null
   */
  public CareTables with(RepairLimitTable other) {
    return new CareTables(limits, results, routes, other);
  }
}
