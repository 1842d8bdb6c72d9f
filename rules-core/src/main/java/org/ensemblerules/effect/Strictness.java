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
    if (effect instanceof Effect.Note || other.isFinal()) {
      return true;
    }
    boolean ofNoMore = effect.scope().compareTo(other.scope()) <= 0;
    if (other instanceof Effect.Retire) {
      return ofNoMore;
    }
    if (effect instanceof Effect.Retire || !ofNoMore) {
      return false;
    }
    if (other instanceof Effect.Evaluate evaluated) {
      return !(effect instanceof Effect.Evaluate evaluate) || evaluate.check() == evaluated.check();
    }
    if (effect instanceof Effect.Clean clean && other instanceof Effect.Clean cleaned) {
      return asksForLess(clean.kind(), cleaned.kind());
    }
    if (effect instanceof Effect.Repair repair) {
      return asksForLess(repair, other);
    }
    return effect instanceof Effect.ReplacePart replace
        && other instanceof Effect.ReplacePart replaced
        && replace.repairClass().compareTo(replaced.repairClass()) < 0;
  }

  private static boolean asksForLess(Effect.Repair repair, Effect other) {
    if (other instanceof Effect.Repair repaired) {
      return repair.repairClass().compareTo(repaired.repairClass()) <= 0;
    }
    return other instanceof Effect.ReplacePart replaced
        && repair.repairClass().compareTo(replaced.repairClass()) <= 0;
  }

  /** Of no more of the element: the same kind, or a lesser one. Sanitising compares with none. */
  private static boolean asksForLess(CleaningKind kind, CleaningKind other) {
    return kind == other
        || (kind != CleaningKind.SANITISING
            && other != CleaningKind.SANITISING
            && kind.compareTo(other) < 0);
  }
}
