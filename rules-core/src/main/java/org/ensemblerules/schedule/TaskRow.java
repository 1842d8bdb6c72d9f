package org.ensemblerules.schedule;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;

/**
 * Says when a task of a kind of element is due, and what discharges it.
 *
 * @param provenance where the row comes from; not null
 * @param task the task; not null
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param doneBy what discharges it; not null
 * @param timing when it is due; not null
 * @param exemptInReserve whether an element that was inspected in reserve and not issued since is
 *     exempt until it is issued; only for inspections in intervals
 */
public record TaskRow(
    Provenance provenance,
    TaskKey task,
    ElementKind element,
    Use use,
    DoneBy doneBy,
    Timing timing,
    boolean exemptInReserve)
    implements Row {
  /**
   * Checks that the parts fit.
   *
   * @throws InvalidValueException if the table of intervals or the reserve is named for what is no
   *     inspection, or the reserve for what is done after each of something
   */
  public TaskRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(task, "task");
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(doneBy, "doneBy");
    Objects.requireNonNull(timing, "timing");
    InvalidValueException.require(
        !(timing instanceof Timing.ByInterval) || doneBy instanceof DoneBy.Inspected,
        "TaskRow.timing",
        timing.text(),
        "an interval of its own for what is no inspection");
    InvalidValueException.require(
        !exemptInReserve
            || (doneBy instanceof DoneBy.Inspected && !(timing instanceof Timing.After)),
        "TaskRow.exemptInReserve",
        exemptInReserve,
        "true only for an inspection in intervals");
  }

  @Override
  public List<String> canonical() {
    return List.of(
        task.value(),
        element.name(),
        use.name(),
        doneBy.text(),
        timing.text(),
        exemptInReserve ? "exempt in reserve" : "");
  }
}
