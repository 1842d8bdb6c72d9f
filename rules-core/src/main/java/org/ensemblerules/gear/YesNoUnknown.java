package org.ensemblerules.gear;

/**
 * An answer that may be missing. Unknown never counts as the milder of the two.
 *
 * @since 0.1
 */
public enum YesNoUnknown {
  /** It is so. */
  YES,
  /** It is not so. */
  NO,
  /** Nobody has said. */
  UNKNOWN
}
