package org.ensemblerules.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.source.InvalidValueException;

/**
 * When something happened: a date as the record has it, and for several events of one day their
 * order on that day where the record tells it.
 *
 * @param date the date; not null
 * @param orderInDay the place among the events of that day, 1 to 10000; 0 if the record does not
 *     tell
 * @since 0.1
 */
public record Moment(MarkedDate date, int orderInDay) {
  /**
   * By what a moment is certainly after: of two, the greater is certainly after whatever the other
   * is certainly after. Unknown dates come first.
   */
  public static final Comparator<Moment> LAST_CERTAIN =
      Comparator.<Moment, LocalDate>comparing(when -> when.date.earliestOr(LocalDate.MIN))
          .thenComparing(Moment::precise)
          .thenComparing(Moment::orderInDay);

  /**
   * By what is certainly after a moment: of two, whatever is certainly after the greater is
   * certainly after the lesser. Unknown dates come last.
   */
  public static final Comparator<Moment> FIRST_CERTAIN =
      Comparator.<Moment, LocalDate>comparing(when -> when.date.latestOr(LocalDate.MAX))
          .thenComparing(when -> !when.precise())
          .thenComparingInt(when -> when.orderInDay == 0 ? Integer.MAX_VALUE : when.orderInDay);

  static final Comparator<Moment> BY_LATEST = Comparator.comparing(Moment::latest);

  /**
   * Checks the order.
   *
   * @throws InvalidValueException if the order is out of range
   */
  public Moment {
    Objects.requireNonNull(date, "date");
    requireOrder(orderInDay);
  }

  /**
   * Finds the fewest days on which all of several moments may have been: what is dated by its month
   * may be of the very day that another has.
   *
   * @param moments the moments, in any order; not null
   * @return for each of those days the last of the moments that may share it, by {@link
   *     #LAST_CERTAIN} and in its order; never null
   */
  public static List<Moment> onDistinctDays(Collection<Moment> moments) {
    List<Moment> byLatest = new ArrayList<>(moments);
    byLatest.sort(BY_LATEST);
    List<Moment> distinct = new ArrayList<>(byLatest.size());
    LocalDate shared = LocalDate.MIN;
    for (Moment when : byLatest) {
      boolean sharesIt =
          !distinct.isEmpty() && !when.date.earliestOr(LocalDate.MIN).isAfter(shared);
      if (sharesIt) {
        Moment other = distinct.remove(distinct.size() - 1);
        distinct.add(LAST_CERTAIN.compare(other, when) < 0 ? when : other);
      } else {
        distinct.add(when);
        shared = latest(when);
      }
    }
    return List.copyOf(distinct);
  }

  private static LocalDate latest(Moment when) {
    return when.date.latestOr(LocalDate.MAX);
  }

  static void requireOrder(int orderInDay) {
    InvalidValueException.require(
        orderInDay >= 0 && orderInDay <= 10_000, "Moment.orderInDay", orderInDay, "0 to 10000");
  }

  /**
   * Makes a moment without an order in its day.
   *
   * @param date the date; not null
   * @return the moment; never null
   */
  public static Moment on(MarkedDate date) {
    return new Moment(date, 0);
  }

  /**
   * Makes a moment without an order in its day, of a date as a record writes it.
   *
   * @param date a day, a month or a year, as in 2026-11-25, 2026-11 or 2026; not null
   * @return the moment; never null
   * @throws InvalidValueException if it is no such date
   */
  public static Moment on(String date) {
    return on(MarkedDate.parse(date));
  }

  /**
   * Tells whether this was certainly after another moment.
   *
   * @param other the other moment; not null
   * @return true if no reading of the dates says otherwise; on one and the same day only if the
   *     record tells the order of both
   */
  public boolean certainlyAfter(Moment other) {
    if (date.certainlyAfter(other.date)) {
      return true;
    }
    return date instanceof MarkedDate.Day
        && date.equals(other.date)
        && other.orderInDay > 0
        && orderInDay > other.orderInDay;
  }

  /**
   * Tells whether this came after another moment, as the record has it: certainly after it, or not
   * before its day where the record names what it came after.
   *
   * @param other the other moment; not null
   * @param namesIt whether the record says that this answers the other, or was made because of it
   * @return true if it did; never against an order that the record tells of both
   */
  public boolean follows(Moment other, boolean namesIt) {
    return certainlyAfter(other)
        || (namesIt && date.certainlyNotBefore(other.date) && !other.certainlyAfter(this));
  }

  /**
   * Says how to tell the order of two moments of one day that nobody told.
   *
   * @param other the other moment; not null
   * @return one sentence without its end; empty if they are not of one and the same day, or their
   *     order is told
   */
  public Optional<String> howToOrder(Moment other) {
    return date instanceof MarkedDate.Day
            && date.equals(other.date)
            && (orderInDay == 0 || other.orderInDay == 0)
        ? Optional.of("of " + date + " as well, and in order once both have their orderInDay")
        : Optional.empty();
  }

  private boolean precise() {
    return date instanceof MarkedDate.Day;
  }

  @Override
  public String toString() {
    return date + (orderInDay == 0 ? "" : " (" + orderInDay + ")");
  }
}
