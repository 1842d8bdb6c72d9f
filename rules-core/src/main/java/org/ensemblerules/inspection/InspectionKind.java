package org.ensemblerules.inspection;

import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Task;

/**
 * The kinds of inspection.
 *
 * @since 0.1
 */
public enum InspectionKind {
  /** Look-over by the wearer. */
  ROUTINE(Task.ROUTINE_INSPECTION, Check.ROUTINE_INSPECTION),
  /** Documented inspection of the element, each separable layer on its own. */
  ADVANCED(Task.ADVANCED_INSPECTION, Check.ADVANCED_INSPECTION),
  /** Complete liner inspection: the liner opened, its hidden faces looked at. */
  COMPLETE_LINER(Task.LINER_INSPECTION, Check.LINER_INSPECTION);

  private final Task task;
  private final Check check;

  InspectionKind(Task task, Check check) {
    this.task = task;
    this.check = check;
  }

  /**
   * Returns the task that its doer must be permitted to do.
   *
   * @return the task; never null
   */
  public Task task() {
    return task;
  }

  /**
   * Returns the check that such an inspection is.
   *
   * @return the check; never null
   */
  public Check check() {
    return check;
  }
}
