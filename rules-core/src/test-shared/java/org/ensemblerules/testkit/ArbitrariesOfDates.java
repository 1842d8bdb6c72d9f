package org.ensemblerules.testkit;

import java.time.LocalDate;
import java.time.YearMonth;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Tuple;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Moment;

/** Days and dates around the life of the fit elements, precise and imprecise. */
public final class ArbitrariesOfDates {
  private ArbitrariesOfDates() {}

  /**
   * Returns days of a span, its ends, ends of months and leap days more often than others.
   *
   * @param first the first day
   * @param last the last day
   * @return the days
   */
  public static Arbitrary<LocalDate> days(LocalDate first, LocalDate last) {
    Arbitrary<LocalDate> any =
        Arbitraries.longs()
            .between(first.toEpochDay(), last.toEpochDay())
            .map(LocalDate::ofEpochDay)
            .withoutEdgeCases();
    Arbitrary<LocalDate> awkward =
        any.map(day -> YearMonth.from(day).atEndOfMonth())
            .map(day -> day.isAfter(last) ? last : day);
    Arbitrary<LocalDate> leap =
        any.map(day -> YearMonth.of(day.getYear() - day.getYear() % 4, 2).atEndOfMonth())
            .map(day -> day.isBefore(first) ? first : day.isAfter(last) ? last : day);
    return Arbitraries.frequencyOf(Tuple.of(6, any), Tuple.of(2, awkward), Tuple.of(1, leap));
  }

  /**
   * Returns dates in a span: to the day, the month, the year, or unknown.
   *
   * @param first the first day
   * @param last the last day
   * @return the dates
   */
  public static Arbitrary<MarkedDate> marked(LocalDate first, LocalDate last) {
    Arbitrary<LocalDate> days = days(first, last);
    return Arbitraries.frequencyOf(
        Tuple.of(8, days.map(MarkedDate::of)),
        Tuple.of(2, days.map(day -> new MarkedDate.Month(YearMonth.from(day)))),
        Tuple.of(1, days.map(day -> new MarkedDate.OfYear(day.getYear()))),
        Tuple.of(1, Arbitraries.just(MarkedDate.unknown())));
  }

  /**
   * Returns moments in the service of a fit element, a few of them impossibly early or late.
   *
   * @return the moments
   */
  public static Arbitrary<Moment> moments() {
    Arbitrary<MarkedDate> dates =
        Arbitraries.frequencyOf(
            Tuple.of(20, marked(FitGear.IN_SERVICE, FitGear.AS_OF)),
            Tuple.of(1, marked(FitGear.MADE.minusYears(2), FitGear.AS_OF.plusYears(2))));
    return dates.flatMap(
        date -> Arbitraries.of(0, 0, 0, 1, 2, 3).map(order -> new Moment(date, order)));
  }
}
