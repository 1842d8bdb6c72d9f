package org.ensemblerules.ruleset;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.stream.Stream;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.history.ReturnRow;
import org.ensemblerules.inspection.GradeRow;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.UsedGearRow;

/**
 * The rows that an overlay adds.
 *
 * @param intervals how long elements may stay without an inspection; not null
 * @param returns how elements are inspected once they are back from others' hands; not null
 * @param tasks which tasks are due when; not null
 * @param defects what defects call for, which may be that gear is retired; not null
 * @param ageLimits how old elements may become; not null
 * @param forbidden who may not do what; not null
 * @param usedGear what used gear must hold when tested; not null
 * @param retention how long files are kept; not null
 * @param grades how much a record must have of inspections; not null
 * @param careLimits within what washes must stay; not null
 * @param modelCareLimits within what washes of one model must stay; not null
 * @since 0.1
 */
public record OverlayRows(
    List<IntervalRow> intervals,
    List<ReturnRow> returns,
    List<TaskRow> tasks,
    List<DefectRow> defects,
    List<AgeLimitRow> ageLimits,
    List<ForbidRow> forbidden,
    List<UsedGearRow> usedGear,
    List<RetentionRow> retention,
    List<GradeRow> grades,
    List<CareLimitRow> careLimits,
    List<ModelCareLimitRow> modelCareLimits) {
  /** Copies the lists. */
  public OverlayRows {
    intervals = ImmutableList.copyOf(intervals);
    returns = ImmutableList.copyOf(returns);
    tasks = ImmutableList.copyOf(tasks);
    defects = ImmutableList.copyOf(defects);
    ageLimits = ImmutableList.copyOf(ageLimits);
    forbidden = ImmutableList.copyOf(forbidden);
    usedGear = ImmutableList.copyOf(usedGear);
    retention = ImmutableList.copyOf(retention);
    grades = ImmutableList.copyOf(grades);
    careLimits = ImmutableList.copyOf(careLimits);
    modelCareLimits = ImmutableList.copyOf(modelCareLimits);
  }

  /**
   * Sorts rows by what they are.
   *
   * @param rows rows of the kinds that an overlay may add; not null
   * @return the rows; never null
   * @throws InvalidValueException if a row is of another kind
   */
  public static OverlayRows of(List<? extends Row> rows) {
    OverlayRows sorted =
        new OverlayRows(
            only(IntervalRow.class, rows),
            only(ReturnRow.class, rows),
            only(TaskRow.class, rows),
            only(DefectRow.class, rows),
            only(AgeLimitRow.class, rows),
            only(ForbidRow.class, rows),
            only(UsedGearRow.class, rows),
            only(RetentionRow.class, rows),
            only(GradeRow.class, rows),
            only(CareLimitRow.class, rows),
            only(ModelCareLimitRow.class, rows));
    InvalidValueException.require(
        sorted.all().size() == rows.size(),
        "OverlayRows.rows",
        rows.size() - sorted.all().size() + " rows of other kinds",
        "rows of intervals, returns, tasks, defects, age limits, who is forbidden what, used gear,"
            + " retention, evidence of inspections and limits of washes");
    return sorted;
  }

  private static <R extends Row> List<R> only(Class<R> kind, List<? extends Row> rows) {
    return rows.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /**
   * Returns all rows.
   *
   * @return the rows, kind by kind; never null
   */
  public List<Row> all() {
    return Stream.<List<? extends Row>>of(
            intervals,
            returns,
            tasks,
            defects,
            ageLimits,
            forbidden,
            usedGear,
            retention,
            grades,
            careLimits,
            modelCareLimits)
        .flatMap(List::stream)
        .collect(ImmutableList.toImmutableList());
  }
}
