package org.ensemblerules.verdict;

/** Whether an element may be in service. */
public enum Service {
  /** It may be worn. */
  IN,
  /** It may not. */
  OUT
}
