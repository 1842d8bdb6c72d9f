package org.ensemblerules.defect;

import org.ensemblerules.source.InvalidValueException;

/**
 * The name of a finding, unique within an element's file: the owner's own, or one that says what
 * shows the finding. Repairs and checks name the findings they answer by it.
 *
 * @param value 1 to 100 characters, not blank; not null
 * @since 0.1
 */
public record FindingId(String value) implements Comparable<FindingId> {
  /** How the names of what labels show to be wrong begin; the owner's own begin otherwise. */
  public static final String OF_LABELS = "label:";

  /** How the names of checks and tests that failed begin; the owner's own begin otherwise. */
  public static final String OF_FAILURES = "failed:";

  /**
   * Checks the text.
   *
   * @throws InvalidValueException if the text is blank or too long
   */
  public FindingId {
    InvalidValueException.requireText("FindingId.value", value, 100);
  }

  /**
   * Tells whether this is a name that an owner may give.
   *
   * @return false for names that begin as those of what labels show do, or of what failed
   */
  public boolean isOwners() {
    return !value.startsWith(OF_LABELS) && !value.startsWith(OF_FAILURES);
  }

  /**
   * Checks that an owner may give a finding this name.
   *
   * @return this name
   * @throws InvalidValueException if it begins as the names of what labels show do
   */
  public FindingId requireOwners() {
    InvalidValueException.require(
        isOwners(),
        "FindingId.value",
        value,
        "a name that does not begin with "
            + OF_LABELS
            + " or "
            + OF_FAILURES
            + ", as those do of what labels show and of what failed");
    return this;
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
