package org.ensemblerules.retirement;

/**
 * What may become of a retired element.
 *
 * @since 0.1
 */
public enum DisposalRoute {
  /** Destroyed, or cut into pieces that nobody can use for fire fighting. */
  DESTROY,
  /** Handed over as specialized waste. */
  SPECIALIZED_WASTE,
  /** Kept for training without live fire, and for nothing else. */
  NON_LIVE_FIRE_TRAINING,
  /** Kept in custody as it was found, until it is released. */
  CUSTODY
}
