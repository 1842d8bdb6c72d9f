package org.ensemblerules.fleet;

import com.google.common.collect.ImmutableList;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

/**
 * One year of a plan of replacement.
 *
 * @param year the calendar year
 * @param bought what is bought, the earliest needed first; not null
 * @param spent what that costs; not null
 * @param uncovered what was needed by the end of the year and is not bought yet: nobody wears the
 *     old one past its day, so its holder is without; not null
 * @since 0.1
 */
public record PlanYear(int year, List<Bought> bought, BigDecimal spent, List<Need> uncovered) {
  /**
   * Something bought.
   *
   * @param need what for; not null
   * @param price what it costs in that year; not null
   */
  public record Bought(Need need, BigDecimal price) {
    /** Checks for nulls. */
    public Bought {
      Objects.requireNonNull(need, "need");
      Objects.requireNonNull(price, "price");
    }
  }

  /** Copies the lists. */
  public PlanYear {
    bought = ImmutableList.copyOf(bought);
    Objects.requireNonNull(spent, "spent");
    uncovered = ImmutableList.copyOf(uncovered);
  }
}
