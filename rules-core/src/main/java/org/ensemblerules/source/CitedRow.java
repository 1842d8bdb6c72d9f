package org.ensemblerules.source;

import java.util.Objects;
import java.util.Optional;

/**
 * A row as an answer cites it: its name, on whose word it stands and what it says in words, without
 * its values, so that the answer can be kept when the tables have moved on.
 *
 * @param provenance where the row comes from; not null
 * @param wording what the row says, in words; empty if its values say it all
 * @param open whether practice is disputed here, so that the department may decide it by an overlay
 * @since 0.1
 */
public record CitedRow(Provenance provenance, Optional<String> wording, boolean open) {
  /** Checks for nulls. */
  public CitedRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(wording, "wording");
  }

  /**
   * Returns the row's stable name.
   *
   * @return the key; never null
   */
  public RowKey key() {
    return provenance.key();
  }
}
