package org.ensemblerules.fleet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Decides in which year what is bought, in the smallest coin. Each need has its turn by its day; in
 * its turn it takes the last year, not after its own, that has money for it. Where all costs are
 * the same, no other choice covers more in time, nor anything earlier in their place.
 */
final class Purchases {
  private static final int NOT_BOUGHT = -1;

  private final List<Need> needs;
  private final Budget budget;
  private final long[][] price;
  private final int[] neededIn;

  Purchases(List<Need> needs, Prices prices, Budget budget) {
    this.needs = needs;
    this.budget = budget;
    this.price = new long[needs.size()][];
    this.neededIn = new int[needs.size()];
    Map<BigDecimal, long[]> known = new HashMap<>();
    for (int i = 0; i < needs.size(); i++) {
      Need need = needs.get(i);
      price[i] = known.computeIfAbsent(need.today().orElseThrow(), today -> grown(prices, today));
      neededIn[i] = Math.max(0, need.by().orElseThrow().getYear() - budget.firstYear());
    }
  }

  private long[] grown(Prices prices, BigDecimal today) {
    long[] years = new long[budget.years()];
    for (int year = 0; year < years.length; year++) {
      years[year] = Money.coins(prices.in(today, year));
    }
    return years;
  }

  List<PlanYear> years(ReplacementPlan.Pace pace) {
    long most = Money.coins(budget.perYear());
    long[] left = new long[budget.years()];
    Arrays.fill(left, most);
    int[] in = new int[needs.size()];
    Arrays.fill(in, NOT_BOUGHT);
    if (pace == ReplacementPlan.Pace.SMOOTHED) {
      long level = leastLevel(most);
      in = inTime(level);
      for (int i = 0; i < in.length; i++) {
        if (in[i] != NOT_BOUGHT) {
          left[in[i]] -= price[i][in[i]];
        }
      }
    }
    for (int year = 0; year < left.length; year++) {
      for (int i = 0; i < in.length; i++) {
        if (in[i] == NOT_BOUGHT && neededIn[i] <= year && price[i][year] <= left[year]) {
          in[i] = year;
          left[year] -= price[i][year];
        }
      }
    }
    return years(in);
  }

  /**
   * The least found that each year may cost so that all that the whole budget buys in time is still
   * bought in time. Where costs differ, less may do by chance; what is found never lets go of
   * anything.
   */
  private long leastLevel(long most) {
    int[] whole = inTime(most);
    long low = 0;
    long high = most;
    while (low < high) {
      long middle = (low + high) >>> 1;
      if (buysAll(whole, inTime(middle))) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return high;
  }

  private static boolean buysAll(int[] whole, int[] less) {
    return IntStream.range(0, whole.length)
        .allMatch(i -> whole[i] == NOT_BOUGHT || less[i] != NOT_BOUGHT);
  }

  private int[] inTime(long level) {
    long[] left = new long[budget.years()];
    Arrays.fill(left, level);
    int[] in = new int[needs.size()];
    for (int i = 0; i < in.length; i++) {
      int year = neededIn[i];
      while (year >= 0 && price[i][year] > left[year]) {
        year--;
      }
      in[i] = year;
      if (year != NOT_BOUGHT) {
        left[year] -= price[i][year];
      }
    }
    return in;
  }

  private List<PlanYear> years(int[] in) {
    List<PlanYear> years = new ArrayList<>();
    for (int year = 0; year < budget.years(); year++) {
      List<PlanYear.Bought> bought = new ArrayList<>();
      List<Need> uncovered = new ArrayList<>();
      long spent = 0;
      for (int i = 0; i < in.length; i++) {
        if (in[i] == year) {
          bought.add(new PlanYear.Bought(needs.get(i), Money.amount(price[i][year])));
          spent += price[i][year];
        } else if (neededIn[i] <= year && (in[i] == NOT_BOUGHT || in[i] > year)) {
          uncovered.add(needs.get(i));
        }
      }
      years.add(new PlanYear(budget.firstYear() + year, bought, Money.amount(spent), uncovered));
    }
    return years;
  }
}
