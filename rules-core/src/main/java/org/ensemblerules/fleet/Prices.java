package org.ensemblerules.fleet;

import com.google.common.collect.ImmutableMap;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.NumberSize;
import org.ensemblerules.source.InvalidValueException;

/**
 * What new gear costs, and how its price grows from year to year.
 *
 * @since 0.1
 */
public final class Prices {
  private static final BigDecimal MOST_GROWTH = BigDecimal.valueOf(100);
  private static final int MOST_YEARS = 50;

  private record Cell(ElementKind kind, Use use, Optional<LayerKind> layer) {
    @Override
    public String toString() {
      return layer.map(of -> of + " of ").orElse("") + kind + " for " + use;
    }
  }

  private final ImmutableMap<Cell, BigDecimal> amounts;
  private final BigDecimal growthPercent;

  private Prices(Map<Cell, BigDecimal> amounts, BigDecimal growthPercent) {
    this.amounts = ImmutableMap.copyOf(amounts);
    this.growthPercent = growthPercent;
  }

  /**
   * Makes prices.
   *
   * @param costs what is known; what is not known has no price; not null
   * @param growthPercent by how many percent prices grow each year, 0 to 100; not null
   * @return the prices; never null
   * @throws InvalidValueException if something has two prices, or the growth is out of range
   */
  public static Prices of(List<UnitCost> costs, BigDecimal growthPercent) {
    Objects.requireNonNull(growthPercent, "growthPercent");
    NumberSize.require("Prices.growthPercent", growthPercent);
    InvalidValueException.require(
        growthPercent.signum() >= 0 && growthPercent.compareTo(MOST_GROWTH) <= 0,
        "Prices.growthPercent",
        growthPercent,
        "0 to 100");
    Map<Cell, BigDecimal> amounts = new HashMap<>();
    for (UnitCost cost : costs) {
      Cell cell = new Cell(cost.kind(), cost.use(), cost.layer());
      InvalidValueException.require(
          amounts.put(cell, cost.amount()) == null, "Prices.costs", cell, "each once");
    }
    return new Prices(amounts, growthPercent);
  }

  /**
   * Returns what something costs today.
   *
   * @param kind the kind of element; not null
   * @param use its use; not null
   * @param layer the layer; empty for the whole element
   * @return the amount; empty if not known
   */
  public Optional<BigDecimal> today(ElementKind kind, Use use, Optional<LayerKind> layer) {
    return Optional.ofNullable(amounts.get(new Cell(kind, use, layer)));
  }

  /**
   * Returns what an amount grows to: {@code A (1 + q / 100)^n}, with the amount A today, q percent
   * a year and n years, exact and then rounded up to two decimals, so that a plan never counts on
   * too little. Compound growth is plain arithmetic.
   *
   * @param today the amount today; not null
   * @param years in how many years, 0 to 50
   * @return the amount then, in two decimals; never null
   * @throws InvalidValueException if the years are out of range
   */
  public BigDecimal in(BigDecimal today, int years) {
    InvalidValueException.require(
        years >= 0 && years <= MOST_YEARS, "Prices.years", years, "0 to " + MOST_YEARS);
    BigDecimal factor = BigDecimal.ONE.add(growthPercent.movePointLeft(2)).pow(years);
    return today.multiply(factor).setScale(2, RoundingMode.CEILING);
  }
}
