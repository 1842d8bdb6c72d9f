package org.ensemblerules.care;

/**
 * In what something was washed.
 *
 * @since 0.1
 */
public enum MachineType {
  /** A front-loading washer-extractor. */
  FRONT_LOADING,
  /** A top-loading machine. */
  TOP_LOADING,
  /** By hand, as in a utility sink. */
  BY_HAND,
  /** Nobody has said. */
  UNKNOWN
}
