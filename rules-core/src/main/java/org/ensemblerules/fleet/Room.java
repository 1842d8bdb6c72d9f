package org.ensemblerules.fleet;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;

/** The room that a span of days has for work, taken from its first day on. */
final class Room {
  private final Capacity capacity;
  private final LocalDate through;
  private LocalDate day;
  private int onDay;
  private int inMonth;

  Room(Capacity capacity, LocalDate from, LocalDate through) {
    this.capacity = capacity;
    this.through = through;
    this.day = from;
  }

  /** The next day with room; empty once there is none. */
  Optional<LocalDate> next() {
    while (!day.isAfter(through)) {
      if (inMonth >= capacity.perMonth().orElse(Integer.MAX_VALUE)) {
        skipTo(YearMonth.from(day).plusMonths(1).atDay(1));
      } else if (onDay >= capacity.on(day)) {
        skipTo(day.plusDays(1));
      } else {
        return Optional.of(day);
      }
    }
    return Optional.empty();
  }

  /** Takes some of the room on the day that is next. */
  void take() {
    onDay++;
    inMonth++;
  }

  private void skipTo(LocalDate other) {
    inMonth = YearMonth.from(other).equals(YearMonth.from(day)) ? inMonth : 0;
    day = other;
    onDay = 0;
  }
}
