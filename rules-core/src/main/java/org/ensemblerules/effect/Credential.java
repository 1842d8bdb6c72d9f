package org.ensemblerules.effect;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.source.InvalidValueException;

/**
 * What a doer has been trained or verified for, and from when to when.
 *
 * @param scope what for; not null
 * @param from the first day it holds, in the years 1900 to 2200; not null
 * @param through the last day it holds, not before {@code from}, in the years 1900 to 2200; not
 *     null
 * @param vouched whose word it rests on, where the organization vouches for its own people; empty
 *     if it is on record itself
 * @since 0.1
 */
public record Credential(
    CredentialScope scope, LocalDate from, LocalDate through, Optional<Vouched> vouched) {
  /**
   * Checks the days.
   *
   * @throws InvalidValueException if a year is out of range or the last day is before the first
   */
  public Credential {
    Objects.requireNonNull(scope, "scope");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(through, "through");
    Objects.requireNonNull(vouched, "vouched");
    requireYear("Credential.from", from);
    requireYear("Credential.through", through);
    if (through.isBefore(from)) {
      throw new InvalidValueException("Credential.through", through, "a day not before " + from);
    }
  }

  /**
   * Makes a credential that is on record.
   *
   * @param scope what for; not null
   * @param from the first day it holds, in the years 1900 to 2200; not null
   * @param through the last day it holds, not before {@code from}, in the years 1900 to 2200; not
   *     null
   * @throws InvalidValueException if a year is out of range or the last day is before the first
   */
  public Credential(CredentialScope scope, LocalDate from, LocalDate through) {
    this(scope, from, through, Optional.empty());
  }

  static void requireYear(String field, LocalDate day) {
    InvalidValueException.require(
        day.getYear() >= MarkedDate.FIRST_YEAR && day.getYear() <= MarkedDate.LAST_YEAR,
        field,
        day,
        "a day in the years " + MarkedDate.FIRST_YEAR + " to " + MarkedDate.LAST_YEAR);
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
