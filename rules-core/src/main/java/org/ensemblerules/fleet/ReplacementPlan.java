package org.ensemblerules.fleet;

import com.google.common.collect.ImmutableList;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collector;
import org.ensemblerules.issue.JudgedElement;

/**
 * What to replace in which year under a budget. No plan keeps gear past its day: what is not bought
 * in time leaves somebody without.
 *
 * <p>Something is needed in the calendar year of its first day out, or in the first year if that is
 * past; bought in year n after the first, it costs what {@link Prices#in} has for n. The prices of
 * a year are at most its budget. Counted in the smallest coin, exact. The order of buying is our
 * own; small cases are checked against every choice there is.
 *
 * @param years the years in order; not null
 * @param undated what nobody can tell the day of; it is out until somebody can, and not planned;
 *     not null
 * @param unpriced what has no price, so that it cannot be planned; not null
 * @since 0.1
 */
public record ReplacementPlan(List<PlanYear> years, List<Need> undated, List<Need> unpriced) {
  /** When things are bought. */
  public enum Pace {
    /** In the year in which they are needed, or as soon after that as there is money. */
    WHEN_NEEDED,
    /**
     * In that year or before it, so that no year costs more than it must for all to be bought in
     * time that the whole budget would buy in time. Where all costs are the same, no lower amount a
     * year does; where they differ, one may. Never after that year, but for what no money is left
     * for; that is bought as soon as there is.
     */
    SMOOTHED
  }

  /** Copies the lists. */
  public ReplacementPlan {
    years = ImmutableList.copyOf(years);
    undated = ImmutableList.copyOf(undated);
    unpriced = ImmutableList.copyOf(unpriced);
  }

  /**
   * Returns a collector that keeps what must be replaced by a day, and nothing of other elements.
   *
   * @param prices what new gear costs; not null
   * @param through the last day to look at; not null
   * @return the collector of a list in order; it may be used in parallel; never null
   */
  public static Collector<JudgedElement, ?, List<Need>> needs(Prices prices, LocalDate through) {
    return Collector.of(
        () -> new NeedCounting(prices, through),
        NeedCounting::add,
        NeedCounting::with,
        NeedCounting::needs,
        Collector.Characteristics.UNORDERED);
  }

  /**
   * Makes a plan: the earliest needed first. What is needed after the last year is left out.
   *
   * @param needs what must be replaced, in any order; not null
   * @param prices how prices grow; not null
   * @param budget what may be spent; not null
   * @param pace when things are bought; not null
   * @return the plan; never null
   */
  public static ReplacementPlan of(
      Collection<Need> needs, Prices prices, Budget budget, Pace pace) {
    List<Need> undated = new ArrayList<>();
    List<Need> unpriced = new ArrayList<>();
    List<Need> planned = new ArrayList<>();
    int last = budget.firstYear() + budget.years() - 1;
    for (Need need : ImmutableList.sortedCopyOf(needs)) {
      if (need.by().isEmpty()) {
        undated.add(need);
      } else if (need.by().get().getYear() <= last) {
        (need.today().isEmpty() ? unpriced : planned).add(need);
      }
    }
    return new ReplacementPlan(
        new Purchases(planned, prices, budget).years(pace), undated, unpriced);
  }

  /**
   * Returns what the plan costs.
   *
   * @return the sum of all years; never null
   */
  public BigDecimal spent() {
    return years.stream().map(PlanYear::spent).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /**
   * Returns what is not bought by the end of the plan.
   *
   * @return what the last year leaves uncovered, the earliest needed first; never null
   */
  public List<Need> uncovered() {
    return years.isEmpty() ? List.of() : years.get(years.size() - 1).uncovered();
  }
}
