package org.ensemblerules.strength;

/**
 * What a reader of a result must know besides the outcome.
 *
 * @since 0.1
 */
public enum Remark {
  /** The requirement is for new material. */
  REQUIREMENT_IS_FOR_NEW_MATERIAL(
      "the requirement is for new material; using it on used gear is the policy named"),
  /** The element cut is to be retired. */
  ELEMENT_CUT_IS_RETIRED("the element that the specimens were cut from is to be retired"),
  /** The result clears no other element. */
  CLEARS_NO_OTHER_ELEMENT("the result clears no other element"),
  /** Specimens were discarded. */
  SPECIMENS_DISCARDED("specimens were discarded by the rules named"),
  /** Accepted because the fabric broke first. */
  FABRIC_BROKE_FIRST(
      "accepted below the limit, as the fabric broke and the seam did not; judge the fabric by its"
          + " own requirement"),
  /** The fabric broke first, but its own strength is missing. */
  FABRIC_STRENGTH_MISSING(
      "the fabric broke first, but its own strength is not given, so that the result stands"),
  /** The fabric of used gear broke first. */
  FABRIC_BROKE_FIRST_IN_USE(
      "the fabric broke first; on used gear it may have been weakened by use, so that the result"
          + " stands"),
  /** The second printed unit would answer otherwise. */
  SECOND_UNIT_WOULD_DIFFER(
      "the number printed in the second unit would answer otherwise; it is information only");

  private final String text;

  Remark(String text) {
    this.text = text;
  }

  /**
   * Returns the remark in words.
   *
   * @return the text; never null
   */
  public String text() {
    return text;
  }
}
