package org.ensemblerules.strength;

/**
 * Where specimens were cut from. A destructive test ends the element it was cut from, and says
 * nothing about another one by itself.
 *
 * @since 0.1
 */
public enum SpecimenOrigin {
  /** The element asked about, which is then to be retired. */
  THIS_ELEMENT,
  /** Another element of the same model, age and use. */
  SAME_MODEL_AGE_AND_USE,
  /** New cloth of the same kind. */
  NEW_CLOTH
}
