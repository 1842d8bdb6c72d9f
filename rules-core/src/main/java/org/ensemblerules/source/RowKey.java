package org.ensemblerules.source;

/**
 * The stable name of a table row. A key once published keeps its meaning.
 *
 * @param value letters, digits and {@code - _ / @ .}, 1 to 200 characters
 * @since 0.1
 */
public record RowKey(String value) implements Comparable<RowKey> {
  /**
   * Checks the form.
   *
   * @throws InvalidValueException if the value has another form
   */
  public RowKey {
    InvalidValueException.requireText("RowKey.value", value, 200);
    InvalidValueException.require(
        isAllowed(value), "RowKey.value", value, "letters, digits and - _ / @ .");
  }

  // Every row of every table has a key, so no pattern is matched for it.
  private static boolean isAllowed(String value) {
    for (int i = 0; i < value.length(); i++) {
      if (!isAllowed(value.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isAllowed(char each) {
    return (each >= 'a' && each <= 'z')
        || (each >= 'A' && each <= 'Z')
        || (each >= '0' && each <= '9')
        || "-_/@.".indexOf(each) >= 0;
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
