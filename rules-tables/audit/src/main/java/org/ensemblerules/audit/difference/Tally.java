package org.ensemblerules.audit.difference;

import com.google.common.collect.Maps;
import java.util.Map;

/**
 * Numbers of elements.
 *
 * @param elements how many there are
 * @param inServiceBefore how many may be in service by the rules now
 * @param inServiceAfter how many may be in service by the other rules
 * @param changed for how many anything differs
 * @param effects to how many the other rules do what; what they do to none is left out; not null
 * @since 0.1
 */
public record Tally(
    long elements,
    long inServiceBefore,
    long inServiceAfter,
    long changed,
    Map<FleetEffect, Long> effects) {
  /** Copies the map. */
  public Tally {
    effects = Maps.immutableEnumMap(effects);
  }

  /**
   * Returns to how many elements the other rules do something.
   *
   * @param effect what; not null
   * @return the number, 0 if to none
   */
  public long of(FleetEffect effect) {
    return effects.getOrDefault(effect, 0L);
  }
}
