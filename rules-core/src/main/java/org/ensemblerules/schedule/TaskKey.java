package org.ensemblerules.schedule;

import java.util.regex.Pattern;
import org.ensemblerules.source.InvalidValueException;

/**
 * The name of a task. Rows of the same task in different tables stand beside each other; the
 * earliest of their due days counts.
 *
 * @param value groups of a-z and 0-9 with hyphens between, at most 80 characters
 * @since 0.1
 */
public record TaskKey(String value) implements Comparable<TaskKey> {
  /** To leave service for age. */
  public static final TaskKey LEAVE_SERVICE = new TaskKey("leave-service");

  /** To be checked after a repair or a cleaning that a finding called for. */
  public static final TaskKey CHECK_AFTERWARD = new TaskKey("check-afterward");

  private static final int LONGEST = 80;

  /**
   * Checks the form.
   *
   * @throws InvalidValueException if the value has another form
   */
  public TaskKey {
    InvalidValueException.requireText("TaskKey.value", value, LONGEST);
    InvalidValueException.require(
        Pattern.matches("[a-z0-9]+(-[a-z0-9]+)*", value),
        "TaskKey.value",
        value,
        "groups of a-z and 0-9, hyphens");
  }

  @Override
  public int compareTo(TaskKey other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
