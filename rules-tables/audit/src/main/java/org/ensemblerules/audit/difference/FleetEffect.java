package org.ensemblerules.audit.difference;

/**
 * What other rules do to an element. More than one can be so of the same element.
 *
 * @since 0.1
 */
public enum FleetEffect {
  /** It may be in service by the rules now, and may not by the others. */
  LEAVES_SERVICE,
  /** It may not be in service by the rules now, and may by the others. */
  RETURNS_TO_SERVICE,
  /** The whole element, or a layer of it, is to be retired by the others only. */
  TO_BE_RETIRED,
  /** The whole element, or a layer of it, is to be retired by the rules now only. */
  NO_LONGER_RETIRED,
  /** Something must be done to it that need not be done now. */
  GAINS_ACTION,
  /** Something need not be done to it that must be done now. */
  LOSES_ACTION,
  /** Something becomes due within a year that now is due later or not at all. */
  NEWLY_DUE_WITHIN_A_YEAR,
  /** Something is due sooner than now, or due at all. */
  DUE_SOONER,
  /** Something is due later than now, or no longer due. */
  DUE_LATER,
  /** Age takes it, or a layer of it, out of service sooner than now. */
  OUT_SOONER,
  /** Age takes it, or a layer of it, out of service later than now. */
  OUT_LATER
}
