package org.ensemblerules.tables.message;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.fleet.CareSoFar;

/**
 * What care cost so far, of all elements together. Advice only.
 *
 * @param cleanings how many cleanings are on record, 0 or more
 * @param repairs how many repairs are on record, 0 or more
 * @param withoutPrice how many of both have no price, 0 or more
 * @param spent what the others cost; not null
 * @param above the elements that cost more than the owner thinks care worth; not null
 * @since 0.1
 */
public record CareSpent(
    long cleanings, long repairs, long withoutPrice, BigDecimal spent, List<CareSoFar> above) {
  /** Copies the list. */
  public CareSpent {
    Objects.requireNonNull(spent, "spent");
    above = List.copyOf(above);
  }
}
