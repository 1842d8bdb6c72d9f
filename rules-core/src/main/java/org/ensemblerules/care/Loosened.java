package org.ensemblerules.care;

import java.util.Objects;
import java.util.Optional;

/**
 * A limit of a manufacturer's instructions for one model that a wash was held to in place of a
 * stricter one.
 *
 * @param by the row that it was held to; not null
 * @param replaced the stricter row; not null
 * @param spared how the wash departs from the stricter row, if the looser one is kept; empty if the
 *     answer would have been the same
 * @since 0.1
 */
public record Loosened(
    ModelCareLimitRow by, CareLimitRow replaced, Optional<WashDeviation> spared) {
  /** Checks for nulls. */
  public Loosened {
    Objects.requireNonNull(by, "by");
    Objects.requireNonNull(replaced, "replaced");
    Objects.requireNonNull(spared, "spared");
  }

  /**
   * Returns what was loosened, and by whom, with both rows.
   *
   * @return the text; never null
   */
  public String text() {
    return "loosened by "
        + by.provenance().origin()
        + ": "
        + by.limit().demand().subject()
        + " "
        + by.limit().demand().allowed()
        + " by its row "
        + by.key()
        + " in place of "
        + replaced.demand().allowed()
        + " by row "
        + replaced.key()
        + " of "
        + replaced.provenance().origin();
  }
}
