package org.ensemblerules.issue;

import java.util.Objects;

/**
 * Something that speaks against issuing an element, or against accepting it from a delivery.
 *
 * @param kind what; not null
 * @param text what was found and what is needed, with codes as they are; {@code
 *     org.ensemblerules.words.Sentences} says it in words; not null
 * @since 0.1
 */
public record Objection(ObjectionKind kind, String text) {
  /** Checks for nulls. */
  public Objection {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(text, "text");
  }
}
