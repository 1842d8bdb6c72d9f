package org.ensemblerules.effect;

/**
 * How much one effect asks for, set against another: the one order of effects, for whoever compares
 * them. It is partial. An effect covers another if whoever does what it asks for has nothing left
 * to do for the other; only then may it stand in for it. It can also be higher without doing the
 * work of the other: then it may not stand in for it, nor may the other be taken instead.
 *
 * <p>Everything covers a note. Retiring covers whatever is asked of no more of the element; the
 * same cleaning or evaluation, and a repair of no lower class, cover one on no more of the element;
 * so does an expert's evaluation that of an inspector; replacing a part covers repairing it by no
 * higher class. An evaluation is higher than cleaning, repairing or replacing no more of the
 * element without asking first, and a kind of cleaning than a lesser kind; sanitizing compares with
 * no other.
 *
 * @since 0.1
 */
public enum Strictness {
  /** The same is asked for. */
  SAME,
  /** It asks for everything that the other asks for, and more. */
  COVERING,
  /** It asks for more than the other, but for work of another sort. */
  HIGHER,
  /** The other asks for everything that it asks for, and more. */
  COVERED,
  /** The other asks for more, but for work of another sort. */
  LOWER,
  /** Neither can be said to ask for less than the other. */
  APART;

  static Strictness of(Effect effect, Effect other) {
    if (effect.equals(other)) {
      return SAME;
    } else if (covers(effect, other)) {
      return COVERING;
    } else if (covers(other, effect)) {
      return COVERED;
    } else if (isHigher(effect, other)) {
      return HIGHER;
    }
    return isHigher(other, effect) ? LOWER : APART;
  }

  /**
   * Tells whether an effect asks for everything that the other asks for, so that it can stand in
   * for it.
   *
   * @return true only if nothing that the other asks for is missing
   */
  public boolean covers() {
    return this == SAME || this == COVERING;
  }

  /**
   * Tells whether an effect asks for less than the other, so that it may not be taken instead.
   *
   * @return true only if it certainly asks for less
   */
  public boolean isLess() {
    return this == COVERED || this == LOWER;
  }

  /**
   * Returns the same, seen from the other effect.
   *
   * @return covered for covering, lower for higher, and the other way round; else the same; never
   *     null
   */
  public Strictness seenFromTheOther() {
    return switch (this) {
      case COVERING -> COVERED;
      case COVERED -> COVERING;
      case HIGHER -> LOWER;
      case LOWER -> HIGHER;
      case SAME, APART -> this;
    };
  }

  /** The effects are not equal. */
  private static boolean covers(Effect one, Effect other) {
    if (one instanceof Effect.Note || other instanceof Effect.Note) {
      return other instanceof Effect.Note;
    }
    if (one.scope().compareTo(other.scope()) < 0) {
      return false;
    }
    if (one instanceof Effect.Clean mine && other instanceof Effect.Clean theirs) {
      return mine.kind() == theirs.kind();
    }
    if (one instanceof Effect.Evaluate mine && other instanceof Effect.Evaluate theirs) {
      return mine.check() == theirs.check()
          || (mine.check() == Check.EXPERT_EVALUATION
              && theirs.check() == Check.INSPECTOR_EVALUATION);
    }
    if (one instanceof Effect.Repair mine && other instanceof Effect.Repair theirs) {
      return mine.repairClass().compareTo(theirs.repairClass()) >= 0;
    }
    if (one instanceof Effect.ReplacePart mine) {
      return (other instanceof Effect.ReplacePart theirs
              && mine.repairClass().compareTo(theirs.repairClass()) >= 0)
          || (other instanceof Effect.Repair mended
              && mine.repairClass().compareTo(mended.repairClass()) >= 0);
    }
    return one instanceof Effect.Retire;
  }

  /** Neither effect covers the other. */
  private static boolean isHigher(Effect one, Effect other) {
    if (one.scope().compareTo(other.scope()) < 0) {
      return false;
    }
    if (one instanceof Effect.Clean mine && other instanceof Effect.Clean theirs) {
      return mine.kind() != CleaningKind.SANITIZING
          && theirs.kind() != CleaningKind.SANITIZING
          && mine.kind().compareTo(theirs.kind()) > 0;
    }
    boolean withoutAsking =
        other instanceof Effect.Clean
            || other instanceof Effect.Repair
            || other instanceof Effect.ReplacePart;
    return one instanceof Effect.Evaluate && withoutAsking;
  }
}
