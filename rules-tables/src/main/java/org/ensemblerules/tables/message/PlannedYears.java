package org.ensemblerules.tables.message;

import java.util.Objects;
import org.ensemblerules.fleet.Budget;
import org.ensemblerules.fleet.Forecast;
import org.ensemblerules.fleet.ReplacementPlan;

/**
 * What leaves service, and what replacing it costs.
 *
 * @param forecast what leaves when; not null
 * @param budget what may be spent; not null
 * @param plan what is bought when; not null
 * @since 0.1
 */
public record PlannedYears(Forecast forecast, Budget budget, ReplacementPlan plan) {
  /** Checks for nulls. */
  public PlannedYears {
    Objects.requireNonNull(forecast, "forecast");
    Objects.requireNonNull(budget, "budget");
    Objects.requireNonNull(plan, "plan");
  }
}
