package org.ensemblerules.repair;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Site;

/**
 * What becomes of one finding at one place, or of a liner that was opened.
 *
 * @param finding what was found; empty for a liner sewn shut after its inspection
 * @param site where; not null
 * @param level what becomes of it; not null
 * @param demand what the table of defects says; empty for a liner sewn shut
 * @param limits the limits that hold here; not null
 * @param because why it is stricter than its own rows say; empty if it is not
 * @param decidedBy the check that decides first; given exactly for {@link RepairLevel#DECIDE_FIRST}
 * @param task the task that must be permitted; empty if there is nothing to do
 * @param by who may do it; not null
 * @param before the checks that must be passed before; not null
 * @param afterward the checks that must be passed after; not null
 * @param may whether the one who is to do it may; not null
 * @since 0.1
 */
public record RepairOrder(
    Optional<Finding> finding,
    Site site,
    RepairLevel level,
    Optional<Demand> demand,
    List<RepairLimitRow> limits,
    Optional<String> because,
    Optional<Check> decidedBy,
    Optional<Task> task,
    List<PermissionRow> by,
    List<FollowUp> before,
    List<FollowUp> afterward,
    MayDo may) {
  /** Checks for nulls and copies the lists. */
  public RepairOrder {
    Objects.requireNonNull(finding, "finding");
    Objects.requireNonNull(site, "site");
    Objects.requireNonNull(level, "level");
    Objects.requireNonNull(demand, "demand");
    limits = List.copyOf(limits);
    Objects.requireNonNull(because, "because");
    Objects.requireNonNull(decidedBy, "decidedBy");
    Objects.requireNonNull(task, "task");
    by = List.copyOf(by);
    before = List.copyOf(before);
    afterward = List.copyOf(afterward);
    Objects.requireNonNull(may, "may");
  }

  /**
   * Returns the order on one line.
   *
   * @return the text; never null
   */
  public String text() {
    String what = finding.map(Finding::text).orElse("liner opened for its inspection at " + site);
    return what
        + ": "
        + switch (level) {
          case ACCEPTABLE -> "acceptable; nothing is repaired";
          case CLEAN_FIRST -> "cleaned first, then looked at again";
          case BASIC_REPAIR -> "basic repair";
          case BASIC_REPLACEMENT -> "the part replaced as a basic repair";
          case ADVANCED_REPAIR -> "advanced repair";
          case ADVANCED_REPLACEMENT -> "the part replaced as an advanced repair";
          case DECIDE_FIRST ->
              "not repaired before it is decided by "
                  + decidedBy.map(Check::name).orElse("an expert");
          case NOT_REPAIRABLE -> "not repaired";
        }
        + because.map(why -> "; " + why).orElse("");
  }
}
