package org.ensemblerules.gear;

/**
 * Whether every element of a kind has a part.
 *
 * @since 0.1
 */
public enum Presence {
  /** Every such element has it; its absence is a defect. */
  REQUIRED,
  /** Some have it. */
  OPTIONAL
}
