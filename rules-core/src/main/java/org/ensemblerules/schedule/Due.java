package org.ensemblerules.schedule;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.source.Row;

/**
 * What falls due next by a row.
 *
 * @param task the task; not null
 * @param row the row that says so; empty if no row covers it, or the record alone calls for it
 * @param layer the layer; empty if it is the whole element
 * @param by the last day on which it is in time; empty if it is due now and not known since when
 * @param reason why, in words; not null
 * @param grade how much the record has of the inspection that it counts from; empty if it counts
 *     from none
 * @param byDateOnly the last day in time if an inspection of which only the date is on record was
 *     made as it must be; it tells what to plan for and counts for nothing; empty if there is none
 * @since 0.1
 */
public record Due(
    TaskKey task,
    Optional<Row> row,
    Optional<LayerKind> layer,
    Optional<LocalDate> by,
    String reason,
    Optional<EvidenceGrade> grade,
    Optional<LocalDate> byDateOnly) {
  static final Comparator<Due> ORDER =
      Comparator.<Due, LocalDate>comparing(due -> due.by.orElse(LocalDate.MIN))
          .thenComparing(Due::task)
          .thenComparing(due -> due.row.map(row -> row.key().value()).orElse(""))
          .thenComparing(due -> due.layer.map(Enum::name).orElse(""))
          .thenComparing(Due::reason);

  /** Checks for nulls. */
  public Due {
    Objects.requireNonNull(task, "task");
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(layer, "layer");
    Objects.requireNonNull(by, "by");
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(grade, "grade");
    Objects.requireNonNull(byDateOnly, "byDateOnly");
  }

  /** Of what counts from no inspection. */
  Due(
      TaskKey task,
      Optional<Row> row,
      Optional<LayerKind> layer,
      Optional<LocalDate> by,
      String reason) {
    this(task, row, layer, by, reason, Optional.empty(), Optional.empty());
  }

  /**
   * Tells whether it is overdue.
   *
   * @param asOf the day asked about; not null
   * @return true after the last day in time, {@code asOf > by}, and if that day is not known
   */
  public boolean isOverdue(LocalDate asOf) {
    return by.map(asOf::isAfter).orElse(true);
  }

  /**
   * Returns by how many days it is overdue.
   *
   * @param asOf the day asked about; not null
   * @return the days after the last day in time, 0 if it is not overdue; empty if not known
   */
  public OptionalLong daysOverdue(LocalDate asOf) {
    return by.map(day -> OptionalLong.of(Math.max(0, ChronoUnit.DAYS.between(day, asOf))))
        .orElseGet(OptionalLong::empty);
  }
}
