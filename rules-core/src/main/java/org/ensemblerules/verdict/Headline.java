package org.ensemblerules.verdict;

/** A verdict in one word, for people. Programs decide by service and actions instead. */
public enum Headline {
  /** Held as found after an incident. */
  PRESERVE,
  /** The element or one of its layers leaves service for good. */
  RETIRE,
  /** Needs further inspection, a test, or an answer. */
  EVALUATE,
  /** Needs a part replaced. */
  REPLACE_PART,
  /** Needs repair. */
  REPAIR,
  /** Must be cleaned first. */
  CLEAN,
  /** Fit for duty as far as it was looked at. */
  SERVICEABLE
}
