package org.ensemblerules.schedule;

import java.util.Objects;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.history.OpenFindings;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.retirement.AgeLimitTable;

/**
 * What a schedule is made by.
 *
 * @param tasks which tasks there are; not null
 * @param intervals how often inspections are due; not null
 * @param ageLimits how old elements and layers may become; not null
 * @param criteria what inspections must look at to count; not null
 * @param checks what checks are; not null
 * @param permissions who may do what; not null
 * @param cleanings which cleanings count; not null
 * @param findings what closes findings; not null
 */
public record ScheduleTables(
    TaskTable tasks,
    IntervalTable intervals,
    AgeLimitTable ageLimits,
    CriteriaTable criteria,
    CheckTable checks,
    PermissionTable permissions,
    Cleanings cleanings,
    OpenFindings findings) {
  /** Checks for nulls. */
  public ScheduleTables {
    Objects.requireNonNull(tasks, "tasks");
    Objects.requireNonNull(intervals, "intervals");
    Objects.requireNonNull(ageLimits, "ageLimits");
    Objects.requireNonNull(criteria, "criteria");
    Objects.requireNonNull(checks, "checks");
    Objects.requireNonNull(permissions, "permissions");
    Objects.requireNonNull(cleanings, "cleanings");
    Objects.requireNonNull(findings, "findings");
  }

  /**
   * Returns these with other tasks.
   *
   * @param other which tasks there are; not null
   * @return the changed tables; never null
   */
  public ScheduleTables with(TaskTable other) {
    return new ScheduleTables(
        other, intervals, ageLimits, criteria, checks, permissions, cleanings, findings);
  }
}
