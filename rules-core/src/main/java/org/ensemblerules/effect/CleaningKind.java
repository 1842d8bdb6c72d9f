package org.ensemblerules.effect;

/**
 * The kinds of cleaning. None of them stands in for another.
 *
 * @since 0.1
 */
public enum CleaningKind {
  /** Exposure reduction by the wearer, at the scene or soon after; not yet clean. */
  EXPOSURE_REDUCTION,
  /** Advanced cleaning: washed with layers apart, within the limits. */
  ADVANCED,
  /** Specialized cleaning of hazardous contamination. */
  SPECIALIZED,
  /** Sanitizing of soft goods, disinfecting of hard surfaces, with advanced cleaning. */
  SANITIZING
}
