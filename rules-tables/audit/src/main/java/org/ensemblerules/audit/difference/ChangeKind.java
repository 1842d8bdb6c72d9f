package org.ensemblerules.audit.difference;

/**
 * What became of a row from one set of rules to the other.
 *
 * @since 0.1
 */
public enum ChangeKind {
  /** Only the later set has a row that speaks of this. */
  ADDED,
  /** Only the earlier set has one. */
  REMOVED,
  /** Both have one, and the later asks for more. */
  TIGHTENED,
  /** Both have one, and the later asks for less. */
  LOOSENED,
  /** Both have one, and no order of strictness decides between them. */
  CHANGED,
  /** Both have one that asks for the same, in other words or on another basis. */
  REWORDED;

  /**
   * Returns the change seen the other way round.
   *
   * @return the kind of the same change from the later set to the earlier; never null
   */
  public ChangeKind reversed() {
    return switch (this) {
      case ADDED -> REMOVED;
      case REMOVED -> ADDED;
      case TIGHTENED -> LOOSENED;
      case LOOSENED -> TIGHTENED;
      case CHANGED, REWORDED -> this;
    };
  }
}
