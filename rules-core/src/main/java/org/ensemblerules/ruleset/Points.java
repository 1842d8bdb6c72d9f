package org.ensemblerules.ruleset;

/**
 * In which points one row is looser or stricter than another.
 *
 * @param anyLooser whether it is looser in any point
 * @param anyStricter whether it is stricter in any point
 */
record Points(boolean anyLooser, boolean anyStricter) {
  static Points none() {
    return new Points(false, false);
  }

  /** With a point in which less is stricter. */
  Points least(int value, int other) {
    return new Points(anyLooser || value > other, anyStricter || value < other);
  }

  /** With a point in which more is stricter. */
  Points most(int value, int other) {
    return least(other, value);
  }

  boolean looser() {
    return anyLooser && !anyStricter;
  }
}
