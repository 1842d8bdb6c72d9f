package org.ensemblerules.gear;

/**
 * The kinds of ensemble element.
 *
 * @since 0.1
 */
public enum ElementKind {
  /** Protective coat. */
  COAT,
  /** Protective trousers. */
  TROUSERS,
  /** Protective coverall. */
  COVERALL,
  /** Protective hood. */
  HOOD,
  /** A pair of protective gloves. */
  GLOVES,
  /** A pair of protective boots. */
  FOOTWEAR,
  /** Protective helmet. */
  HELMET,
  /** Drag rescue device: the strap in a coat by which its wearer can be dragged. */
  DRAG_RESCUE_DEVICE,
  /** Proximity helmet shroud, covering head and neck where the helmet does not. */
  SHROUD,
  /** Proximity helmet outer cover. */
  HELMET_COVER
}
