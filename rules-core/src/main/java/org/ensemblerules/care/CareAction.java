package org.ensemblerules.care;

import java.util.Optional;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Task;
import org.jspecify.annotations.Nullable;

/**
 * What a care route can ask for, in the order in which it is done; what waits for the finding out
 * comes after it.
 *
 * @since 0.1
 */
public enum CareAction {
  /** Exposure reduction of the gear at the scene; not yet clean. */
  EXPOSURE_REDUCTION(
      "reduce the exposure at the scene", Task.of(CleaningKind.EXPOSURE_REDUCTION), null),
  /** Bagged or otherwise kept apart from people and other gear; whoever handles it does so. */
  ISOLATE("isolate it, and keep it so until the route is done", null, null),
  /** Kept by a named custodian, whom those name who may release it. */
  CUSTODY("hand it to a named custodian", Task.INCIDENT_RELEASE, null),
  /** An expert finds out what it met and whether it can be cleaned of that. */
  FIND_OUT("find out what it met and whether it can be cleaned", null, Check.EXPERT_EVALUATION),
  /** The drag rescue device taken out of its coat. */
  TAKE_OUT_DRAG_RESCUE_DEVICE("take the drag rescue device out", Task.ADVANCED_CLEANING, null),
  /** Shell and liners taken apart. */
  TAKE_LAYERS_APART("take shell and liners apart", Task.ADVANCED_CLEANING, null),
  /** Specialized cleaning of hazardous contamination. */
  SPECIALIZED_CLEANING("specialized cleaning", Task.of(CleaningKind.SPECIALIZED), null),
  /** Shown to be free of what it met, before it meets a machine that other gear goes into. */
  SHOW_FREE("show it free of the contaminant", null, Check.CONTAMINATION_CLEARANCE),
  /** Sanitizing of soft goods. */
  SANITIZE("sanitize what is soft", Task.of(CleaningKind.SANITIZING), null),
  /** Disinfecting of hard surfaces. */
  DISINFECT("disinfect what is hard", Task.of(CleaningKind.SANITIZING), null),
  /** Advanced cleaning, within the limits of a wash. */
  ADVANCED_CLEANING("advanced cleaning", Task.of(CleaningKind.ADVANCED), null),
  /** Looked at whether soil or contamination is still seen. */
  SHOW_CLEAN("show it clean", null, Check.CLEANLINESS),
  /** The drag rescue device laid again, and the way it lies looked at. */
  LAY_DRAG_RESCUE_DEVICE(
      "put the drag rescue device back as its instructions show", null, Check.DRAG_RESCUE_ROUTING),
  /** Taken out of service for good. */
  NO_RETURN("retire it; it does not go back into service", Task.RETIREMENT, null);

  private final String text;
  private final Optional<Task> task;
  private final Optional<Check> check;

  CareAction(String text, @Nullable Task task, @Nullable Check check) {
    this.text = text;
    this.task = Optional.ofNullable(task);
    this.check = Optional.ofNullable(check);
  }

  /**
   * Returns what to do, in words.
   *
   * @return the text; never null
   */
  public String text() {
    return text;
  }

  /**
   * Returns the task that its doer must be permitted to do.
   *
   * @return the task; empty for what whoever handles the gear does, and for a check, whose task the
   *     table of checks names
   */
  public Optional<Task> task() {
    return task;
  }

  /**
   * Returns the check that it is.
   *
   * @return the check; empty if it is none
   */
  public Optional<Check> check() {
    return check;
  }

  /**
   * Tells whether it cleans, so that a row must say in what manner.
   *
   * @return true for the kinds of cleaning but exposure reduction
   */
  public boolean cleans() {
    return switch (this) {
      case SPECIALIZED_CLEANING, SANITIZE, DISINFECT, ADVANCED_CLEANING -> true;
      default -> false;
    };
  }

  /**
   * Tells whether it wets the gear or leads it back to service, so that it waits for an evaluation
   * where gear must not be washed, and is not done at all where gear does not return.
   *
   * @return true for all but isolation, custody, finding out and retirement
   */
  public boolean leadsBack() {
    return switch (this) {
      case ISOLATE, CUSTODY, FIND_OUT, NO_RETURN -> false;
      default -> true;
    };
  }
}
