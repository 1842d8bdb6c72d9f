package org.ensemblerules.fleet;

import com.google.common.collect.Maps;
import java.math.BigDecimal;
import java.util.Map;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.RepairClass;

/**
 * What cleanings and repairs cost.
 *
 * @param cleaning what one of each kind costs, 0 or more; a kind without a price is counted apart;
 *     not null
 * @param repair what one of each class costs, 0 or more; a class without a price is counted apart;
 *     not null
 */
public record CareCosts(
    Map<CleaningKind, BigDecimal> cleaning, Map<RepairClass, BigDecimal> repair) {
  /**
   * Copies the maps.
   *
   * @throws org.ensemblerules.source.InvalidValueException if an amount is negative or too large
   */
  public CareCosts {
    cleaning = Maps.immutableEnumMap(cleaning);
    repair = Maps.immutableEnumMap(repair);
    cleaning
        .values()
        .forEach(cost -> Money.require("CareCosts.cleaning", cost, 0, Money.MOST_OF_ONE));
    repair.values().forEach(cost -> Money.require("CareCosts.repair", cost, 0, Money.MOST_OF_ONE));
  }
}
