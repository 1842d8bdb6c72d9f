package org.ensemblerules.care;

/**
 * In what manner something is cleaned, the most careful last.
 *
 * @since 0.1
 */
public enum CareManner {
  /** By machine or in a utility sink, as the manufacturer says. */
  AS_MANUFACTURER_SAYS("as its manufacturer says"),
  /** Apart from the other layers: shells with shells, liners with liners, closures fastened. */
  APART("apart from the other layers, like with like, closures fastened"),
  /** By hand only: never washed or dried by machine. */
  BY_HAND("gently by hand, never by machine");

  private final String text;

  CareManner(String text) {
    this.text = text;
  }

  /**
   * Returns the manner, in words.
   *
   * @return the text; never null
   */
  public String text() {
    return text;
  }
}
