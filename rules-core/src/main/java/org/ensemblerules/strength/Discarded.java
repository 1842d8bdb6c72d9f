package org.ensemblerules.strength;

import java.util.Objects;

/**
 * A specimen that did not count, and by which rule.
 *
 * @param specimen the specimen; not null
 * @param row the rule of the method; not null
 * @since 0.1
 */
public record Discarded(Specimen specimen, DiscardRow row) {
  /** Checks for nulls. */
  public Discarded {
    Objects.requireNonNull(specimen, "specimen");
    Objects.requireNonNull(row, "row");
  }
}
