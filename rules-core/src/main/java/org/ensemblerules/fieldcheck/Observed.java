package org.ensemblerules.fieldcheck;

/**
 * What whoever made a check saw, whatever the conditions were.
 *
 * @since 0.1
 */
public enum Observed {
  /** The item passed. */
  PASSED,
  /** The item failed. */
  FAILED
}
