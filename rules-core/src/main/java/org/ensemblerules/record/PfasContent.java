package org.ensemblerules.record;

/**
 * Whether gear contains added per- and polyfluoroalkyl substances (PFAS).
 *
 * @since 0.1
 */
public enum PfasContent {
  /** It contains added PFAS. */
  ADDED,
  /** It contains none that were added. */
  NONE_ADDED,
  /** Nobody has said. */
  UNKNOWN
}
