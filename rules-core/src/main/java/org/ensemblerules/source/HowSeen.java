package org.ensemblerules.source;

/**
 * How a published value was seen.
 *
 * @since 0.1
 */
public enum HowSeen {
  /** In the document's own text. */
  READ,
  /** On another page that says what the document requires. */
  RESTATED
}
