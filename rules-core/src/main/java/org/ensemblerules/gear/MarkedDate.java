package org.ensemblerules.gear;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.Collection;
import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;

/**
 * A date as a label or a record gives it: to the day, the month or the year, or not at all. It is
 * never completed to a day; whoever asks takes its earliest or its latest possible day.
 *
 * <p>A month reaches from its first to its last day, a year from 1 January to 31 December, of the
 * Gregorian calendar; an unknown date may be any day. So it is certainly by a day d if {@code
 * latest <= d}, and possibly if {@code earliest <= d}. That is our own reading of such dates.
 *
 * @since 0.1
 */
public sealed interface MarkedDate {
  /** The first year that can be given. */
  int FIRST_YEAR = 1900;

  /** The last year that can be given. */
  int LAST_YEAR = 2200;

  /**
   * A date to the day.
   *
   * @param day the day, in the years 1900 to 2200; not null
   */
  record Day(LocalDate day) implements MarkedDate {
    /**
     * Checks the year.
     *
     * @throws InvalidValueException if the year is out of range
     */
    public Day {
      requireYear(day.getYear(), day);
    }

    @Override
    public Optional<LocalDate> earliest() {
      return Optional.of(day);
    }

    @Override
    public Optional<LocalDate> latest() {
      return Optional.of(day);
    }

    @Override
    public String toString() {
      return day.toString();
    }
  }

  /**
   * A date to the month.
   *
   * @param month the month, in the years 1900 to 2200; not null
   */
  record Month(YearMonth month) implements MarkedDate {
    /**
     * Checks the year.
     *
     * @throws InvalidValueException if the year is out of range
     */
    public Month {
      requireYear(month.getYear(), month);
    }

    @Override
    public Optional<LocalDate> earliest() {
      return Optional.of(month.atDay(1));
    }

    @Override
    public Optional<LocalDate> latest() {
      return Optional.of(month.atEndOfMonth());
    }

    @Override
    public String toString() {
      return month.toString();
    }
  }

  /**
   * A date to the year.
   *
   * @param year the year, 1900 to 2200
   */
  record OfYear(int year) implements MarkedDate {
    /**
     * Checks the year.
     *
     * @throws InvalidValueException if the year is out of range
     */
    public OfYear {
      requireYear(year, year);
    }

    @Override
    public Optional<LocalDate> earliest() {
      return Optional.of(LocalDate.of(year, 1, 1));
    }

    @Override
    public Optional<LocalDate> latest() {
      return Optional.of(LocalDate.of(year, 12, 31));
    }

    @Override
    public String toString() {
      return Year.of(year).toString();
    }
  }

  /** No date is given, or it cannot be read. */
  record Unknown() implements MarkedDate {
    @Override
    public Optional<LocalDate> earliest() {
      return Optional.empty();
    }

    @Override
    public Optional<LocalDate> latest() {
      return Optional.empty();
    }

    @Override
    public String toString() {
      return "UNKNOWN";
    }
  }

  /**
   * Returns the earliest day the date can mean.
   *
   * @return the day; empty if unknown
   */
  Optional<LocalDate> earliest();

  /**
   * Returns the latest day the date can mean.
   *
   * @return the day; empty if unknown
   */
  Optional<LocalDate> latest();

  /**
   * Returns the earliest day that the date may be.
   *
   * @param unknown what stands for it if the date is unknown; not null
   * @return the day; never null
   */
  default LocalDate earliestOr(LocalDate unknown) {
    return this instanceof Day known ? known.day() : earliest().orElse(unknown);
  }

  /**
   * Returns the latest day that the date may be.
   *
   * @param unknown what stands for it if the date is unknown; not null
   * @return the day; never null
   */
  default LocalDate latestOr(LocalDate unknown) {
    return this instanceof Day known ? known.day() : latest().orElse(unknown);
  }

  /**
   * Makes a date to the day.
   *
   * @param day the day, in the years 1900 to 2200; not null
   * @return the date; never null
   * @throws InvalidValueException if the year is out of range
   */
  static MarkedDate of(LocalDate day) {
    return new Day(day);
  }

