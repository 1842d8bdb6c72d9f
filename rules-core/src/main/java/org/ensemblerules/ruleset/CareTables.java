package org.ensemblerules.ruleset;

import java.util.Objects;
import org.ensemblerules.care.CareLimitTable;
import org.ensemblerules.care.CareRouteTable;
import org.ensemblerules.care.CleaningResultTable;
import org.ensemblerules.repair.RepairLimitTable;

/**
 * How gear is cleaned and repaired.
 *
 * @param limits within what a wash must stay; not null
 * @param results what a cleaning must achieve; not null
 * @param routes what is done after what it met; not null
 * @param repairLimits how lightly repairs may be taken at the most; not null
 * @since 0.1
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

  static CareTables of(TableMap tables) {
    return new CareTables(
        tables.of(CareKinds.CARE_LIMITS),
        tables.of(CareKinds.CLEANING_RESULTS),
        tables.of(CareKinds.CARE_ROUTES),
        tables.of(CareKinds.REPAIR_LIMITS));
  }
}
