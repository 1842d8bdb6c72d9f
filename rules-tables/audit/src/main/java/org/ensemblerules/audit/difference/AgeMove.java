package org.ensemblerules.audit.difference;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.retirement.AgeAnswer;

/**
 * A layer, or an element, that age takes out of service on another day by other rules.
 *
 * @param layer the layer; empty if it is the whole element
 * @param before the answer of the rules now; empty if they expect no label there
 * @param after the answer of the other rules; empty if they expect no label there
 * @since 0.1
 */
public record AgeMove(
    Optional<LayerKind> layer, Optional<AgeAnswer> before, Optional<AgeAnswer> after) {
  /** Checks for nulls. */
  public AgeMove {
    Objects.requireNonNull(layer, "layer");
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
  }

  /**
   * Tells whether the first day out comes sooner by the other rules.
   *
   * @return true if so, or if only they have one where the rules now set no limit
   */
  public boolean sooner() {
    return comesFirst(after, before);
  }

  /**
   * Tells whether the first day out comes later by the other rules.
   *
   * @return true if so, or if they set no limit where the rules now have one
   */
  public boolean later() {
    return comesFirst(before, after);
  }

  boolean moved() {
    return !before.map(AgeAnswer::text).equals(after.map(AgeAnswer::text));
  }

  private static boolean comesFirst(Optional<AgeAnswer> one, Optional<AgeAnswer> other) {
    Optional<LocalDate> day = firstDayOut(one);
    return day.isPresent()
        && (other.orElse(null) instanceof AgeAnswer.NoLimitSet
            || firstDayOut(other).map(than -> day.get().isBefore(than)).orElse(false));
  }

  private static Optional<LocalDate> firstDayOut(Optional<AgeAnswer> answer) {
    return answer
        .filter(AgeAnswer.LeavesOn.class::isInstance)
        .map(leaves -> ((AgeAnswer.LeavesOn) leaves).firstDayOut());
  }
}
