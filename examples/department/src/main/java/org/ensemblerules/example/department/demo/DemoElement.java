package org.ensemblerules.example.department.demo;

import java.util.Objects;
import org.ensemblerules.verdict.Assessment;

/**
 * A piece of the department's gear and what makes it worth showing.
 *
 * @param story what happened to it, in a sentence; not null
 * @param assessment the piece, its history and its last inspection; not null
 */
public record DemoElement(String story, Assessment assessment) {
  /** Checks for nulls. */
  public DemoElement {
    Objects.requireNonNull(story, "story");
    Objects.requireNonNull(assessment, "assessment");
  }
}
