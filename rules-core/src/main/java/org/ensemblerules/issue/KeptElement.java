package org.ensemblerules.issue;

import java.util.Objects;
import org.ensemblerules.verdict.Assessment;

/**
 * An element with what is known of it, and where it is kept.
 *
 * @param assessment the element, its history and what was found now; not null
 * @param whereabouts who has it and where it is; not null
 * @since 0.1
 */
public record KeptElement(Assessment assessment, Whereabouts whereabouts) {
  /** Checks for nulls. */
  public KeptElement {
    Objects.requireNonNull(assessment, "assessment");
    Objects.requireNonNull(whereabouts, "whereabouts");
  }
}
