package org.ensemblerules.effect;

import java.time.LocalDate;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * The word of an organization for a credential of its own people: nothing on record shows the
 * training, and somebody who speaks for the organization states it. It is taken as said, and every
 * verdict that rests on it says so.
 *
 * @param by who states it, by name and office, 1 to 200 characters; not null
 * @param on on which day; not null
 * @since 0.1
 */
public record Vouched(String by, LocalDate on) {
  /**
   * Checks the name and the day.
   *
   * @throws InvalidValueException if the name is blank or too long, or the year is not in 1900 to
   *     2200
   */
  public Vouched {
    InvalidValueException.requireText("Vouched.by", by, 200);
    Objects.requireNonNull(on, "on");
    Credential.requireYear("Vouched.on", on);
  }

  @Override
  public String toString() {
    return by + ", " + on;
  }
}
