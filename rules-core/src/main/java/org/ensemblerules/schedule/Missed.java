package org.ensemblerules.schedule;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.Row;

/**
 * Something that was not done in time.
 *
 * @param task the task; not null
 * @param row the row that asked for it; not null
 * @param by the last day on which it would have been in time; empty if it was called for by
 *     something without a date
 * @param done when it was done after all; empty if not by the day asked about
 * @param reason why it was due, in words; not null
 * @since 0.1
 */
public record Missed(
    TaskKey task, Row row, Optional<LocalDate> by, Optional<LocalDate> done, String reason) {
  static final Comparator<Missed> ORDER =
      Comparator.<Missed, LocalDate>comparing(missed -> missed.by.orElse(LocalDate.MIN))
          .thenComparing(Missed::task)
          .thenComparing(missed -> missed.row.key())
          .thenComparing(Missed::reason);

  /** Checks for nulls. */
  public Missed {
    Objects.requireNonNull(task, "task");
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(by, "by");
    Objects.requireNonNull(done, "done");
    Objects.requireNonNull(reason, "reason");
  }
}
