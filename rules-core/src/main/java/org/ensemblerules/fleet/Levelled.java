package org.ensemblerules.fleet;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSortedMap;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.ensemblerules.source.InvalidValueException;

/**
 * Work spread over days.
 *
 * @param planned what is done on which day, never after its last day in time, what is due first
 *     first; not null
 * @param late what cannot be done in time, and the soonest day with room for it after all else; not
 *     null
 * @param perDay the most that is planned for a day: the least number by which all is done in time
 *     that can be
 * @since 0.1
 */
public record Levelled(Map<LocalDate, List<Work>> planned, List<Late> late, int perDay) {
  /**
   * Work that cannot be done in time.
   *
   * @param work the work; not null
   * @param why why not; not null
   * @param soonest the soonest day with room for it; empty if there is none in the span
   */
  public record Late(Work work, Why why, Optional<LocalDate> soonest) {
    /** Checks for nulls. */
    public Late {
      Objects.requireNonNull(work, "work");
      Objects.requireNonNull(why, "why");
      Objects.requireNonNull(soonest, "soonest");
    }
  }

  /** Why work cannot be done in time. */
  public enum Why {
    /** Its last day in time is past, or not known. */
    OVERDUE,
    /** Until its last day there is no room. */
    NO_ROOM
  }

  /** Copies the collections. */
  public Levelled {
    Map<LocalDate, List<Work>> days = new TreeMap<>();
    planned.forEach((day, work) -> days.put(day, ImmutableList.copyOf(work)));
    planned = ImmutableSortedMap.copyOf(days);
    late = ImmutableList.copyOf(late);
  }

  /**
   * Spreads work over the days of a span, never past the day on which it is due.
   *
   * @param work the work, in any order; what is due after the span is planned within it as well;
   *     not null
   * @param capacity how much can be done; not null
   * @param from the first day on which work is done; not null
   * @param through the last day, not before the first, at most 40000 days after; not null
   * @return the work by day, and what cannot be done in time; never null
   * @throws InvalidValueException if the span is not one
   */
  public static Levelled of(
      Collection<Work> work, Capacity capacity, LocalDate from, LocalDate through) {
    return new Levelling(capacity, from, through).spread(work);
  }

  /**
   * Returns how much is planned for each month.
   *
   * @return the numbers by month, months without any left out; never null
   */
  public Map<YearMonth, Integer> byMonth() {
    Map<YearMonth, Integer> months = new TreeMap<>();
    planned.forEach((day, work) -> months.merge(YearMonth.from(day), work.size(), Integer::sum));
    return ImmutableSortedMap.copyOf(months);
  }
}
