package org.ensemblerules.tables.message;

import java.util.Objects;
import org.ensemblerules.gear.Element;
import org.ensemblerules.retirement.RetiredGear;
import org.ensemblerules.source.InvalidValueException;

/**
 * What is asked.
 *
 * @param element the element; not null
 * @param gear what is known of it, of the same kind and use; not null
 * @since 0.1
 */
public record DisposalRequest(Element element, RetiredGear gear) {
  /**
   * Checks that both are of one element.
   *
   * @throws InvalidValueException if kind or use differ
   */
  public DisposalRequest {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(gear, "gear");
    InvalidValueException.require(
        gear.element() == element.kind() && gear.use() == element.use(),
        "DisposalRequest.gear",
        gear.element() + " " + gear.use(),
        element.kind() + " " + element.use());
  }
}
