package org.ensemblerules.strength;

import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.source.InvalidValueException;

/**
 * What a trial at fixed pressure shows. It never stands in for a leak check with a liquid.
 *
 * @since 0.1
 */
public sealed interface HydrostaticResult {
  /**
   * No spot leaked, under the conditions required or harder ones.
   *
   * @param row the requirement; not null
   */
  record Held(HydrostaticRow row) implements HydrostaticResult {
    /** Checks for nulls. */
    public Held {
      Objects.requireNonNull(row, "row");
    }
  }

  /**
   * Water came through. A leak under milder conditions than required counts too.
   *
   * @param row the requirement; not null
   * @param spots where it leaked, at least one
   * @param faults what was wrong with the trial besides; not null
   */
  record Leaked(HydrostaticRow row, List<HydrostaticTrial.Spot> spots, Set<HydrostaticFault> faults)
      implements HydrostaticResult {
    /**
     * Copies the spots.
     *
     * @throws InvalidValueException if there is none
     */
    public Leaked {
      Objects.requireNonNull(row, "row");
      spots = List.copyOf(spots);
      InvalidValueException.require(!spots.isEmpty(), "Leaked.spots", spots, "at least one");
      faults = Sets.immutableEnumSet(faults);
    }
  }

  /**
   * The trial shows nothing, as its conditions were not kept. Never a pass.
   *
   * @param row the requirement; not null
   * @param faults what was wrong, at least one
   */
  record ConditionsNotKept(HydrostaticRow row, Set<HydrostaticFault> faults)
      implements HydrostaticResult {
    /**
     * Copies the faults.
     *
     * @throws InvalidValueException if there is none
     */
    public ConditionsNotKept {
      Objects.requireNonNull(row, "row");
      faults = Sets.immutableEnumSet(faults);
      InvalidValueException.require(
          !faults.isEmpty(), "ConditionsNotKept.faults", faults, "at least one");
    }
  }

  /** No row has a requirement; never a pass. */
  record NoRule() implements HydrostaticResult {}
}
