package org.ensemblerules.tables.message;

import java.util.Objects;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.issue.Whereabouts;

/**
 * Where an element is.
 *
 * @param element the name of the element; not null
 * @param where who has it and where it is; not null
 * @since 0.1
 */
public record KeptGear(ElementId element, Whereabouts where) {
  /** Checks for nulls. */
  public KeptGear {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(where, "where");
  }
}
