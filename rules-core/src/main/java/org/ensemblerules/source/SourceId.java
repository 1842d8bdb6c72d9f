package org.ensemblerules.source;

import java.util.regex.Pattern;

/**
 * The short name of a source, as rows cite it.
 *
 * @param value lower-case letters and digits in groups joined by hyphens, 1 to 60 characters
 * @since 0.1
 */
public record SourceId(String value) implements Comparable<SourceId> {
  private static final Pattern FORM = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  /**
   * Checks the form.
   *
   * @throws InvalidValueException if the value has another form
   */
  public SourceId {
    InvalidValueException.requireText("SourceId.value", value, 60);
    InvalidValueException.require(
        FORM.matcher(value).matches(), "SourceId.value", value, "groups of a-z and 0-9, hyphens");
  }

  @Override
  public int compareTo(SourceId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
