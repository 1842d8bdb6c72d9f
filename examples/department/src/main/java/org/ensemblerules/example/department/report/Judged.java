package org.ensemblerules.example.department.report;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.verdict.Verdict;

/**
 * A verdict and, where there is one, the story behind it.
 *
 * @param story what happened to the element, in a sentence without its full stop; empty if nobody
 *     tells
 * @param verdict the verdict; not null
 */
public record Judged(Optional<String> story, Verdict verdict) {
  /** Checks for nulls. */
  public Judged {
    Objects.requireNonNull(story, "story");
    Objects.requireNonNull(verdict, "verdict");
  }
}
