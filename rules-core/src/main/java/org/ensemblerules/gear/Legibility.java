package org.ensemblerules.gear;

/**
 * How much of a label can be read.
 *
 * @since 0.1
 */
public enum Legibility {
  /** All of it. */
  READABLE,
  /** Some of it. */
  PARTLY_READABLE,
  /** None of what matters. */
  UNREADABLE,
  /** There is no label. */
  MISSING,
  /** Nobody has said. */
  UNKNOWN
}
