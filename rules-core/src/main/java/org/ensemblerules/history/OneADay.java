package org.ensemblerules.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.ensemblerules.gear.MarkedDate;

/**
 * Whether of a sort of events only one may have been on a day. What is said to have come after "the
 * use" of its day says of two uses nothing of the one or the other.
 */
final class OneADay {
  private final List<LocalDate> firstDays = new ArrayList<>();
  private final List<LocalDate> lastDays = new ArrayList<>();

  OneADay(History history, Predicate<Event> sort) {
    for (Event event : history.events()) {
      if (sort.test(event)) {
        firstDays.add(first(event.when().date()));
        lastDays.add(last(event.when().date()));
      }
    }
    firstDays.sort(null);
    lastDays.sort(null);
  }

  private static LocalDate first(MarkedDate date) {
    return date.earliestOr(LocalDate.MIN);
  }

  private static LocalDate last(MarkedDate date) {
    return date.latestOr(LocalDate.MAX);
  }

  /** Whether no other of its sort may have been on any day that one of them may have been on. */
  boolean alone(Moment one) {
    int begun = before(firstDays, last(one.date()), true);
    int over = before(lastDays, first(one.date()), false);
    return begun - over == 1;
  }

  /** How many of some days in order are before a day, or on it as well. */
  private static int before(List<LocalDate> days, LocalDate day, boolean orOnIt) {
    int low = 0;
    int high = days.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      int compared = days.get(middle).compareTo(day);
      if (compared < 0 || (orOnIt && compared == 0)) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
