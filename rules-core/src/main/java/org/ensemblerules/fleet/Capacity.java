package org.ensemblerules.fleet;

import com.google.common.collect.ImmutableSortedSet;
import com.google.common.collect.Sets;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.OptionalInt;
import java.util.Set;
import org.ensemblerules.source.InvalidValueException;

/**
 * How much work can be done.
 *
 * @param perDay how many tasks on a day, 0 to 1000000
 * @param perMonth how many tasks in a calendar month, 0 to 1000000; empty if only days are limited
 * @param closedOn the days of the week without work; not null
 * @param closed other days without work; not null
 * @since 0.1
 */
public record Capacity(
    int perDay, OptionalInt perMonth, Set<DayOfWeek> closedOn, Set<LocalDate> closed) {
  private static final int MOST = 1_000_000;

  /**
   * Copies the sets and checks the numbers.
   *
   * @throws InvalidValueException if a number is out of range
   */
  public Capacity {
    InvalidValueException.require(
        perDay >= 0 && perDay <= MOST, "Capacity.perDay", perDay, "0 to " + MOST);
    int inMonth = perMonth.orElse(0);
    InvalidValueException.require(
        inMonth >= 0 && inMonth <= MOST, "Capacity.perMonth", inMonth, "0 to " + MOST);
    closedOn = Sets.immutableEnumSet(closedOn);
    closed = ImmutableSortedSet.copyOf(closed);
  }

  /**
   * Makes one of so many tasks on each day.
   *
   * @param perDay how many, 0 to 1000000
   * @return the capacity; never null
   * @throws InvalidValueException if the number is out of range
   */
  public static Capacity perDay(int perDay) {
    return new Capacity(perDay, OptionalInt.empty(), Set.of(), Set.of());
  }

  /** Returns it with another number on each day. */
  Capacity withPerDay(int other) {
    return new Capacity(other, perMonth, closedOn, closed);
  }

  /**
   * Returns how much can be done on a day.
   *
   * @param day the day; not null
   * @return the number, 0 on a day without work
   */
  public int on(LocalDate day) {
    return closedOn.contains(day.getDayOfWeek()) || closed.contains(day) ? 0 : perDay;
  }
}
