package org.ensemblerules.history;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.source.InvalidValueException;

/**
 * When something happened: a date as the record has it, and for several events of one day their
 * order on that day where the record tells it.
 *
 * @param date the date; not null
 * @param orderInDay the place among the events of that day, 1 to 10000; 0 if the record does not
 *     tell
 */
public record When(MarkedDate date, int orderInDay) {
  /**
   * By what a moment is certainly after: of two, the greater is certainly after whatever the other
   * is certainly after. Unknown dates come first.
   */
  public static final Comparator<When> LAST_CERTAIN =
      Comparator.<When, LocalDate>comparing(when -> when.date.earliest().orElse(LocalDate.MIN))
          .thenComparing(When::precise)
          .thenComparing(When::orderInDay);

  /**
   * By what is certainly after a moment: of two, whatever is certainly after the greater is
   * certainly after the lesser. Unknown dates come last.
   */
  public static final Comparator<When> FIRST_CERTAIN =
      Comparator.<When, LocalDate>comparing(when -> when.date.latest().orElse(LocalDate.MAX))
          .thenComparing(when -> !when.precise())
          .thenComparingInt(when -> when.orderInDay == 0 ? Integer.MAX_VALUE : when.orderInDay);

  /**
   * Checks the order.
   *
   * @throws InvalidValueException if the order is out of range
   */
  public When {
    Objects.requireNonNull(date, "date");
    requireOrder(orderInDay);
  }

  static void requireOrder(int orderInDay) {
    InvalidValueException.require(
        orderInDay >= 0 && orderInDay <= 10_000, "When.orderInDay", orderInDay, "0 to 10000");
  }

  /**
   * Makes a moment without an order in its day.
   *
   * @param date the date; not null
   * @return the moment; never null
   */
  public static When on(MarkedDate date) {
    return new When(date, 0);
  }

  /**
   * Tells whether this was certainly after another moment.
   *
   * @param other the other moment; not null
   * @return true if no reading of the dates says otherwise; on one and the same day only if the
   *     record tells the order of both
   */
  public boolean certainlyAfter(When other) {
    if (date.certainlyAfter(other.date)) {
      return true;
    }
    return date instanceof MarkedDate.Day
        && date.equals(other.date)
        && other.orderInDay > 0
        && orderInDay > other.orderInDay;
  }

  private boolean precise() {
    return date instanceof MarkedDate.Day;
  }

  @Override
  public String toString() {
    return date + (orderInDay == 0 ? "" : " (" + orderInDay + ")");
  }
}
