package org.ensemblerules.strength;

/**
 * Why there is no result. None of them is a pass.
 *
 * @since 0.1
 */
public enum NoResultReason {
  /** No row has a requirement for it. */
  NO_REQUIREMENT,
  /** Requirements differ by construction, and the report does not say which. */
  CONSTRUCTION_UNKNOWN,
  /** The method is not in the table of methods. */
  UNKNOWN_METHOD,
  /** The test was made by a method that the requirement does not accept. */
  OTHER_METHOD,
  /** The report does not say where the specimens came from. */
  ORIGIN_UNKNOWN,
  /** New requirements asked of used specimens, or a policy for used gear of new cloth. */
  PURPOSE_DOES_NOT_FIT,
  /** The policy compares with a value when new that is missing or not above zero. */
  VALUE_WHEN_NEW_MISSING,
  /** The report has no specimens. */
  NO_SPECIMENS,
  /** A direction that must be judged has no specimens. */
  DIRECTION_MISSING,
  /** The readings of one report are in several units. */
  MIXED_UNITS,
  /** The readings, the uncertainty or the value when new measure something else than the limit. */
  UNIT_DOES_NOT_FIT,
  /** The requirement is on the highest peaks, and too few are given. */
  PEAKS_MISSING,
  /** Fewer specimens than the method tests, or fewer left than it needs. */
  TOO_FEW_SPECIMENS,
  /** More specimens discarded than kept. */
  TOO_MANY_DISCARDED,
  /** The rule needs the scatter of at least two specimens. */
  TWO_SPECIMENS_NEEDED,
  /** The rule needs the uncertainty of measurement. */
  UNCERTAINTY_MISSING,
  /** The uncertainty is zero or negative. */
  UNCERTAINTY_NOT_POSITIVE,
  /** The decision rule cannot be applied to this limit or statistic. */
  RULE_DOES_NOT_FIT,
  /** The rule reads a table that has no value for so many specimens. */
  NO_TABLE_VALUE
}
