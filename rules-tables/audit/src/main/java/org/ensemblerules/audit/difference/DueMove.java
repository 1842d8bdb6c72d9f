package org.ensemblerules.audit.difference;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.verdict.TaskDue;

/**
 * A task whose last day in time is another by other rules. Of several rows that ask for the same
 * task, the one that is due first counts.
 *
 * @param task the task; not null
 * @param layer the layer; empty if it is the whole element
 * @param before what is due by the rules now; empty if nothing is
 * @param after what is due by the other rules; empty if nothing is
 * @since 0.1
 */
public record DueMove(
    TaskKey task, Optional<LayerKind> layer, Optional<TaskDue> before, Optional<TaskDue> after) {
  /**
   * Checks that something is due.
   *
   * @throws InvalidValueException if nothing is due by either
   */
  public DueMove {
    Objects.requireNonNull(task, "task");
    Objects.requireNonNull(layer, "layer");
    InvalidValueException.require(
        before.isPresent() || after.isPresent(), "DueMove.after", after, "something due");
  }

  /**
   * Tells whether it is due sooner by the other rules, or only by them.
   *
   * @return true if so; false if it is due later, or no longer
   */
  public boolean sooner() {
    return day(after).isBefore(day(before));
  }

  /**
   * Tells whether it is due by a day by the other rules, and not by the rules now.
   *
   * @param day the day; not null
   * @return true if so
   */
  public boolean newlyDueBy(LocalDate day) {
    return !day(after).isAfter(day) && day(before).isAfter(day);
  }

  boolean moved() {
    return !day(after).equals(day(before));
  }

  /** What is not due stands after every day, what is due and not known since when before it. */
  private static LocalDate day(Optional<TaskDue> due) {
    return due.map(what -> what.by().orElse(LocalDate.MIN)).orElse(LocalDate.MAX);
  }
}
