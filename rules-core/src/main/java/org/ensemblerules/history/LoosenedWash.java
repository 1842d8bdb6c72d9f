package org.ensemblerules.history;

import java.util.Objects;
import org.ensemblerules.care.Loosened;

/**
 * A wash that keeps a limit only because a manufacturer's instructions put it in place of a
 * stricter one.
 *
 * @param done the wash; not null
 * @param limit the limit kept and the one replaced; not null
 * @since 0.1
 */
public record LoosenedWash(WorkEvent.Cleaned done, Loosened limit) {
  /** Checks for nulls. */
  public LoosenedWash {
    Objects.requireNonNull(done, "done");
    Objects.requireNonNull(limit, "limit");
  }

  /**
   * Returns what was found, what it would otherwise have departed from, and who loosened it.
   *
   * @return the text; never null
   */
  public String text() {
    return "cleaned "
        + done.kind()
        + " on "
        + done.when()
        + ", "
        + limit.spared().map(spared -> spared + "; ").orElse("")
        + limit.text();
  }
}
