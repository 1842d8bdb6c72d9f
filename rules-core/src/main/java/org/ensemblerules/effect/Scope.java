package org.ensemblerules.effect;

/**
 * How much of an element an effect falls on.
 *
 * @since 0.1
 */
public enum Scope {
  /** The part named. */
  PART,
  /** The labeled layer that the part belongs to; the element itself where it has no layers. */
  LAYER,
  /** The whole element. */
  ELEMENT
}
