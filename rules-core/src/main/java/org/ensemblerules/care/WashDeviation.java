package org.ensemblerules.care;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.defect.DefectKind;

/**
 * A limit of a wash that was not kept, or not shown to be kept.
 *
 * @param row the row, whose basis says how certain the limit is; not null
 * @param stated whether anything was stated of it; if not, it is not known to have been exceeded
 * @param found what was found, in words; not null
 * @param finding what it makes of the element; empty if the wash only does not count
 */
public record WashDeviation(
    CareLimitRow row, boolean stated, String found, Optional<DefectKind> finding) {
  /** Checks for nulls. */
  public WashDeviation {
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(finding, "finding");
  }

  /**
   * Returns what is allowed.
   *
   * @return the limit in words; never null
   */
  public String allowed() {
    return row.demand().allowed();
  }

  @Override
  public String toString() {
    return row.demand().subject()
        + ": found "
        + found
        + ", allowed: "
        + allowed()
        + " ("
        + row.provenance().basis().text()
        + ")";
  }
}
