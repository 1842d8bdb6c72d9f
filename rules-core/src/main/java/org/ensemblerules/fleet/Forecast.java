package org.ensemblerules.fleet;

import com.google.common.collect.ImmutableSortedMap;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collector;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.source.InvalidValueException;

/**
 * How much leaves service when, by what is known on a day: now with a first day out up to that day,
 * in a month if it comes before the same day so many years later, else later. What takes its place
 * then is not forecast. Its size depends on the kinds and sizes and not on the number of elements.
 *
 * @param asOf the day it was made for; not null
 * @param years how many years it looks ahead, 1 to 50
 * @param now what is out for good already, for what was found or for its age; not null
 * @param months what leaves in which month, months without any left out; not null
 * @param later what leaves after that; not null
 * @param never what never leaves for age alone; not null
 * @param unknown what nobody can tell it of; it is out until somebody can; not null
 * @since 0.1
 */
public record Forecast(
    LocalDate asOf,
    int years,
    Map<LeavingGroup, Long> now,
    Map<YearMonth, SortedMap<LeavingGroup, Long>> months,
    Map<LeavingGroup, Long> later,
    Map<LeavingGroup, Long> never,
    Map<LeavingGroup, Long> unknown) {
  private static final int MOST_YEARS = 50;

  /**
   * Copies the maps.
   *
   * @throws InvalidValueException if the years are out of range
   */
  public Forecast {
    Objects.requireNonNull(asOf, "asOf");
    requireYears(years);
    now = ImmutableSortedMap.copyOf(now);
    Map<YearMonth, SortedMap<LeavingGroup, Long>> copy = new TreeMap<>();
    months.forEach((month, groups) -> copy.put(month, ImmutableSortedMap.copyOf(groups)));
    months = ImmutableSortedMap.copyOf(copy);
    later = ImmutableSortedMap.copyOf(later);
    never = ImmutableSortedMap.copyOf(never);
    unknown = ImmutableSortedMap.copyOf(unknown);
  }

  private static void requireYears(int years) {
    InvalidValueException.require(
        years >= 1 && years <= MOST_YEARS, "Forecast.years", years, "1 to " + MOST_YEARS);
  }

  /**
   * Returns a collector that counts elements as they come and keeps none.
   *
   * @param asOf the day the elements were judged for; not null
   * @param years how many years to look ahead, 1 to 50
   * @return the collector; it may be used in parallel; never null
   * @throws InvalidValueException if the years are out of range
   */
  public static Collector<JudgedElement, ?, Forecast> collector(LocalDate asOf, int years) {
    requireYears(years);
    return Collector.of(
        () -> new ForecastCounting(asOf, years),
        ForecastCounting::add,
        ForecastCounting::with,
        ForecastCounting::forecast,
        Collector.Characteristics.UNORDERED);
  }

  /**
   * Returns how much leaves in a calendar year, as far as it is looked ahead.
   *
   * @param year the year
   * @return the number of elements and layers, without what is out already
   */
  public long in(int year) {
    return months.entrySet().stream()
        .filter(month -> month.getKey().getYear() == year)
        .flatMap(month -> month.getValue().values().stream())
        .mapToLong(Long::longValue)
        .sum();
  }
}
