package org.ensemblerules.record;

/**
 * From when a file is kept.
 *
 * @since 0.1
 */
public enum RetentionStart {
  /** From the day the element was retired. */
  RETIREMENT,
  /** From the day the element was disposed of. */
  DISPOSAL
}
