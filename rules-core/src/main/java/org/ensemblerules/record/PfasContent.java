package org.ensemblerules.record;

/** Whether gear contains added per- and polyfluoroalkyl substances (PFAS). */
public enum PfasContent {
  /** It contains added PFAS. */
  ADDED,
  /** It contains none that were added. */
  NONE_ADDED,
  /** Nobody has said. */
  UNKNOWN
}
