package org.ensemblerules.effect;

/**
 * Where an element that is out of service goes next. Of those that a step can be done at, the first
 * named here is the nearest.
 *
 * @since 0.1
 */
public enum Destination {
  /** To whoever wears it, who looks it over. */
  WEARER_CHECK,
  /** Sealed and apart, until it is known what it met. */
  ISOLATE,
  /** To the wash. */
  WASH,
  /** To the department's own gear room, for an inspection, a check or a basic repair. */
  GEAR_ROOM,
  /** To a service provider, or to the department's own shop if that is verified. */
  SERVICE_PROVIDER,
  /** To the manufacturer of this very element. */
  MANUFACTURER,
  /** To whoever keeps the records; the element itself stays where it is. */
  RECORDS,
  /** Kept as it was found, as evidence. */
  EVIDENCE_HOLD,
  /** Nowhere yet: it is in others' hands, lost or stolen. */
  AWAY,
  /** Out of service for good. */
  DISPOSAL
}
