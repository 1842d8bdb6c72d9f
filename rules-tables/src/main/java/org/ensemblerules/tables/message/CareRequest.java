package org.ensemblerules.tables.message;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.gear.Element;
import org.ensemblerules.source.InvalidValueException;

/**
 * What is asked.
 *
 * @param element the element; not null
 * @param exposures what it met, at least one; not null
 * @since 0.1
 */
public record CareRequest(Element element, Set<Exposure> exposures) {
  /**
   * Copies the set, in the order of the names.
   *
   * @throws InvalidValueException if it is empty
   */
  public CareRequest {
    Objects.requireNonNull(element, "element");
    InvalidValueException.require(
        !exposures.isEmpty(), "CareRequest.exposures", exposures, "at least one");
    exposures = Collections.unmodifiableSet(EnumSet.copyOf(exposures));
  }
}
