package org.ensemblerules.source;

import java.util.regex.Pattern;

/**
 * The name of an edition of a standard, or of another body of rules that tables come from.
 *
 * @param value upper-case letters and digits in groups joined by underscores, as in {@code
 *     NFPA_1851_2020}; 1 to 60 characters
 * @since 0.1
 */
public record OriginId(String value) implements Comparable<OriginId> {
  private static final Pattern FORM = Pattern.compile("[A-Z0-9]+(_[A-Z0-9]+)*");

  /**
   * Checks the form.
   *
   * @throws InvalidValueException if the value has another form
   */
  public OriginId {
    InvalidValueException.requireText("OriginId.value", value, 60);
    InvalidValueException.require(
        FORM.matcher(value).matches(),
        "OriginId.value",
        value,
        "groups of A-Z and 0-9, underscores");
  }

  @Override
  public int compareTo(OriginId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
