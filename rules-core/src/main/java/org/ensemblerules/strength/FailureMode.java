package org.ensemblerules.strength;

/**
 * What gave way.
 *
 * @since 0.1
 */
public enum FailureMode {
  /** The cloth. */
  FABRIC,
  /** The sewing thread. */
  THREAD,
  /** Yarns slipped out of the seam, or the seam opened. */
  SLIPPAGE,
  /** Nobody has said. */
  NOT_RECORDED
}
