package org.ensemblerules.record;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * Through when a file is kept by one row.
 *
 * @param row the row; not null
 * @param through the last day on which the file is kept; empty if it is kept for now, because the
 *     element was not retired or disposed of or nobody knows when
 * @since 0.1
 */
public record RetentionSpan(RetentionRow row, Optional<LocalDate> through) {
  /** Checks for nulls. */
  public RetentionSpan {
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(through, "through");
  }
}
