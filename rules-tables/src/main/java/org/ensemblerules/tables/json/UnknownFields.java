package org.ensemblerules.tables.json;

/** What becomes of a field that a reader does not know. */
public enum UnknownFields {
  /** It is a fault. */
  REFUSED,
  /** It is passed over, for texts that carry more than what is asked of them. */
  PASSED_OVER
}
