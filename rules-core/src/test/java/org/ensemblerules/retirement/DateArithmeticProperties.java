package org.ensemblerules.retirement;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.testkit.ArbitrariesOfDates;
import org.ensemblerules.testkit.FrozenProvenance;

/**
 * First days out and due dates, checked against Joda-Time and against counting days by the rules of
 * the Gregorian calendar. Leap days and ends of months occur often.
 */
@PropertyDefaults(tries = 10_000, edgeCases = EdgeCasesMode.NONE)
class DateArithmeticProperties {
  private static final LocalDate FIRST = LocalDate.of(1900, 1, 1);
  private static final LocalDate LAST = LocalDate.of(2200, 12, 31);

  @Provide
  Arbitrary<LocalDate> days() {
    return ArbitrariesOfDates.days(FIRST, LAST);
  }

  @Provide
  Arbitrary<MarkedDate> dates() {
    return ArbitrariesOfDates.marked(FIRST, LAST);
  }

  @Property
  @FewestTries(300)
  void firstAndLastDayAsJodaTimeHasThem(
      @ForAll("days") LocalDate made, @ForAll @IntRange(min = 1, max = 50) int years) {
    AgeAnswer.LeavesOn leaves = leaves(MarkedDate.of(made), years);
    org.joda.time.LocalDate out = joda(made).plusYears(years);
    assertThat(joda(leaves.firstDayOut())).isEqualTo(out);
    assertThat(joda(leaves.lastDay())).isEqualTo(out.minusDays(1));
    assertThat(leaves.keepsOut(leaves.firstDayOut())).isTrue();
    assertThat(leaves.keepsOut(leaves.lastDay())).isFalse();
    Statistics.label("leap day").collect(made.getMonthValue() == 2 && made.getDayOfMonth() == 29);
    Statistics.label("leap day")
        .coverage(shares -> shares.check(true).percentage(share -> share >= 2));
    Statistics.label("end of month").collect(made.getDayOfMonth() == made.lengthOfMonth());
    Statistics.label("end of month")
        .coverage(shares -> shares.check(true).percentage(share -> share >= 10));
  }

  @Property
  void firstDayOutByCountingDays(
      @ForAll("days") LocalDate made, @ForAll @IntRange(min = 1, max = 50) int years) {
    assertThat(leaves(MarkedDate.of(made), years).firstDayOut().toEpochDay())
        .isEqualTo(
            GregorianDays.number(
                made.getYear() + years, made.getMonthValue(), made.getDayOfMonth()));
  }

  @Property
  void ageCountsFromTheEarliestDay(
      @ForAll("dates") MarkedDate made, @ForAll @IntRange(min = 1, max = 50) int years) {
    AgeAnswer answer = answer(made, years);
    if (made instanceof MarkedDate.Unknown) {
      assertThat(answer).isInstanceOf(AgeAnswer.DateUnknown.class);
      return;
    }
    String[] parts = made.toString().split("-", -1);
    org.joda.time.LocalDate earliest =
        new org.joda.time.LocalDate(
            Integer.parseInt(parts[0]),
            parts.length > 1 ? Integer.parseInt(parts[1]) : 1,
            parts.length > 2 ? Integer.parseInt(parts[2]) : 1);
    assertThat(joda(((AgeAnswer.LeavesOn) answer).firstDayOut()))
        .isEqualTo(earliest.plusYears(years));
  }

  @Property
  void earliestAndLatestDayOfAMonthAsJodaTimeHasThem(@ForAll("days") LocalDate day) {
    MarkedDate month = new MarkedDate.Month(YearMonth.from(day));
    org.joda.time.LocalDate inMonth = joda(day);
    assertThat(month.earliest().map(DateArithmeticProperties::joda))
        .contains(inMonth.dayOfMonth().withMinimumValue());
    assertThat(month.latest().map(DateArithmeticProperties::joda))
        .contains(inMonth.dayOfMonth().withMaximumValue());
    MarkedDate year = new MarkedDate.OfYear(day.getYear());
    assertThat(year.earliest().map(DateArithmeticProperties::joda))
        .contains(inMonth.dayOfYear().withMinimumValue());
    assertThat(year.latest().map(DateArithmeticProperties::joda))
        .contains(inMonth.dayOfYear().withMaximumValue());
  }

  @Property
  void dueDatesAsJodaTimeHasThem(
      @ForAll("days") LocalDate day,
      @ForAll @IntRange(min = 1, max = 600) int months,
      @ForAll boolean repeated) {
    Element element = element(repeated ? MarkedDate.unknown() : MarkedDate.of(day));
    Optional<LocalDate> due =
        IntervalTable.dueBy(
            interval(repeated ? 1 : months, repeated ? months : 1),
            element,
            repeated ? Optional.of(day) : Optional.empty());
    assertThat(due.map(DateArithmeticProperties::joda)).contains(joda(day).plusMonths(months));
  }

  @Property
  void dueDatesByCountingDays(
      @ForAll("days") LocalDate day, @ForAll @IntRange(min = 1, max = 600) int months) {
    Optional<LocalDate> due =
        IntervalTable.dueBy(interval(1, months), element(MarkedDate.unknown()), Optional.of(day));
    int month = day.getYear() * 12 + day.getMonthValue() - 1 + months;
    assertThat(due.orElseThrow().toEpochDay())
        .isEqualTo(GregorianDays.number(month / 12, month % 12 + 1, day.getDayOfMonth()));
  }

  private static org.joda.time.LocalDate joda(LocalDate day) {
    return new org.joda.time.LocalDate(day.getYear(), day.getMonthValue(), day.getDayOfMonth());
  }

  private static AgeAnswer.LeavesOn leaves(MarkedDate made, int years) {
    return (AgeAnswer.LeavesOn) answer(made, years);
  }

  private static AgeAnswer answer(MarkedDate made, int years) {
    AgeLimitRow row =
        new AgeLimitRow(
            FrozenProvenance.of("age"),
            ElementKind.HELMET,
            Use.STRUCTURAL,
            Optional.empty(),
            new AgeLimit.Years(years));
    return AgeLimitTable.of(List.of(row))
        .orElseThrow()
        .answer(ElementKind.HELMET, Use.STRUCTURAL, Optional.empty(), made);
  }

  private static IntervalRow interval(int first, int repeat) {
    return new IntervalRow(
        FrozenProvenance.of("interval"),
        InspectionKind.ADVANCED,
        ElementKind.HELMET,
        Use.STRUCTURAL,
        first,
        first,
        repeat);
  }

  private static Element element(MarkedDate inService) {
    return Element.builder(new ElementId("H1"), ElementKind.HELMET, Use.STRUCTURAL)
        .inService(inService)
        .cbrnOption(YesNoUnknown.NO)
        .build();
  }
}
