package org.ensemblerules.history;

import java.util.Objects;
import java.util.Optional;

/**
 * A return from others' hands after which an element was not inspected as it must be.
 *
 * @param back the transfer with which it came; not null
 * @param row what is asked of it; empty if no rule covers it
 * @since 0.1
 */
public record UnseenReturn(UseEvent.Moved back, Optional<ReturnRow> row) {
  /** Checks for nulls. */
  public UnseenReturn {
    Objects.requireNonNull(back, "back");
    Objects.requireNonNull(row, "row");
  }
}
