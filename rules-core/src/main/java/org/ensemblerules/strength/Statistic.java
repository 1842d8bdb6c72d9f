package org.ensemblerules.strength;

/**
 * What is compared with the limit, of the specimens of one direction that were kept.
 *
 * @since 0.1
 */
public enum Statistic {
  /** Their mean: {@code (x1 + ... + xn) / n}, exact. */
  MEAN_OF_SPECIMENS,
  /**
   * Each on its own. A rule on one value looks at the lowest for a minimum and at the highest for a
   * maximum, unrounded.
   */
  EACH_SPECIMEN
}
