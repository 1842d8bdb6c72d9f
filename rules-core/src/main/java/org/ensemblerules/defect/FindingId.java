package org.ensemblerules.defect;

import org.ensemblerules.source.InvalidValueException;

/**
 * The owner's own name for a finding, unique within an element's file. Repairs and checks name the
 * findings they answer by it.
 *
 * @param value 1 to 100 characters, not blank; not null
 */
public record FindingId(String value) implements Comparable<FindingId> {
  /**
   * Checks the text.
   *
   * @throws InvalidValueException if the text is blank or too long
   */
  public FindingId {
    InvalidValueException.requireText("FindingId.value", value, 100);
  }

  @Override
  public int compareTo(FindingId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
