package org.ensemblerules.effect;

/**
 * The plain names of the effects, from the mildest on. The order is for reading, not for laws.
 *
 * @since 0.1
 */
public enum EffectKind {
  /** Acceptable: recorded, and compared next time. */
  NOTE,
  /** Cleaned first. */
  CLEAN,
  /** Repaired. */
  REPAIR,
  /** A part replaced. */
  REPLACE_PART,
  /** Evaluated by a check or test. */
  EVALUATE,
  /** Retired. */
  RETIRE
}
