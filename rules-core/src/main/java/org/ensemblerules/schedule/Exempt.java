package org.ensemblerules.schedule;

import java.util.Objects;

/**
 * A task that an element has and that is not due for now, whatever the calendar says.
 *
 * @param row the row that asks for it; not null
 * @param why why not, and until when, in words; not null
 * @since 0.1
 */
public record Exempt(TaskRow row, String why) {
  /** Checks for nulls. */
  public Exempt {
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(why, "why");
  }
}
