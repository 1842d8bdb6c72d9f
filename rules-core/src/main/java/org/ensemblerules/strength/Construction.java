package org.ensemblerules.strength;

/**
 * How the cloth is made, where requirements differ by it.
 *
 * @since 0.1
 */
public enum Construction {
  /** Woven. */
  WOVEN,
  /** Knit, or woven to stretch. */
  KNIT_OR_STRETCH,
  /** Nonwoven, film or laminate. */
  NONWOVEN
}
