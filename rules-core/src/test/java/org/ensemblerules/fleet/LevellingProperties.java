package org.ensemblerules.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.source.InvalidValueException;

/** Laws of levelled work, and how much is in time checked against a linear program. */
@PropertyDefaults(edgeCases = EdgeCasesMode.NONE)
class LevellingProperties {
  /** A Thursday; the month ends on the fifth day after it. */
  private static final LocalDate FROM = LocalDate.of(2026, 11, 26);

  private static final int DAYS = 9;
  private static final LocalDate THROUGH = FROM.plusDays(DAYS - 1);

  @Provide
  Arbitrary<List<Work>> work() {
    return Arbitraries.integers()
        .between(-2, DAYS + 2)
        .optional(0.95)
        .list()
        .ofMaxSize(12)
        .map(LevellingProperties::work);
  }

  private static List<Work> work(List<Optional<Integer>> days) {
    List<Work> work = new ArrayList<>();
    for (Optional<Integer> day : days) {
      work.add(
          new Work(
              new ElementId("E-" + work.size()),
              new TaskKey("inspection"),
              Optional.empty(),
              day.map(FROM::plusDays)));
    }
    return work;
  }

  @Provide
  Arbitrary<Capacity> capacities() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 4),
            Arbitraries.integers().between(0, 8).optional(0.5),
            Arbitraries.of(Set.<DayOfWeek>of(), Set.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY)),
            Arbitraries.integers().between(0, DAYS - 1).map(FROM::plusDays).set().ofMaxSize(2))
        .as(
            (perDay, perMonth, closedOn, closed) ->
                new Capacity(
                    perDay,
                    perMonth.map(OptionalInt::of).orElseGet(OptionalInt::empty),
                    closedOn,
                    closed));
  }

  private static Levelled spread(Capacity capacity, List<Work> work) {
    return new Levelling(capacity, FROM, THROUGH).spread(work);
  }

  @Property
  void nothingIsPlannedPastItsDayNorBeyondTheCapacity(
      @ForAll("work") List<Work> work, @ForAll("capacities") Capacity capacity) {
    Levelled levelled = spread(capacity, work);
    Map<LocalDate, Integer> days = new HashMap<>();
    levelled
        .planned()
        .forEach(
            (day, those) -> {
              days.merge(day, those.size(), Integer::sum);
              assertThat(those).hasSizeLessThanOrEqualTo(levelled.perDay());
              assertThat(those)
                  .allMatch(each -> each.by().isPresent() && !each.by().get().isBefore(day));
            });
    levelled
        .late()
        .forEach(late -> late.soonest().ifPresent(day -> days.merge(day, 1, Integer::sum)));
    Map<YearMonth, Integer> months = new HashMap<>();
    days.forEach(
        (day, count) -> {
          months.merge(YearMonth.from(day), count, Integer::sum);
          assertThat(day).isBetween(FROM, THROUGH);
          assertThat(count).isLessThanOrEqualTo(capacity.on(day));
        });
    capacity
        .perMonth()
        .ifPresent(most -> assertThat(months.values()).allMatch(count -> count <= most));
  }

  @Property
  void nothingIsLost(@ForAll("work") List<Work> work, @ForAll("capacities") Capacity capacity) {
    Levelled levelled = spread(capacity, work);
    List<Work> all = new ArrayList<>();
    levelled.planned().values().forEach(all::addAll);
    levelled.late().forEach(late -> all.add(late.work()));
    assertThat(all).containsExactlyInAnyOrderElementsOf(work);
    assertThat(levelled.late())
        .allMatch(
            late ->
                (late.why() == Levelled.Why.OVERDUE)
                    == late.work().by().map(by -> by.isBefore(FROM)).orElse(true));
    assertThat(levelled.byMonth().values().stream().mapToInt(Integer::intValue).sum())
        .isEqualTo(work.size() - levelled.late().size());
  }

  @Property
  void orderNeverMatters(
      @ForAll("work") List<Work> work,
      @ForAll("capacities") Capacity capacity,
      @ForAll Random random) {
    List<Work> stirred = new ArrayList<>(work);
    Collections.shuffle(stirred, random);
    assertThat(spread(capacity, stirred)).isEqualTo(spread(capacity, work));
  }

  /**
   * No spreading does more in time, nor the same work with fewer on each day: the simplex solver of
   * Apache Commons Math finds the most. (Work that is due later might be done with fewer, where a
   * month has no room for all; what is due first is not given up for that.) The program's matrix is
   * that of a network, so that its optimum is a whole number.
   */
  @Property(tries = 200)
  void asMuchIsInTimeAsCanBe(
      @ForAll("work") List<Work> work, @ForAll("capacities") Capacity capacity) {
    Levelled levelled = spread(capacity, work);
    int inTime = levelled.planned().values().stream().mapToInt(List::size).sum();
    assertThat(mostInTime(work, capacity)).isEqualTo(inTime);
    if (levelled.perDay() > 0) {
      assertThat(mostInTime(work, capacity.withPerDay(levelled.perDay()))).isEqualTo(inTime);
      List<Work> planned = levelled.planned().values().stream().flatMap(List::stream).toList();
      assertThat(mostInTime(planned, capacity.withPerDay(levelled.perDay() - 1)))
          .isLessThan(inTime);
    }
  }

  private static int mostInTime(List<Work> work, Capacity capacity) {
    List<Work> able =
        work.stream()
            .filter(each -> each.by().map(by -> !by.isBefore(FROM)).orElse(false))
            .toList();
    if (able.isEmpty()) {
      return 0;
    }
    int variables = able.size() * DAYS;
    List<LinearConstraint> constraints = new ArrayList<>();
    double[] all = new double[variables];
    for (int i = 0; i < able.size(); i++) {
      double[] once = new double[variables];
      double[] never = new double[variables];
      for (int day = 0; day < DAYS; day++) {
        all[i * DAYS + day] = 1;
        once[i * DAYS + day] = 1;
        never[i * DAYS + day] = FROM.plusDays(day).isAfter(able.get(i).by().orElseThrow()) ? 1 : 0;
      }
      constraints.add(new LinearConstraint(once, Relationship.LEQ, 1));
      constraints.add(new LinearConstraint(never, Relationship.LEQ, 0));
    }
    Map<YearMonth, double[]> months = new HashMap<>();
    for (int day = 0; day < DAYS; day++) {
      double[] onDay = new double[variables];
      double[] inMonth =
          months.computeIfAbsent(
              YearMonth.from(FROM.plusDays(day)), month -> new double[variables]);
      for (int i = 0; i < able.size(); i++) {
        onDay[i * DAYS + day] = 1;
        inMonth[i * DAYS + day] = 1;
      }
      constraints.add(
          new LinearConstraint(onDay, Relationship.LEQ, capacity.on(FROM.plusDays(day))));
    }
    capacity
        .perMonth()
        .ifPresent(
            most ->
                months
                    .values()
                    .forEach(
                        inMonth ->
                            constraints.add(
                                new LinearConstraint(inMonth, Relationship.LEQ, most))));
    double optimum =
        new SimplexSolver()
            .optimize(
                new MaxIter(10_000),
                new LinearObjectiveFunction(all, 0),
                new LinearConstraintSet(constraints),
                GoalType.MAXIMIZE,
                new NonNegativeConstraint(true))
            .getValue();
    return (int) Math.round(optimum);
  }

  @Example
  void aCapacityBelowOneDaysNeedNamesWhatIsLate() {
    Levelled levelled =
        spread(Capacity.perDay(1), work(List.of(Optional.of(0), Optional.of(0), Optional.of(0))));
    assertThat(levelled.planned().get(FROM)).hasSize(1);
    assertThat(levelled.late().stream().map(Levelled.Late::soonest))
        .containsExactly(Optional.of(FROM.plusDays(1)), Optional.of(FROM.plusDays(2)));
    assertThat(levelled.late()).allMatch(late -> late.why() == Levelled.Why.NO_ROOM);
  }

  @Example
  void withoutAnyCapacityAllIsLate() {
    Levelled levelled = spread(Capacity.perDay(0), work(List.of(Optional.of(3))));
    assertThat(levelled.planned()).isEmpty();
    assertThat(levelled.late()).hasSize(1);
    assertThat(levelled.late().get(0).soonest()).isEmpty();
  }

  @Example
  void workIsSpreadEvenly() {
    List<Optional<Integer>> days = Collections.nCopies(9, Optional.of(DAYS - 1));
    assertThat(spread(Capacity.perDay(100), work(days)).perDay()).isEqualTo(1);
  }

  @Example
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> Capacity.perDay(-1))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("Capacity.perDay: given -1, allowed: 0 to 1000000");
    assertThatThrownBy(() -> new Levelling(Capacity.perDay(1), FROM, FROM.minusDays(1)))
        .isInstanceOf(InvalidValueException.class);
  }
}
