package org.ensemblerules.verdict;

import java.util.Objects;
import org.ensemblerules.source.RowKey;

/**
 * Something that whoever reads a verdict must know.
 *
 * @param row the row it comes from, or that it is about; not null
 * @param text the caution; not null
 * @since 0.1
 */
public record Caution(RowKey row, String text) {
  /** Checks for nulls. */
  public Caution {
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(text, "text");
  }
}
