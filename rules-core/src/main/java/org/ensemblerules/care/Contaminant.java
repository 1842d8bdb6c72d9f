package org.ensemblerules.care;

/**
 * What the cleaning of test pieces is measured by.
 *
 * @since 0.1
 */
public enum Contaminant {
  /** Semi-volatile organic chemicals. */
  SEMIVOLATILE_ORGANICS,
  /** Heavy metals. */
  HEAVY_METALS,
  /** Bacteria, for sanitizing. */
  BACTERIA
}
