package org.ensemblerules.defect;

import java.util.Optional;

/**
 * The grades by which damage is told that has no length, area or count.
 *
 * @since 0.1
 */
public enum Grade {
  /** Seen only when looked for closely. */
  SLIGHT(GradeScale.SEVERITY, "seen only when looked for closely"),
  /** Plain to see, in a small part. */
  MODERATE(GradeScale.SEVERITY, "plain to see, in a small part"),
  /** Plain to see, in a large part or in depth. */
  SEVERE(GradeScale.SEVERITY, "plain to see, in a large part or in depth"),
  /** No strength check was made on the place. */
  NOT_TRIED(GradeScale.STRENGTH, "no strength check was made on the place"),
  /** Both thumbs were pushed against the place and it held. */
  HELD(GradeScale.STRENGTH, "both thumbs were pushed against the place and it held"),
  /** Both thumbs were pushed against the place and it gave way. */
  GAVE_WAY(GradeScale.STRENGTH, "both thumbs were pushed against the place and it gave way"),
  /** Part of it can be read. */
  PARTLY(GradeScale.LEGIBILITY, "part of it can be read"),
  /** None of what matters can be read. */
  NOT_AT_ALL(GradeScale.LEGIBILITY, "none of what matters can be read"),
  /** A blow that left no mark. */
  NO_MARK(GradeScale.BLOW, "a blow that left no mark"),
  /** A blow that left a mark. */
  MARK(GradeScale.BLOW, "a blow that left a mark");

  private final GradeScale scale;
  private final String meaning;

  Grade(GradeScale scale, String meaning) {
    this.scale = scale;
    this.meaning = meaning;
  }

  /**
   * Returns what a place that nobody has tried is graded once the strength check that its row calls
   * for is passed.
   *
   * @return {@link #HELD} for {@link #NOT_TRIED}; empty for every other grade
   */
  public Optional<Grade> oncePassed() {
    return this == NOT_TRIED ? Optional.of(HELD) : Optional.empty();
  }

  /**
   * Returns what the grade means, as forms and messages say it.
   *
   * @return the meaning, in words; never null
   */
  public String meaning() {
    return meaning;
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
