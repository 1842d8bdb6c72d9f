package org.ensemblerules.strength;

/** How the cloth is made, where requirements differ by it. */
public enum Construction {
  /** Woven. */
  WOVEN,
  /** Knit, or woven to stretch. */
  KNIT_OR_STRETCH,
  /** Nonwoven, film or laminate. */
  NONWOVEN
}
