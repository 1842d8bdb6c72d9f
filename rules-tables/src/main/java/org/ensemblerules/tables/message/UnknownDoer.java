package org.ensemblerules.tables.message;

/**
 * What becomes of the name of a doer that the register does not have.
 *
 * @since 0.1
 */
public enum UnknownDoer {
  /** It stands for somebody of whom nothing is known: what they did does not count, and says so. */
  COUNTS_FOR_NOTHING,
  /** It is a fault of the text. */
  REFUSED
}
