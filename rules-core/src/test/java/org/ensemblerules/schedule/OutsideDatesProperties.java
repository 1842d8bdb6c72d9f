package org.ensemblerules.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicLong;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.statistics.Statistics;
import org.dmfs.rfc5545.DateTime;
import org.dmfs.rfc5545.recur.InvalidRecurrenceRuleException;
import org.dmfs.rfc5545.recur.RecurrenceRule;
import org.dmfs.rfc5545.recur.RecurrenceRuleIterator;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Moment;
import org.ensemblerules.testkit.ArbitrariesOfDates;

/**
 * Due days of random histories against Joda-Time's months, and missed and planned days against
 * recurrences by RFC 5545 with days that do not exist moved back (SKIP=BACKWARD of RFC 7529), as
 * lib-recur expands them. What was compared is counted in {@code
 * target/outside-checks-schedule.csv}.
 */
@PropertyDefaults(tries = 10_000, edgeCases = EdgeCasesMode.NONE)
class OutsideDatesProperties {
  private static final TreeMap<String, AtomicLong> COMPARED = new TreeMap<>();

  private record Life(LocalDate since, List<LocalDate> done, LocalDate asOf, Timing.Every every) {
    Kept kept() {
      Kept kept = Kept.inServiceSince(ElementKind.HELMET, MarkedDate.of(since));
      for (LocalDate day : done) {
        kept = kept.with(Kept.cleaning(Moment.on(MarkedDate.of(day)), CleaningKind.ADVANCED));
      }
      return kept;
    }

    Schedule schedule() {
      return Kept.schedule(Kept.cleaning(ElementKind.HELMET, every));
    }
  }

  @Provide
  Arbitrary<Life> lives() {
    Arbitrary<LocalDate> since =
        ArbitrariesOfDates.days(LocalDate.of(2001, 1, 1), LocalDate.of(2150, 12, 31));
    Arbitrary<Timing.Every> every =
        Combinators.combine(
                Arbitraries.integers().between(1, 60),
                Arbitraries.integers().between(1, 3),
                Arbitraries.integers().between(1, 60))
            .as((first, times, within) -> new Timing.Every(Start.ISSUE, first, times, within));
    return Combinators.combine(since, every, Arbitraries.integers().between(0, 5000))
        .flatAs(
            (day, timing, age) ->
                ArbitrariesOfDates.days(day, day.plusDays(age))
                    .set()
                    .ofMaxSize(Math.min(6, age / 4))
                    .map(
                        done ->
                            new Life(
                                day,
                                done.stream()
                                    .filter(each -> !each.isAfter(day.plusDays(age)))
                                    .sorted()
                                    .toList(),
                                day.plusDays(age),
                                timing)));
  }

  private static org.joda.time.LocalDate joda(LocalDate day) {
    return new org.joda.time.LocalDate(day.getYear(), day.getMonthValue(), day.getDayOfMonth());
  }

  private static LocalDate java(org.joda.time.LocalDate day) {
    return LocalDate.of(day.getYear(), day.getMonthOfYear(), day.getDayOfMonth());
  }

  @Property
  @FewestTries(300)
  void dueDaysAsJodaTimeHasThem(@ForAll("lives") Life life) {
    org.joda.time.LocalDate expected = joda(life.since()).plusMonths(life.every().firstMonths());
    if (life.done().size() >= life.every().times()) {
      LocalDate counted = life.done().get(life.done().size() - life.every().times());
      org.joda.time.LocalDate next = joda(counted).plusMonths(life.every().withinMonths());
      expected = next.isAfter(expected) ? next : expected;
    }
    List<Due> due = Kept.tasks(life.schedule(), life.kept(), life.asOf());
    assertThat(due).hasSize(1);
    assertThat(due.get(0).by()).contains(java(expected));
    assertThat(due.get(0).daysOverdue(life.asOf()).orElseThrow())
        .isEqualTo(
            Math.max(0, org.joda.time.Days.daysBetween(expected, joda(life.asOf())).getDays()));
    compared("Joda-Time 2.15.1;days due and days overdue of random histories", 1);
    Statistics.label("overdue").collect(due.get(0).isOverdue(life.asOf()));
    Statistics.label("overdue").coverage(shares -> shares.check(true).percentage(p -> p > 10));
  }

