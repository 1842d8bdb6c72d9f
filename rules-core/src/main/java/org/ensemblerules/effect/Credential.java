package org.ensemblerules.effect;

import java.time.LocalDate;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * What a doer has been trained or verified for, and from when to when.
 *
 * @param scope what for; not null
 * @param from the first day it holds; not null
 * @param through the last day it holds, not before {@code from}; not null
 */
public record Credential(CredentialScope scope, LocalDate from, LocalDate through) {
  /**
   * Checks the order of the days.
   *
   * @throws InvalidValueException if the last day is before the first
   */
  public Credential {
    Objects.requireNonNull(scope, "scope");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(through, "through");
    InvalidValueException.require(
        !through.isBefore(from), "Credential.through", through, "a day not before " + from);
  }

  /**
   * Tells whether the credential holds on a day.
   *
   * @param day the day; not null
   * @return true from its first to its last day
   */
  public boolean holdsOn(LocalDate day) {
    return !day.isBefore(from) && !day.isAfter(through);
  }
}
