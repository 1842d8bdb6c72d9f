package org.ensemblerules.history;

/** What came of a check. */
public enum CheckResult {
  /** Passed. */
  PASSED,
  /** Failed. */
  FAILED,
  /** Made under conditions that do not count; as if not made. */
  VOID
}
