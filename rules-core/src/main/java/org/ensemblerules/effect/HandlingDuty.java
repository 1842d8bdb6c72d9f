package org.ensemblerules.effect;

/**
 * How an element must be handled until the reason is settled.
 *
 * @since 0.1
 */
public enum HandlingDuty {
  /** Keep it apart from other gear and from people. */
  ISOLATE,
  /** Keep it exactly as found; nothing cleaned, repaired, cut up or destroyed. */
  PRESERVE_AS_FOUND,
  /** Do not wash it. */
  DO_NOT_WASH,
  /** Keep it out of living, sleeping, eating and patient areas. */
  KEEP_OUT_OF_LIVING_AREAS,
  /** Handle and mark it as a biological hazard. */
  BIOHAZARD,
  /** If it is kept for training without live fire, mark it so that it is never worn to a fire. */
  MARK_FOR_TRAINING
}
