package org.ensemblerules.history;

/**
 * What came of a check.
 *
 * @since 0.1
 */
public enum CheckResult {
  /** Passed. */
  PASSED,
  /** Failed. */
  FAILED,
  /** Made under conditions that do not count; as if not made. */
  VOID
}
