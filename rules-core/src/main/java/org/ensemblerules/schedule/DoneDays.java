package org.ensemblerules.schedule;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Lists;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.Moment;

/**
 * The days on which a task was done by a day, as far as it counts. Whether something counts is
 * asked only where the answer hangs on it.
 */
final class DoneDays {
  private final Evidence evidence;
  private final List<Event> done;

  /** {@code done}: all that discharges the task, in the order of the history. */
  DoneDays(Evidence evidence, List<Event> done) {
    this.evidence = evidence;
    this.done = done;
  }

  /** One for each day that counts as done on. */
  List<Moment> onDistinctDays() {
    ImmutableList.Builder<Moment> all = ImmutableList.builder();
    for (Event event : done) {
      if (evidence.counts(event)) {
        all.add(event.when());
      }
    }
    return Moment.onDistinctDays(all.build());
  }

  /** The last of those for the days that count as done on: all of them, or at least so many. */
  List<Moment> lastDistinctDays(int atLeast) {
    List<Moment> days = new ArrayList<>();
    List<Moment> newer = new ArrayList<>();
    LocalDate first = LocalDate.MAX;
    for (Event event : Lists.reverse(evidence.history().latestLast(done))) {
      Moment when = event.when();
      // What is certainly before all of them shares no day with any.
      if (!newer.isEmpty() && when.date().latestOr(LocalDate.MAX).isBefore(first)) {
        days.addAll(0, Moment.onDistinctDays(Lists.reverse(newer)));
        newer.clear();
        if (days.size() >= atLeast) {
          return days;
        }
      }
      if (evidence.counts(event)) {
        newer.add(when);
        LocalDate earliest = when.date().earliestOr(LocalDate.MIN);
        first = earliest.isBefore(first) ? earliest : first;
      }
    }
    days.addAll(0, Moment.onDistinctDays(Lists.reverse(newer)));
    return days;
  }

  /** Where the first stands that fulfills what all that come after it fulfill as well. */
  static int indexOfFirst(List<Moment> ordered, Predicate<Moment> fulfills) {
    int low = 0;
    int high = ordered.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (fulfills.test(ordered.get(middle))) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
