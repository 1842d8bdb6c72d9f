package org.ensemblerules.strength;

/**
 * The direction of the cloth that a specimen was tested in.
 *
 * @since 0.1
 */
public enum Direction {
  /** Along the warp of a woven cloth. */
  WARP,
  /** Along the fill of a woven cloth. */
  FILL,
  /** Along the length of the goods, for cloth without warp. */
  LENGTHWISE,
  /** Across the length of the goods. */
  CROSSWISE,
  /** Along the wales of a knit. */
  WALE,
  /** Along the courses of a knit. */
  COURSE,
  /** The test has no direction, as a ball burst has none. */
  UNDIRECTED
}
