package org.ensemblerules.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Moment;

/**
 * A number of cleanings in any span of months, held day by day against a count of those in the span
 * that ends on that day. Nothing of the schedule's own reasoning is used: only counting.
 */
@PropertyDefaults(tries = 150, edgeCases = EdgeCasesMode.NONE)
class RollingWindowProperties {
  private static final LocalDate ISSUED = LocalDate.of(2019, 8, 31);
  private static final int DAYS = 1300;

  @Provide
  Arbitrary<List<LocalDate>> cleanings() {
    return Arbitraries.integers()
        .between(1, DAYS)
        .map(ISSUED::plusDays)
        .set()
        .ofMaxSize(9)
        .map(days -> days.stream().sorted().toList());
  }

  @Property
  @FewestTries(60)
  @Tag("slow")
  void asCountedDayByDay(
      @ForAll("cleanings") List<LocalDate> cleanings,
      @ForAll @IntRange(min = 1, max = 3) int times,
      @ForAll @IntRange(min = 2, max = 14) int months) {
    Timing timing = new Timing.Every(Start.ISSUE, months, times, months);
    Schedule schedule = Kept.schedule(Kept.cleaning(ElementKind.HELMET, timing));
    Kept kept = Kept.inServiceSince(ElementKind.HELMET, MarkedDate.of(ISSUED));
    for (LocalDate day : cleanings) {
      kept = kept.with(Kept.cleaning(Moment.on(MarkedDate.of(day)), CleaningKind.ADVANCED));
    }
    ServiceRecord record = kept.record();
    List<Missed> missed = schedule.missed(record, ISSUED.plusDays(DAYS));
    int lacking = 0;
    for (int n = 1; n < DAYS; n++) {
      LocalDate day = ISSUED.plusDays(n);
      boolean enough = day.isBefore(ISSUED.plusMonths(months).plusDays(1));
      enough = enough || counted(cleanings, day, months) >= times;
      assertThat(overdue(schedule, record, day)).as("%s", day).isEqualTo(!enough);
      assertThat(missed.stream().anyMatch(each -> lies(day, each))).isEqualTo(!enough);
      lacking += enough ? 0 : 1;
    }
    Statistics.collect(lacking > 0 && lacking < DAYS - 500);
    Statistics.coverage(shares -> shares.check(true).percentage(share -> share > 5));
  }

  private static long counted(List<LocalDate> cleanings, LocalDate day, int months) {
    return cleanings.stream()
        .filter(each -> !each.isAfter(day) && !each.plusMonths(months).isBefore(day))
        .count();
  }

  private static boolean overdue(Schedule schedule, ServiceRecord record, LocalDate day) {
    return schedule.due(record, day).stream()
        .filter(due -> !due.task().equals(TaskKey.LEAVE_SERVICE))
        .anyMatch(due -> due.isOverdue(day));
  }

  private static boolean lies(LocalDate day, Missed missed) {
    Optional<LocalDate> done = missed.done();
    return missed.by().orElseThrow().isBefore(day) && done.map(day::isBefore).orElse(true);
  }
}
