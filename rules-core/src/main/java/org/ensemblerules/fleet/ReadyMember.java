package org.ensemblerules.fleet;

import com.google.common.collect.Maps;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.issue.MemberSet;
import org.ensemblerules.issue.SetPiece;

/**
 * A member's set, and the spares that fit in place of what it lacks. A spare is named for one
 * member only; how it meets the rest of the set must be looked at before it is worn.
 *
 * @param set the set; not null
 * @param spares for each kind that is missing or may not be worn, the spare that fits; empty where
 *     none is left; not null
 * @since 0.1
 */
public record ReadyMember(MemberSet set, Map<ElementKind, Optional<SetPiece>> spares) {
  /** Copies the map. */
  public ReadyMember {
    Objects.requireNonNull(set, "set");
    spares = Maps.immutableEnumMap(spares);
  }

  /**
   * Tells whether spares take the place of all that the set lacks.
   *
   * @return true if each kind that is missing or may not be worn has a spare
   */
  public boolean isHelpedBySpares() {
    return spares.values().stream().allMatch(Optional::isPresent);
  }
}
