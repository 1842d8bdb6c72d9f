package org.ensemblerules.care;

import com.google.common.collect.Sets;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;

/**
 * One step that a row of care routes asks for.
 *
 * @param action what is done; not null
 * @param manner in what manner; given exactly for what cleans
 * @param entries what must be written down; not null
 * @since 0.1
 */
public record RouteStep(CareAction action, Optional<CareManner> manner, Set<CareEntry> entries) {
  /**
   * Checks that only cleaning has a manner.
   *
   * @throws InvalidValueException if cleaning has no manner, or something else has one
   */
  public RouteStep {
    Objects.requireNonNull(action, "action");
    Objects.requireNonNull(manner, "manner");
    entries = Sets.immutableEnumSet(Objects.requireNonNull(entries, "entries"));
    InvalidValueException.require(
        manner.isPresent() == action.cleans(),
        "RouteStep.manner",
        manner.map(CareManner::name).orElse("none"),
        action.cleans() ? "a manner for " + action : "none for " + action);
  }

  /** Whether it asks for at least what another step of the same action does. */
  boolean holds(RouteStep other) {
    return action == other.action
        && (other.manner.isEmpty() || manner.orElseThrow().compareTo(other.manner.get()) >= 0)
        && entries.containsAll(other.entries);
  }

  @Override
  public String toString() {
    return action + manner.map(how -> " " + how).orElse("") + " " + entries;
  }

  /**
   * Compares the step with another.
   *
   * @param other the other; not null
   * @return how strict this one is, set against the other; never null
   */
  public Comparison compareStrictness(RouteStep other) {
    return Comparison.sameOnly(action == other.action)
        .and(Comparison.moreAreStricter(entries, other.entries))
        .and(
            Comparison.moreIsStricter(
                manner.map(CareManner::ordinal).orElse(-1),
                other.manner.map(CareManner::ordinal).orElse(-1)));
  }
}
