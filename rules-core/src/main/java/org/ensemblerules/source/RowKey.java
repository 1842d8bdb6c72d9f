package org.ensemblerules.source;

import java.util.regex.Pattern;

/**
 * The stable name of a table row. A key once published keeps its meaning.
 *
 * @param value letters, digits and {@code - _ / @ .}, 1 to 200 characters
 */
public record RowKey(String value) implements Comparable<RowKey> {
  private static final Pattern FORM = Pattern.compile("[A-Za-z0-9_@/.-]+");

  /**
   * Checks the form.
   *
   * @throws InvalidValueException if the value has another form
   */
  public RowKey {
    InvalidValueException.requireText("RowKey.value", value, 200);
    InvalidValueException.require(
        FORM.matcher(value).matches(), "RowKey.value", value, "letters, digits and - _ / @ .");
  }

  @Override
  public int compareTo(RowKey other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
