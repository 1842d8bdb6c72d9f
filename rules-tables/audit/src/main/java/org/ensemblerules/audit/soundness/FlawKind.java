package org.ensemblerules.audit.soundness;

/**
 * What can be wrong with a set of rows.
 *
 * @since 0.1
 */
public enum FlawKind {
  /** Something that elements can be, meet or need, and no row speaks of. */
  GAP(Weight.FAULT),
  /** Two rows of one layer that answer the same question, each in part on its own. */
  OVERLAP(Weight.FAULT),
  /** A row that is never decisive: another of its layer answers first, or is stricter there. */
  MASKED(Weight.FAULT),
  /** A row that says again what another says. */
  DUPLICATE(Weight.FAULT),
  /** A row that says nothing beyond what a wider one says. */
  SUBSUMED(Weight.FAULT),
  /** A row about a part, layer, element or inspection that does not exist. */
  UNREACHABLE(Weight.FAULT),
  /** Bands of one defect at one site that leave extents without an answer. */
  BANDS_DO_NOT_JOIN(Weight.FAULT),
  /** A larger extent that calls for less than a smaller one, by all rows that apply together. */
  SEVERITY_FALLS(Weight.FAULT),
  /** A row that cites a source nobody lists. */
  DANGLING_SOURCE(Weight.FAULT),
  /** A row that says on nobody's word what it says. Only a file can hold such a row. */
  NO_BASIS(Weight.FAULT),
  /** A file, row or value that cannot be read, so that nothing more can be said of it. */
  UNREADABLE(Weight.FAULT),
  /** A site looked at beside others, where nothing that is looked for has a row of its own. */
  SITE_WITHOUT_ROW(Weight.NOTE),
  /** A row of an overlay that asks for no more than rows of other layers do where it applies. */
  ADDS_NOTHING(Weight.NOTE),
  /** Rows that are remembered, and neither name a document nor say what they rest on. */
  FROM_MEMORY(Weight.NOTE),
  /** A row whose review has run out. */
  PAST_REVIEW(Weight.NOTE),
  /** A value printed in two units that cannot be roundings of one and the same size. */
  UNITS_DISAGREE(Weight.NOTE);

  private enum Weight {
    FAULT,
    NOTE
  }

  private final Weight weight;

  FlawKind(Weight weight) {
    this.weight = weight;
  }

  /**
   * Tells whether a set with such a flaw is unsound. What is only noted is the publisher's or the
   * calendar's doing: the rows are as they were meant.
   *
   * @return true for all kinds before {@link #SITE_WITHOUT_ROW}, false from there on
   */
  public boolean isFault() {
    return weight == Weight.FAULT;
  }
}
