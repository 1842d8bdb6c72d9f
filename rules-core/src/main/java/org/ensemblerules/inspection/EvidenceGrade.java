package org.ensemblerules.inspection;

/**
 * How much a record has of an inspection; the least first.
 *
 * @since 0.1
 */
public enum EvidenceGrade {
  /**
   * Little more than when it was made: nobody is named who made it, or nothing says what came of
   * it. It tells what falls due, marked so, and counts for nothing else.
   */
  DATE_ONLY,
  /**
   * Its doer states that every criterion was looked at and was clear but for the findings named;
   * what came of at least one criterion rests on that.
   */
  SIGNED_OFF,
  /** What came of each criterion that it looked at stands by itself. */
  ITEMIZED
}
