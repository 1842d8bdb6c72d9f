package org.ensemblerules.retirement;

/**
 * The kinds of reason for which an element is retired, as tables name them.
 *
 * @since 0.1
 */
public enum RetirementReason {
  /** It is older than it may become. */
  OVER_AGE_LIMIT,
  /** It is worn or damaged past what can be repaired safely, or worth the cost. */
  BEYOND_REPAIR,
  /** It is contaminated and cannot be made clean. */
  CANNOT_BE_CLEANED,
  /** It was exposed to an agent of chemical, biological, radiological or nuclear terrorism. */
  CBRN_AGENT,
  /** It never met the edition of the product standard that was in force when it was made. */
  NEVER_COMPLIED,
  /** Its label does not show where it comes from or when it was made, and nothing else does. */
  ORIGIN_NOT_SHOWN,
  /** Something else, by the owner's own decision. */
  OWN_DECISION
}
