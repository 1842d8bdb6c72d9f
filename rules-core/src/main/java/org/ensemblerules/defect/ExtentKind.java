package org.ensemblerules.defect;

/**
 * By what the extent of a defect is told.
 *
 * @since 0.1
 */
public enum ExtentKind {
  /** By nothing: its presence decides. */
  PRESENCE,
  /** By its greatest length. */
  LENGTH,
  /** By its area. */
  AREA,
  /** By how many there are. */
  COUNT,
  /** By a grade. */
  GRADE
}
