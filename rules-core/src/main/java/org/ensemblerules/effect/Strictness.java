package org.ensemblerules.effect;

/** Which of two effects asks for less. Most effects cannot be compared: then neither does. */
public final class Strictness {
  private Strictness() {}

  /**
   * Tells whether an effect asks for less than another, so that it may not stand in for it. A note
   * asks for less than anything else, anything else for less than that the whole element leaves
   * service. What is to be done to no more of the element asks for less than that the same is
   * retired; cleaning, repairing or replacing without asking for less than evaluating first.
   *
   * @param effect the effect; not null
   * @param other the other; not null
   * @return true only if it certainly asks for less
   */
  public static boolean asksForLess(Effect effect, Effect other) {
    if (effect.equals(other) || other instanceof Effect.Note) {
      return false;
    }
    if (other.isFinal() || other.isAtLeastAsStrictAs(effect)) {
      return true;
    }
    if (effect.scope().compareTo(other.scope()) > 0) {
      return false;
    }
    if (effect instanceof Effect.Clean clean && other instanceof Effect.Clean cleaned) {
      return asksForLess(clean.kind(), cleaned.kind());
    }
    boolean withoutAsking =
        effect instanceof Effect.Clean
            || effect instanceof Effect.Repair
            || effect instanceof Effect.ReplacePart;
    return withoutAsking && other instanceof Effect.Evaluate;
  }

  /** A lesser kind of cleaning; sanitising compares with none. */
  private static boolean asksForLess(CleaningKind kind, CleaningKind other) {
    return kind != CleaningKind.SANITISING
        && other != CleaningKind.SANITISING
        && kind.compareTo(other) < 0;
  }
}
