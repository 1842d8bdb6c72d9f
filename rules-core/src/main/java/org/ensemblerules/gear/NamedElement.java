package org.ensemblerules.gear;

import java.util.Objects;

/**
 * Which element something is about, without what is known of it.
 *
 * @param id the owner's name for it; not null
 * @param kind what it is; not null
 * @param use what it is built for; not null
 * @since 0.1
 */
public record NamedElement(ElementId id, ElementKind kind, Use use) {
  /** Checks for nulls. */
  public NamedElement {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(use, "use");
  }

  @Override
  public String toString() {
    return id + " " + kind + " " + use;
  }
}
