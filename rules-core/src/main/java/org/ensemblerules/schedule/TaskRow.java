package org.ensemblerules.schedule;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

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
 * @since 0.1
 */
public record TaskRow(
    Provenance provenance,
    TaskKey task,
    ElementKind element,
    Use use,
    Discharge doneBy,
    Timing timing,
    boolean exemptInReserve)
    implements ComparableRow<TaskRow> {
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
        !(timing instanceof Timing.ByInterval) || doneBy instanceof Discharge.Inspected,
        "TaskRow.timing",
        timing.text(),
        "an interval of its own for what is no inspection");
    InvalidValueException.require(
        !exemptInReserve
            || (doneBy instanceof Discharge.Inspected && !(timing instanceof Timing.After)),
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

  @Override
  public List<String> topic() {
    return List.of(task.value(), element.name(), use.name());
  }

  /** What is due in intervals and what follows a trigger are two duties of one name. */
  @Override
  public List<String> narrowedTo() {
    return List.of(timing instanceof Timing.After after ? after.trigger().toString() : "");
  }

  /**
   * The name of a task tells nothing of how strict it is: what is done, how often and when does.
   */
  @Override
  public ComparedFields compareFields(TaskRow other) {
    return ComparedFields.on(
            element == other.element && use == other.use && doneBy.equals(other.doneBy))
        .with("timing", timing.compareStrictness(other.timing))
        .with("exemptInReserve", Comparison.lessIsStricter(exemptInReserve, other.exemptInReserve));
  }

  /**
   * Compares a task with an interval: one is kept as a task due once in each, counted from the
   * first day in service, for gear with the CBRN option and for gear without. The wearer's look is
   * no task in intervals.
   *
   * @param interval the interval; not null
   * @return how strict this task is, set against the interval; never null
   */
  public Comparison compareStrictness(IntervalRow interval) {
    if (!doneBy.equals(new Discharge.Inspected(interval.inspection()))
        || interval.inspection() == InspectionKind.ROUTINE
        || element != interval.element()
        || use != interval.use()) {
      return Comparison.UNDECIDED;
    }
    Comparison strictness = exemptInReserve ? Comparison.MILDER : Comparison.SAME;
    for (int first : List.of(interval.firstMonths(), interval.firstMonthsWithCbrnOption())) {
      strictness =
          strictness.and(
              timing.compareStrictness(
                  new Timing.Every(Start.IN_SERVICE, first, 1, interval.repeatMonths())));
    }
    return strictness;
  }

  @Override
  public Comparison asOneMore() {
    return Comparison.STRICTER;
  }
}
