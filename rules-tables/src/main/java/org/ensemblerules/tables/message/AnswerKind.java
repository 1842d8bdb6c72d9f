package org.ensemblerules.tables.message;

/**
 * What was asked.
 *
 * @since 0.1
 */
public enum AnswerKind {
  /** What falls due, as {@code DueJson} writes it. */
  DUE,
  /** How gear is cared for, as {@code CareJson} writes it. */
  CARE,
  /** What becomes of damage, as {@code RepairJson} writes it. */
  REPAIR,
  /** Whether a file is complete, as {@code FileAnswerJson} writes it. */
  FILE,
  /** What a laboratory report comes to, as {@code TestCaseJson} writes it. */
  TEST,
  /** Which steps of custody are on record, as {@code CustodyJson} writes it. */
  CUSTODY,
  /** Which routes of disposal are open, as {@code DisposalJson} writes it. */
  DISPOSAL
}
