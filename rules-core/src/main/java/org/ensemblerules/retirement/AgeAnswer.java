package org.ensemblerules.retirement;

import java.time.LocalDate;

/**
 * By when age takes an element or a layer out of service.
 *
 * @since 0.1
 */
public sealed interface AgeAnswer {
  /**
   * On a day.
   *
   * @param row the row that says so; not null
   * @param firstDayOut the first day on which it may not be in service; the day before is its last
   */
  record LeavesOn(AgeLimitRow row, LocalDate firstDayOut) implements AgeAnswer {
    /**
     * Returns the last day of service.
     *
     * @return the day before the first day out; never null
     */
    public LocalDate lastDay() {
      return firstDayOut.minusDays(1);
    }

    @Override
    public String text() {
      return "first day out " + firstDayOut;
    }
  }

  /**
   * Never, for age alone.
   *
   * @param row the row that says so; not null
   */
  record NoLimitSet(AgeLimitRow row) implements AgeAnswer {
    @Override
    public String text() {
      return "no age limit set";
    }
  }

  /**
   * The limit was not seen, so nobody can say.
   *
   * @param row the row that says so; not null
   */
  record LimitNotSeen(AgeLimitRow row) implements AgeAnswer {
    @Override
    public String text() {
      return "age limit not seen";
    }
  }

  /**
   * There is a limit, and it is not known when the element was made.
   *
   * @param row the row with the limit; not null
   */
  record DateUnknown(AgeLimitRow row) implements AgeAnswer {
    @Override
    public String text() {
      return "date of manufacture unknown";
    }
  }

  /** No row covers it. */
  record NoRule() implements AgeAnswer {
    @Override
    public String text() {
      return "no rule covers its age";
    }
  }

  /**
   * Returns the answer in words.
   *
   * @return the text; never null
   */
  String text();

  /**
   * Tells whether age keeps the element or layer out of service on a day: it is too old, or it
   * cannot be shown that it is not.
   *
   * @param asOf the day; not null
   * @return true unless the day is before the first day out or no limit is set
   */
  default boolean keepsOut(LocalDate asOf) {
    if (this instanceof LeavesOn leaves) {
      return !asOf.isBefore(leaves.firstDayOut());
    }
    return !(this instanceof NoLimitSet);
  }
}
