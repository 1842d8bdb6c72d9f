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
 * @since 0.1
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
    cleaning.values().forEach(amount -> requireAmount("CareCosts.cleaning", amount));
    repair.values().forEach(amount -> requireAmount("CareCosts.repair", amount));
  }

  /**
   * Checks what one cleaning or repair costs.
   *
   * @param field what it is called in the refusal; not null
   * @param amount the amount, 0 or more; not null
   * @throws org.ensemblerules.source.InvalidValueException if it is negative or too large
   */
  public static void requireAmount(String field, BigDecimal amount) {
    Money.require(field, amount, 0, Money.MOST_OF_ONE);
  }
}
