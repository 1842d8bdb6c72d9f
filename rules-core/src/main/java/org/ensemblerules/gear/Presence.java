package org.ensemblerules.gear;

/** Whether every element of a kind has a part. */
public enum Presence {
  /** Every such element has it; its absence is a defect. */
  REQUIRED,
  /** Some have it. */
  OPTIONAL
}
