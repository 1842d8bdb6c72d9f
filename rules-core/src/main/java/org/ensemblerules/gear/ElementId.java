package org.ensemblerules.gear;

import org.ensemblerules.source.InvalidValueException;

/**
 * The owner's own name for an element.
 *
 * @param value 1 to 100 characters, not blank; not null
 * @since 0.1
 */
public record ElementId(String value) implements Comparable<ElementId> {
  /**
   * Checks the text.
   *
   * @throws InvalidValueException if the text is blank or too long
   */
  public ElementId {
    InvalidValueException.requireText("ElementId.value", value, 100);
  }

  @Override
  public int compareTo(ElementId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
