package org.ensemblerules.gear;

/**
 * What kind of fire fighting an element is built for.
 *
 * @since 0.1
 */
public enum Use {
  /** Structural fire fighting. */
  STRUCTURAL,
  /** Proximity fire fighting, with a radiant reflective outer surface. */
  PROXIMITY
}
