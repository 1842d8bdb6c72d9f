package org.ensemblerules.source;

/**
 * How sure a remembered value is.
 *
 * @since 0.1
 */
public enum Confidence {
  /** Believed without doubt, but no page was found. */
  HIGH,
  /** Believed, with doubt about details. */
  MEDIUM,
  /** Weakly remembered. */
  LOW
}
