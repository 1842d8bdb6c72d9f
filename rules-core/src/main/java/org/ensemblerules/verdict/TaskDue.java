package org.ensemblerules.verdict;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.source.CitedRow;

/**
 * What falls due next, or is overdue, as a verdict tells it.
 *
 * @param task the task; not null
 * @param layer the layer it is due for; empty if for the whole element
 * @param by the last day in time; empty if it is due now and nobody can say since when
 * @param why why it is due then, in words; not null
 * @param row the row it rests on; empty where no row says so
 * @param grade how much the record has of the inspection that it counts from; empty if it counts
 *     from none
 * @param byDateOnly the last day in time if an inspection of which only the date is on record was
 *     made as it must be; it tells what to plan for and counts for nothing; empty if there is none
 * @since 0.1
 */
public record TaskDue(
    TaskKey task,
    Optional<LayerKind> layer,
    Optional<LocalDate> by,
    String why,
    Optional<CitedRow> row,
    Optional<EvidenceGrade> grade,
    Optional<LocalDate> byDateOnly) {
  /** Checks for nulls. */
  public TaskDue {
    Objects.requireNonNull(task, "task");
    Objects.requireNonNull(layer, "layer");
    Objects.requireNonNull(by, "by");
    Objects.requireNonNull(why, "why");
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(grade, "grade");
    Objects.requireNonNull(byDateOnly, "byDateOnly");
  }
}
