package org.ensemblerules.audit;

import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.record.RecordItemRow;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.retirement.DisposalRouteRow;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.source.Row;

/** Whether a row asks for at least as much as another one that speaks of the same. */
final class Strictness {
  private Strictness() {}

  /** How a row changed that speaks of the same as before, and says something else. */
  static ChangeKind compare(Row before, Row after) {
    boolean more = atLeast(after, before);
    boolean less = atLeast(before, after);
    if (more == less) {
      return ChangeKind.CHANGED;
    }
    return more ? ChangeKind.TIGHTENED : ChangeKind.LOOSENED;
  }

  private static boolean atLeast(Row one, Row other) {
    if (one instanceof DefectRow a && other instanceof DefectRow b) {
      return a.effect().isAtLeastAsStrictAs(b.effect())
          && a.handling().containsAll(b.handling())
          && a.afterwards().containsAll(b.afterwards());
    } else if (one instanceof IntervalRow a && other instanceof IntervalRow b) {
      return a.firstMonths() <= b.firstMonths()
          && a.firstMonthsWithCbrnOption() <= b.firstMonthsWithCbrnOption()
          && a.repeatMonths() <= b.repeatMonths();
    } else if (one instanceof AgeLimitRow a && other instanceof AgeLimitRow b) {
      return rank(a.limit()) <= rank(b.limit());
    } else if (one instanceof PermissionRow a && other instanceof PermissionRow b) {
      return a.needs().equals(b.needs()) || b.needs().isEmpty();
    } else if (one instanceof TaskRow a && other instanceof TaskRow b) {
      return atLeast(a.timing(), b.timing()) && (!a.exemptInReserve() || b.exemptInReserve());
    } else if (one instanceof CriterionRow a && other instanceof CriterionRow b) {
      return covers(a.kinds(), b.kinds())
          && covers(a.lookFor(), b.lookFor())
          && covers(a.atHand(), b.atHand())
          && covers(a.check(), b.check());
    } else if (one instanceof RecordItemRow a && other instanceof RecordItemRow b) {
      return covers(a.details(), b.details());
    } else if (one instanceof DisposalRouteRow a && other instanceof DisposalRouteRow b) {
      return covers(a.conditions(), b.conditions());
    } else if (one instanceof RepairLimitRow a && other instanceof RepairLimitRow b) {
      return a.least().isAtLeast(b.least())
          && covers(a.before(), b.before())
          && covers(a.afterwards(), b.afterwards());
    }
    return one instanceof CareRouteRow a
        && other instanceof CareRouteRow b
        && a.steps().containsAll(b.steps())
        && covers(a.handling(), b.handling());
  }

  private static boolean covers(Set<?> one, Set<?> other) {
    return one.containsAll(other);
  }

  /** An unseen limit keeps everything out; none set keeps nothing out. */
  private static int rank(AgeLimit limit) {
    if (limit instanceof AgeLimit.Years years) {
      return years.years();
    }
    return limit instanceof AgeLimit.NotSeen ? 0 : Integer.MAX_VALUE;
  }

  private static boolean atLeast(Timing one, Timing other) {
    if (one instanceof Timing.Every a && other instanceof Timing.Every b) {
      return a.start() == b.start()
          && a.firstMonths() <= b.firstMonths()
          && a.times() >= b.times()
          && a.withinMonths() <= b.withinMonths();
    }
    if (one instanceof Timing.After a && other instanceof Timing.After b) {
      return a.trigger() == b.trigger() && days(a.withinDays()) <= days(b.withinDays());
    }
    return one.equals(other);
  }

  /** What names no time is due at once. */
  private static int days(Optional<Integer> within) {
    return within.orElse(0);
  }
}
