package org.ensemblerules.care;

/**
 * What must be written down about a step of care.
 *
 * @since 0.1
 */
public enum CareEntry {
  /** The day. */
  DATE,
  /** Who did it. */
  DOER,
  /** Why it was done: what the gear met. */
  REASON,
  /** What was found. */
  FINDINGS,
  /** Who keeps it. */
  CUSTODIAN,
  /** What was decided, and by whom. */
  DECISION,
  /** How it was disposed of. */
  DISPOSAL
}
