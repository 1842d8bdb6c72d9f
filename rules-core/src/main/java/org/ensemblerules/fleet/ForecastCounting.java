package org.ensemblerules.fleet;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ensemblerules.issue.JudgedElement;

/** Counts what leaves service as elements come. */
final class ForecastCounting {
  private final LocalDate asOf;
  private final int years;
  private final Map<LeavingGroup, Long> now = new HashMap<>();
  private final Map<YearMonth, SortedMap<LeavingGroup, Long>> months = new HashMap<>();
  private final Map<LeavingGroup, Long> later = new HashMap<>();
  private final Map<LeavingGroup, Long> never = new HashMap<>();
  private final Map<LeavingGroup, Long> unknown = new HashMap<>();

  ForecastCounting(LocalDate asOf, int years) {
    this.asOf = asOf;
    this.years = years;
  }

  void add(JudgedElement judged) {
    Leaving.of(judged).forEach(leaving -> of(leaving.when()).merge(leaving.group(), 1L, Long::sum));
  }

  private Map<LeavingGroup, Long> of(Leaving.DayOut when) {
    if (!(when instanceof Leaving.DayOut.On on)) {
      return when instanceof Leaving.DayOut.Never ? never : unknown;
    }
    if (!on.firstDayOut().isAfter(asOf)) {
      return now;
    }
    return on.firstDayOut().isBefore(asOf.plusYears(years))
        ? months.computeIfAbsent(YearMonth.from(on.firstDayOut()), month -> new TreeMap<>())
        : later;
  }

  ForecastCounting with(ForecastCounting other) {
    add(now, other.now);
    other.months.forEach(
        (month, groups) -> add(months.computeIfAbsent(month, none -> new TreeMap<>()), groups));
    add(later, other.later);
    add(never, other.never);
    add(unknown, other.unknown);
    return this;
  }

  private static void add(Map<LeavingGroup, Long> sum, Map<LeavingGroup, Long> more) {
    more.forEach((group, count) -> sum.merge(group, count, Long::sum));
  }

  Forecast forecast() {
    return new Forecast(asOf, years, now, months, later, never, unknown);
  }
}
