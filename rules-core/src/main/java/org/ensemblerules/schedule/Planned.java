package org.ensemblerules.schedule;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;
import org.ensemblerules.source.Row;

/**
 * What comes due on a day of the future, if all before it is done on its last day in time.
 *
 * @param on the last day on which it is in time; not null
 * @param task the task; not null
 * @param row the row that says so; not null
 * @param reason why, in words; not null
 * @since 0.1
 */
public record Planned(LocalDate on, TaskKey task, Row row, String reason) {
  static final Comparator<Planned> ORDER =
      Comparator.comparing(Planned::on)
          .thenComparing(Planned::task)
          .thenComparing(planned -> planned.row.key())
          .thenComparing(Planned::reason);

  /** Checks for nulls. */
  public Planned {
    Objects.requireNonNull(on, "on");
    Objects.requireNonNull(task, "task");
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(reason, "reason");
  }
}
