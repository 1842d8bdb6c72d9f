package org.ensemblerules.strength;

import java.util.regex.Pattern;
import org.ensemblerules.source.InvalidValueException;

/**
 * The name of a test method, as rows and reports give it.
 *
 * @param value upper-case letters and digits in groups joined by underscores, as in {@code
 *     ASTM_D5587}; 1 to 60 characters
 * @since 0.1
 */
public record TestMethod(String value) implements Comparable<TestMethod> {
  private static final Pattern FORM = Pattern.compile("[A-Z0-9]+(_[A-Z0-9]+)*");

  /**
   * Checks the form.
   *
   * @throws InvalidValueException if the value has another form
   */
  public TestMethod {
    InvalidValueException.requireText("TestMethod.value", value, 60);
    InvalidValueException.require(
        FORM.matcher(value).matches(),
        "TestMethod.value",
        value,
        "groups of A-Z and 0-9, underscores");
  }

  @Override
  public int compareTo(TestMethod other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
