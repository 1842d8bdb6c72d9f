package org.ensemblerules.gear;

import java.util.Optional;

/**
 * The separable layers of a garment.
 *
 * @since 0.1
 */
public enum LayerKind {
  /** The outermost cloth. */
  OUTER_SHELL,
  /** Moisture barrier and thermal liner joined as one inner garment with one label. */
  LINER_SYSTEM,
  /** The layer that keeps liquids out. */
  MOISTURE_BARRIER,
  /** The insulating layer. */
  THERMAL_LINER,
  /** An additional, removable layer against cold. */
  WINTER_LINER;

  /**
   * Returns the layer whose label also speaks for this one when this one has none of its own.
   *
   * @return the liner system for moisture barrier and thermal liner; otherwise empty
   */
  public Optional<LayerKind> joinedIn() {
    return this == MOISTURE_BARRIER || this == THERMAL_LINER
        ? Optional.of(LINER_SYSTEM)
        : Optional.empty();
  }
}
