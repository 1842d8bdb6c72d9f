package org.ensemblerules.strength;

/**
 * What can be wrong with a trial at fixed pressure.
 *
 * @since 0.1
 */
public enum HydrostaticFault {
  /** Less pressure than required: holding shows nothing. */
  PRESSURE_TOO_LOW,
  /** More pressure than required: a leak could be of a sound barrier. */
  PRESSURE_TOO_HIGH,
  /** Shorter than required: holding shows nothing. */
  DWELL_TOO_SHORT,
  /** Longer than required: a leak could be of a sound barrier. */
  DWELL_TOO_LONG,
  /** Too few spots of cloth. */
  TOO_FEW_FABRIC_SPOTS,
  /** Too few spots of seam. */
  TOO_FEW_SEAM_SPOTS,
  /** Of some spot nobody has said whether it leaked. */
  SPOT_UNKNOWN
}
