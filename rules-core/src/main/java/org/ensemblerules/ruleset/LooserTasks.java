package org.ensemblerules.ruleset;

import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.schedule.DoneBy;
import org.ensemblerules.schedule.Start;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.Timing;

/** Whether a task is asked for less often or later than another row asks for the same. */
final class LooserTasks {
  private final TaskRow row;

  LooserTasks(TaskRow row) {
    this.row = row;
  }

  boolean looserThan(TaskRow under) {
    if (under.element() != row.element()
        || under.use() != row.use()
        || !under.doneBy().equals(row.doneBy())) {
      return false;
    }
    Points exempt =
        Points.none().least(row.exemptInReserve() ? 1 : 0, under.exemptInReserve() ? 1 : 0);
    if (row.timing() instanceof Timing.Every every
        && under.timing() instanceof Timing.Every other) {
      return every.start() == other.start() && points(exempt, every, other).looser();
    }
    if (row.timing() instanceof Timing.After after
        && under.timing() instanceof Timing.After other) {
      // What names no time is due at once.
      return after.trigger() == other.trigger()
          && exempt.least(after.withinDays().orElse(0), other.withinDays().orElse(0)).looser();
    }
    return row.timing() instanceof Timing.ByInterval
        && under.timing() instanceof Timing.ByInterval
        && exempt.looser();
  }

  boolean looserThan(IntervalRow under) {
    return row.doneBy() instanceof DoneBy.Inspected inspected
        && inspected.kind() == under.inspection()
        && under.element() == row.element()
        && under.use() == row.use()
        && row.timing() instanceof Timing.Every every
        && every.start() == Start.IN_SERVICE
        && points(
                Points.none(),
                every,
                new Timing.Every(
                    Start.IN_SERVICE, under.firstMonthsWithCbrnOption(), 1, under.repeatMonths()))
            .looser();
  }

  private static Points points(Points so, Timing.Every every, Timing.Every other) {
    return so.least(every.firstMonths(), other.firstMonths())
        .least(every.withinMonths(), other.withinMonths())
        .most(every.times(), other.times());
  }
}
