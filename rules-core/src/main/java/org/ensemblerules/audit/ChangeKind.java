package org.ensemblerules.audit;

/** How a row of one set of rules differs from that of another which speaks of the same. */
public enum ChangeKind {
  /** The other set has no row that speaks of this. */
  ADDED,
  /** The set has no row any more that speaks of this. */
  REMOVED,
  /** It asks for more. */
  TIGHTENED,
  /** It asks for less. */
  LOOSENED,
  /** It asks for something else, which is neither more nor less. */
  CHANGED,
  /** It asks for the same in other words, or on another basis. */
  REWORDED
}
