package org.ensemblerules.inspection;

/**
 * Why an inspection was made.
 *
 * @since 0.1
 */
public enum Occasion {
  /** The element was issued. */
  ON_ISSUE,
  /** A duty period began. */
  START_OF_DUTY,
  /**
   * The element had been used; the inspection came after that use. On a day of more than one use or
   * exposure only their order tells which it came after.
   */
  AFTER_USE,
  /** It was due by the calendar. */
  PERIODIC,
  /** Something looked wrong. */
  SUSPICION,
  /** Gear held after an incident was released. */
  AFTER_RELEASE,
  /**
   * The element had come back from others' hands; the inspection came after that. On a day of more
   * than one return only their order tells which it came after.
   */
  AFTER_RETURN,
  /**
   * It had been cleaned, repaired or tried for a finding; the inspection came after all such work
   * of its day, but for work that has an order after it.
   */
  AFTER_WORK
}