  /**
   * Finds the earliest day that one of some dates can mean.
   *
   * @param dates the dates; not null
   * @return the day; empty if none of them is known
   */
  static Optional<LocalDate> earliestOf(Collection<MarkedDate> dates) {
    Optional<LocalDate> first = Optional.empty();
    for (MarkedDate date : dates) {
      Optional<LocalDate> earliest = date.earliest();
      if (earliest.isPresent() && (first.isEmpty() || earliest.get().isBefore(first.get()))) {
        first = earliest;
      }
    }
    return first;
  }

  /**
   * Makes the unknown date.
   *
   * @return the unknown date; never null
   */
  static MarkedDate unknown() {
    return new Unknown();
  }

  /**
   * Reads a date as {@code toString} writes it.
   *
   * @param text {@code 2019-05-14}, {@code 2019-05}, {@code 2019} or {@code UNKNOWN}; not null
   * @return the date; never null
   * @throws InvalidValueException if the text has another form or names no day of the calendar
   */
  static MarkedDate parse(String text) {
    try {
      return switch (text.length()) {
        case 10 ->
            new Day(LocalDate.of(number(text, 0, 4), number(text, 5, 7), number(text, 8, 10)));
        case 7 ->
            text.equals("UNKNOWN")
                ? new Unknown()
                : new Month(YearMonth.of(number(text, 0, 4), number(text, 5, 7)));
        case 4 -> new OfYear(number(text, 0, 4));
        default -> throw new InvalidValueException("MarkedDate", text, FORMS);
      };
    } catch (DateTimeException e) {
      throw new InvalidValueException("MarkedDate", text, FORMS);
    }
  }

  /** Reads the digits of a part that stands at the beginning or after a hyphen. */
  private static int number(String text, int from, int to) {
    boolean apart = from == 0 || text.charAt(from - 1) == '-';
    int number = 0;
    for (int i = from; i < to; i++) {
      char digit = text.charAt(i);
      apart &= digit >= '0' && digit <= '9';
      number = 10 * number + digit - '0';
    }
    InvalidValueException.require(apart, "MarkedDate", text, FORMS);
    return number;
  }

  /**
   * Tells whether this date is certainly after another: its earliest day after the other's latest.
   *
   * @param other the other date; not null
   * @return true only if both are known and no reading of them says otherwise
   */
  default boolean certainlyAfter(MarkedDate other) {
    return earliestOr(LocalDate.MIN).isAfter(other.latestOr(LocalDate.MAX));
  }

  /**
   * Tells whether this date is certainly not before another: after it, or both the same single day.
   *
   * @param other the other date; not null
   * @return true only if both are known and no reading of them says otherwise
   */
  default boolean certainlyNotBefore(MarkedDate other) {
    return !earliestOr(LocalDate.MIN).isBefore(other.latestOr(LocalDate.MAX));
  }

  /**
   * Tells whether this date is certainly on or before a day: its latest day is not after it.
   *
   * @param day the day; not null
   * @return true only if every reading of the date is on or before the day; false for an unknown
   *     date, and for a month or a year that ends after the day
   */
  default boolean certainlyBy(LocalDate day) {
    return !(this instanceof Unknown) && !latestOr(LocalDate.MAX).isAfter(day);
  }

  /**
   * Tells whether this date may be on or before a day: its earliest day is not after it.
   *
   * @param day the day; not null
   * @return true if some reading of the date is on or before the day; true for an unknown date, and
   *     for a month or a year that begins on or before the day
   */
  default boolean possiblyBy(LocalDate day) {
    return !earliestOr(LocalDate.MIN).isAfter(day);
  }

  /** The forms that can be read, for messages. */
  String FORMS = "YYYY-MM-DD, YYYY-MM, YYYY or UNKNOWN, years 1900 to 2200";

  private static void requireYear(int year, Object given) {
    InvalidValueException.require(
        year >= FIRST_YEAR && year <= LAST_YEAR, "MarkedDate.year", given, FORMS);
  }
}
