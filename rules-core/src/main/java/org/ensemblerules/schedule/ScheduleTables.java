package org.ensemblerules.schedule;

import java.util.Objects;
import org.ensemblerules.care.CareRoutes;
import org.ensemblerules.history.EvidenceTables;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.retirement.AgeLimitTable;

/**
 * What a schedule is made by.
 *
 * @param tasks which tasks there are; not null
 * @param intervals how often inspections are due; not null
 * @param ageLimits how old elements and layers may become; not null
 * @param care how what was met is cared for; not null
 * @param evidence by what it is decided what counts; not null
 * @since 0.1
 */
public record ScheduleTables(
    TaskTable tasks,
    IntervalTable intervals,
    AgeLimitTable ageLimits,
    CareRoutes care,
    EvidenceTables evidence) {
  /** Checks for nulls. */
  public ScheduleTables {
    Objects.requireNonNull(tasks, "tasks");
    Objects.requireNonNull(intervals, "intervals");
    Objects.requireNonNull(ageLimits, "ageLimits");
    Objects.requireNonNull(care, "care");
    Objects.requireNonNull(evidence, "evidence");
  }

  /**
   * Returns these with other tasks.
   *
   * @param other which tasks there are; not null
   * @return the changed tables; never null
   */
  public ScheduleTables with(TaskTable other) {
    return new ScheduleTables(other, intervals, ageLimits, care, evidence);
  }
}
