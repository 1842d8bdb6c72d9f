package org.ensemblerules.source;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * Where a table row comes from.
 *
 * @param key the row's stable name; not null
 * @param origin the edition or overlay that the row was written for; not null
 * @param basis on whose word its value rests; not null
 * @param reviewedThrough the last day for which the row was reviewed; a verdict for a later day
 *     carries a note that the row is stale, and nothing else changes; not null
 * @param note what a reader should know besides; empty if nothing
 * @since 0.1
 */
public record Provenance(
    RowKey key, OriginId origin, Basis basis, LocalDate reviewedThrough, Optional<String> note) {

  /**
   * Checks the note.
   *
   * @throws InvalidValueException if the note is blank or longer than 500 characters
   */
  public Provenance {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(origin, "origin");
    Objects.requireNonNull(basis, "basis");
    Objects.requireNonNull(reviewedThrough, "reviewedThrough");
    note.ifPresent(text -> InvalidValueException.requireText("Provenance.note", text, 500));
  }

  /**
   * Tells whether the row's review has run out.
   *
   * @param asOf the day asked about; not null
   * @return true if {@code asOf} is after the last day of the review
   */
  public boolean isStale(LocalDate asOf) {
    return asOf.isAfter(reviewedThrough);
  }
}
