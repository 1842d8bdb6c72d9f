package org.ensemblerules.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.source.InvalidValueException;

/** Laws of plans, checked on small cases against every choice there is. */
@PropertyDefaults(edgeCases = EdgeCasesMode.NONE)
class ReplacementPlanProperties {
  private static final int FIRST = 2026;
  private static final int YEARS = 4;
  private static final Prices FLAT = prices("0");

  private static Prices prices(String growth) {
    return Prices.of(List.of(), new BigDecimal(growth));
  }

  private static Budget budget(long perYear) {
    return new Budget(BigDecimal.valueOf(perYear), FIRST, YEARS);
  }

  private record Plain(Optional<LocalDate> by, Optional<BigDecimal> today) {}

  @Provide
  Arbitrary<Plain> plain() {
    return Combinators.combine(
            Arbitraries.integers().between(-300, YEARS * 365 + 200).optional(0.9),
            Arbitraries.of("1", "2", "3.50").map(BigDecimal::new).optional(0.9))
        .as((day, cost) -> new Plain(day.map(LocalDate.of(FIRST, 1, 1)::plusDays), cost));
  }

  private static List<Need> needs(List<Plain> plain) {
    List<Need> needs = new ArrayList<>();
    for (Plain each : plain) {
      needs.add(
          new Need(
              new ElementId("E-" + needs.size()),
              new LeavingGroup(
                  ElementKind.COAT, Use.STRUCTURAL, Optional.empty(), Optional.of("M")),
              Whereabouts.with("Member " + needs.size(), "1"),
              each.by(),
              each.today()));
    }
    return needs;
  }

  private static int year(Need need) {
    return Math.max(FIRST, need.by().orElseThrow().getYear());
  }

  @Property
  void aPlanKeepsItsBudgetAndLosesNothing(
      @ForAll @Size(max = 9) List<@From("plain") Plain> plain,
      @ForAll @IntRange(max = 9) int perYear,
      @ForAll ReplacementPlan.Pace pace,
      @ForAll @IntRange(max = 12) int growth) {
    List<Need> needs = needs(plain);
    Prices prices = prices(Integer.toString(growth));
    ReplacementPlan plan = ReplacementPlan.of(needs, prices, budget(perYear), pace);
    Map<Need, Integer> boughtIn = new HashMap<>();
    for (PlanYear year : plan.years()) {
      BigDecimal sum = BigDecimal.ZERO;
      for (PlanYear.Bought bought : year.bought()) {
        assertThat(boughtIn.put(bought.need(), year.year())).isNull();
        assertThat(bought.price())
            .isEqualByComparingTo(
                prices.in(bought.need().today().orElseThrow(), year.year() - FIRST));
        sum = sum.add(bought.price());
      }
      assertThat(year.spent()).isEqualByComparingTo(sum);
      assertThat(sum).isLessThanOrEqualTo(BigDecimal.valueOf(perYear));
    }
    for (PlanYear year : plan.years()) {
      List<Need> without =
          needs.stream()
              .filter(
                  need ->
                      need.by().isPresent()
                          && need.today().isPresent()
                          && year(need) <= year.year()
                          && boughtIn.getOrDefault(need, Integer.MAX_VALUE) > year.year())
              .toList();
      assertThat(year.uncovered()).containsExactlyInAnyOrderElementsOf(without);
    }
    assertThat(
            Stream.of(boughtIn.keySet(), plan.uncovered(), plan.undated(), plan.unpriced())
                .flatMap(Collection::stream))
        .containsExactlyInAnyOrderElementsOf(
            needs.stream()
                .filter(need -> need.by().isEmpty() || year(need) < FIRST + YEARS)
                .toList());
    if (pace == ReplacementPlan.Pace.WHEN_NEEDED) {
      assertThat(boughtIn)
          .allSatisfy((need, year) -> assertThat(year).isGreaterThanOrEqualTo(year(need)));
    }
  }