  private static List<LocalDate> recurring(LocalDate start, int months, LocalDate before)
      throws InvalidRecurrenceRuleException {
    RecurrenceRule rule =
        new RecurrenceRule("RSCALE=GREGORIAN;FREQ=MONTHLY;SKIP=BACKWARD;INTERVAL=" + months);
    RecurrenceRuleIterator days =
        rule.iterator(
            new DateTime(start.getYear(), start.getMonthValue() - 1, start.getDayOfMonth()));
    List<LocalDate> all = new ArrayList<>();
    days.nextMillis(); // the start itself
    while (true) {
      DateTime day = days.nextDateTime();
      LocalDate next = LocalDate.of(day.getYear(), day.getMonth() + 1, day.getDayOfMonth());
      if (!next.isBefore(before)) {
        return all;
      }
      all.add(next);
    }
  }

  /** Nothing done since a day: each last day missed is one of the recurrence from that day. */
  @Property
  @FewestTries(300)
  void missedDaysAsTheRecurrenceHasThem(@ForAll("lives") Life any)
      throws InvalidRecurrenceRuleException {
    int within = any.every().withinMonths();
    Life life =
        new Life(
            any.since(), any.done(), any.asOf(), new Timing.Every(Start.ISSUE, within, 1, within));
    List<LocalDate> expected = new ArrayList<>();
    LocalDate from = life.since();
    for (LocalDate done : life.done()) {
      expected.addAll(recurring(from, within, done));
      // One made early takes nothing off the time to the first.
      from = done.isBefore(from) ? from : done;
    }
    expected.addAll(recurring(from, within, life.asOf()));
    assertThat(life.schedule().missed(life.kept().record(), life.asOf()))
        .extracting(missed -> missed.by().orElseThrow())
        .containsExactlyElementsOf(expected);
    compared("RFC 5545 and RFC 7529 by lib-recur 0.17.1;missed days", expected.size());
    compared("RFC 5545 and RFC 7529 by lib-recur 0.17.1;histories", 1);
    Statistics.collect(expected.isEmpty());
    Statistics.coverage(shares -> shares.check(false).percentage(share -> share > 10));
  }

  /** Each planned day is the next of the recurrence from the one before. */
  @Property(tries = 2000)
  void plannedDaysAsTheRecurrenceHasThem(@ForAll("lives") Life any)
      throws InvalidRecurrenceRuleException {
    int within = any.every().withinMonths();
    Life life =
        new Life(
            any.since(), any.done(), any.asOf(), new Timing.Every(Start.ISSUE, within, 1, within));
    LocalDate to = life.asOf().plusYears(12);
    List<Planned> planned =
        life.schedule().calendar(life.kept().record(), life.asOf(), life.since(), to).stream()
            .filter(each -> !each.task().equals(TaskKey.LEAVE_SERVICE))
            .toList();
    LocalDate from = life.done().isEmpty() ? life.since() : life.done().get(life.done().size() - 1);
    for (Planned each : planned) {
      assertThat(each.on()).isEqualTo(nextOf(from, within));
      from = each.on().isBefore(life.asOf()) ? life.asOf() : each.on();
    }
    assertThat(nextOf(from, within)).isAfter(to);
    compared("RFC 5545 and RFC 7529 by lib-recur 0.17.1;planned days", planned.size());
  }

  private static LocalDate nextOf(LocalDate start, int months)
      throws InvalidRecurrenceRuleException {
    Optional<LocalDate> next =
        recurring(start, months, start.plusMonths(months).plusDays(1)).stream().findFirst();
    return next.orElseThrow();
  }

  private static void compared(String what, long more) {
    COMPARED.computeIfAbsent(what, key -> new AtomicLong()).addAndGet(more);
  }

  /** Only what agreed is counted: the first difference ends a property. */
  @AfterContainer
  static void write() throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add("source;what;agreed");
    COMPARED.forEach((what, count) -> lines.add(what + ";" + count.get()));
    Path file = Path.of(System.getProperty("basedir", ""), "target", "outside-checks-schedule.csv");
    Files.createDirectories(file.getParent());
    Files.write(file, lines);
  }
}
