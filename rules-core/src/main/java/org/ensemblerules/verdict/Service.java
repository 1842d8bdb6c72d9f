package org.ensemblerules.verdict;

/**
 * Whether an element may be in service.
 *
 * @since 0.1
 */
public enum Service {
  /** It may be worn. */
  IN,
  /** It may not. */
  OUT
}
