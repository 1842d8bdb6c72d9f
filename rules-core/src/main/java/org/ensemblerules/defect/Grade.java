package org.ensemblerules.defect;

/** The grades by which damage is told that has no length, area or count. */
public enum Grade {
  /** Seen only when looked for closely. */
  SLIGHT(GradeScale.SEVERITY),
  /** Plain to see, in a small part. */
  MODERATE(GradeScale.SEVERITY),
  /** Plain to see, in a large part or in depth. */
  SEVERE(GradeScale.SEVERITY),
  /** No strength check was made on the place. */
  NOT_TRIED(GradeScale.STRENGTH),
  /** Both thumbs were pushed against the place and it held. */
  HELD(GradeScale.STRENGTH),
  /** Both thumbs were pushed against the place and it gave way. */
  GAVE_WAY(GradeScale.STRENGTH),
  /** Part of it can be read. */
  PARTLY(GradeScale.LEGIBILITY),
  /** None of what matters can be read. */
  NOT_AT_ALL(GradeScale.LEGIBILITY),
  /** A blow that left no mark. */
  NO_MARK(GradeScale.BLOW),
  /** A blow that left a mark. */
  MARK(GradeScale.BLOW);

  private final GradeScale scale;

  Grade(GradeScale scale) {
    this.scale = scale;
  }

  /**
   * Returns the scale the grade belongs to.
   *
   * @return the scale; never null
   */
  public GradeScale scale() {
    return scale;
  }
}