  @Property
  void orderNeverMatters(
      @ForAll @Size(max = 9) List<@From("plain") Plain> plain,
      @ForAll @IntRange(max = 9) int perYear,
      @ForAll ReplacementPlan.Pace pace,
      @ForAll Random random) {
    List<Need> needs = needs(plain);
    ReplacementPlan plan = ReplacementPlan.of(needs, FLAT, budget(perYear), pace);
    Collections.shuffle(needs, random);
    assertThat(ReplacementPlan.of(needs, FLAT, budget(perYear), pace)).isEqualTo(plan);
  }

  /** Of every choice that the money allows, the one that covers the earliest needed. */
  @Property
  void theEarliestNeededIsBoughtFirst(
      @ForAll @Size(max = 7) List<@From("plain") Plain> plain,
      @ForAll @IntRange(max = 9) int perYear) {
    ReplacementPlan plan =
        ReplacementPlan.of(needs(plain), FLAT, budget(perYear), ReplacementPlan.Pace.WHEN_NEEDED);
    List<Need> waiting = new ArrayList<>();
    for (PlanYear year : plan.years()) {
      waiting.clear();
      year.bought().forEach(bought -> waiting.add(bought.need()));
      waiting.addAll(year.uncovered());
      Collections.sort(waiting);
      String best = "";
      for (int choice = 0; choice < 1 << waiting.size(); choice++) {
        BigDecimal sum = BigDecimal.ZERO;
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < waiting.size(); i++) {
          boolean taken = (choice >> i & 1) == 1;
          text.append(taken ? '1' : '0');
          sum = taken ? sum.add(waiting.get(i).today().orElseThrow()) : sum;
        }
        if (sum.compareTo(BigDecimal.valueOf(perYear)) <= 0
            && text.toString().compareTo(best) > 0) {
          best = text.toString();
        }
      }
      StringBuilder made = new StringBuilder();
      List<Need> bought = year.bought().stream().map(PlanYear.Bought::need).toList();
      waiting.forEach(need -> made.append(bought.contains(need) ? '1' : '0'));
      assertThat(made.toString()).isEqualTo(best);
    }
  }

  /** Where all cost the same: every way to give each a year up to its own, or none. */
  @Property
  void smoothingCoversAsManyInTimeAsCanBeAtTheLeastYearlyCost(
      @ForAll @Size(max = 6) List<@IntRange(max = 3) Integer> neededIn,
      @ForAll @IntRange(max = 4) int perYear) {
    List<Plain> plain =
        neededIn.stream()
            .map(
                year ->
                    new Plain(
                        Optional.of(LocalDate.of(FIRST + year, 5, 1)), Optional.of(BigDecimal.ONE)))
            .toList();
    ReplacementPlan plan =
        ReplacementPlan.of(needs(plain), FLAT, budget(perYear), ReplacementPlan.Pace.SMOOTHED);
    long inTime =
        plan.years().stream()
            .flatMap(year -> year.bought().stream().filter(b -> year(b.need()) >= year.year()))
            .count();
    int most = most(neededIn, 0, new int[YEARS], perYear);
    assertThat(inTime).isEqualTo(most);
    int level = 0;
    while (most(neededIn, 0, new int[YEARS], level) < most) {
      level++;
    }
    for (PlanYear year : plan.years()) {
      assertThat(year.bought().stream().filter(b -> year(b.need()) >= year.year()).count())
          .isLessThanOrEqualTo(level);
    }
  }

  /** Whatever things cost, a plan that spreads them lets nothing go that the budget pays for. */
  @Property
  void smoothingMissesNothingThatTheWholeBudgetBuysInTime(
      @ForAll @Size(max = 9) List<@From("plain") Plain> plain,
      @ForAll @IntRange(max = 9) int perYear) {
    List<Need> needs = needs(plain);
    ReplacementPlan plan =
        ReplacementPlan.of(needs, FLAT, budget(perYear), ReplacementPlan.Pace.SMOOTHED);
    assertThat(inTime(plan)).containsAll(boughtInTimeOneByOne(needs, perYear));
  }

  private static List<Need> inTime(ReplacementPlan plan) {
    return plan.years().stream()
        .flatMap(
            year ->
                year.bought().stream()
                    .map(PlanYear.Bought::need)
                    .filter(need -> year(need) >= year.year()))
        .toList();
  }

  /** By its day each takes the last year, not after its own, that has the money. */
  private static List<Need> boughtInTimeOneByOne(List<Need> needs, int perYear) {
    BigDecimal[] left = new BigDecimal[YEARS];
    Arrays.fill(left, BigDecimal.valueOf(perYear));
    List<Need> bought = new ArrayList<>();
    for (Need need : needs.stream().filter(each -> each.by().isPresent()).sorted().toList()) {
      for (int year = year(need) - FIRST; year >= 0 && year < YEARS; year--) {
        if (need.today().isPresent() && need.today().get().compareTo(left[year]) <= 0) {
          left[year] = left[year].subtract(need.today().get());
          bought.add(need);
          break;
        }
      }
    }
    return bought;
  }

  @Example
  void theEarliestIsNotLetGoForTwoThatCostLess() {
    List<Plain> plain =
        Stream.of("10", "4", "4")
            .map(
                cost ->
                    new Plain(
                        Optional.of(LocalDate.of(FIRST, 5, 1)), Optional.of(new BigDecimal(cost))))
            .toList();
    List<Need> needs = needs(plain);
    ReplacementPlan plan =
        ReplacementPlan.of(needs, FLAT, budget(17), ReplacementPlan.Pace.SMOOTHED);
    assertThat(plan.years().get(0).bought().stream().map(PlanYear.Bought::need))
        .containsExactly(needs.get(0), needs.get(1));
    assertThat(plan.years().get(1).bought().stream().map(PlanYear.Bought::need))
        .containsExactly(needs.get(2));
  }

  private static int most(List<Integer> neededIn, int turn, int[] bought, int perYear) {
    if (turn == neededIn.size()) {
      return 0;
    }
    int best = most(neededIn, turn + 1, bought, perYear);
    for (int year = 0; year <= neededIn.get(turn); year++) {
      if (bought[year] < perYear) {
        bought[year]++;
        best = Math.max(best, 1 + most(neededIn, turn + 1, bought, perYear));
        bought[year]--;
      }
    }
    return best;
  }

  /** Compound growth, worked out a second time in binary numbers. */
  @Property
  void pricesGrowYearByYear(
      @ForAll @IntRange(min = 1, max = 1_000_000) int coins,
      @ForAll @IntRange(max = 100) int percent,
      @ForAll @IntRange(max = 12) int years) {
    BigDecimal then = prices(Integer.toString(percent)).in(BigDecimal.valueOf(coins, 2), years);
    double exact = coins / 100.0 * Math.pow(1 + percent / 100.0, years);
    assertThat(then.doubleValue()).isCloseTo(exact, within(0.011 + exact * 1e-12));
    assertThat(then.doubleValue()).isGreaterThan(exact * (1 - 1e-12) - 1e-9);
  }

  @Example
  void aBudgetOfZeroLeavesEachHolderWithout() {
    List<Need> needs =
        needs(
            List.of(
                new Plain(Optional.of(LocalDate.of(FIRST, 3, 1)), Optional.of(BigDecimal.TEN))));
    ReplacementPlan plan =
        ReplacementPlan.of(needs, FLAT, budget(0), ReplacementPlan.Pace.SMOOTHED);
    assertThat(plan.spent()).isZero();
    assertThat(plan.uncovered().get(0).whereabouts().holder()).hasValue("Member 0");
  }

  @Example
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> budget(-1))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage(
            "Budget.perYear: given -1, allowed: 0 or more, at most 1000000000000, two decimals");
    assertThatThrownBy(
            () ->
                new UnitCost(
                    ElementKind.COAT, Use.STRUCTURAL, Optional.empty(), new BigDecimal("-5")))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("UnitCost.amount: given -5, allowed: above 0, at most 10000000, two decimals");
    assertThatThrownBy(() -> prices("-1")).isInstanceOf(InvalidValueException.class);
    UnitCost coat =
        new UnitCost(ElementKind.COAT, Use.STRUCTURAL, Optional.empty(), BigDecimal.TEN);
    assertThatThrownBy(() -> Prices.of(List.of(coat, coat), BigDecimal.ZERO))
        .isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(
            () -> new CareCosts(Map.of(), Map.of(RepairClass.BASIC, new BigDecimal("-1"))))
        .isInstanceOf(InvalidValueException.class);
  }
}
