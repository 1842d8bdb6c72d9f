package org.ensemblerules.tables.message;

import java.util.Objects;
import org.ensemblerules.fleet.Clearing;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.issue.Whereabouts;

/**
 * What a person may do today about an element that is out.
 *
 * @param element the element; not null
 * @param whereabouts who has it and where it is; not null
 * @param clearing what they may do; not null
 * @since 0.1
 */
public record ClearedElement(NamedElement element, Whereabouts whereabouts, Clearing clearing) {
  /** Checks for nulls. */
  public ClearedElement {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(whereabouts, "whereabouts");
    Objects.requireNonNull(clearing, "clearing");
  }
}
