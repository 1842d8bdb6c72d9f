package org.ensemblerules.measure;

import java.math.RoundingMode;

/**
 * What becomes of a number exactly half-way between two multiples.
 *
 * @since 0.1
 */
public enum Ties {
  /** To the even multiple: ASTM E29, ISO 80000-1 rule A, 40 CFR 1065.20(e). */
  HALF_EVEN(RoundingMode.HALF_EVEN),
  /** To the multiple of larger magnitude: ISO 80000-1 rule B, 40 CFR 73.12(a). */
  HALF_UP(RoundingMode.HALF_UP);

  private final RoundingMode mode;

  Ties(RoundingMode mode) {
    this.mode = mode;
  }

  RoundingMode mode() {
    return mode;
  }
}
