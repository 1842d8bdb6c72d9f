package org.ensemblerules.tables.message;

import java.util.Objects;
import org.ensemblerules.gear.Element;
import org.ensemblerules.retirement.CustodyRecord;

/**
 * What is asked.
 *
 * @param element the element; not null
 * @param custody what was recorded of it; not null
 * @since 0.1
 */
public record CustodyRequest(Element element, CustodyRecord custody) {
  /** Checks for nulls. */
  public CustodyRequest {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(custody, "custody");
  }
}
