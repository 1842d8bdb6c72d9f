package org.ensemblerules.care;

/**
 * Whether a step of care may be taken when its turn comes, the strictest last.
 *
 * @since 0.1
 */
public enum CareStanding {
  /** It is taken in its turn. */
  IN_TURN,
  /** It is taken only if the expert who found out what the gear met allows it. */
  IF_ALLOWED,
  /** It is not taken, because the gear does not go back into service. */
  BARRED
}
