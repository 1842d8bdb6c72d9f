package org.ensemblerules.strength;

/**
 * What the numbers come to, from mildest to strictest.
 *
 * @since 0.1
 */
public enum TestOutcome {
  /** The requirement is met under the rule applied. */
  PASS,
  /** The value is inside the limit, but by less than the guard band. */
  CONDITIONAL_PASS,
  /** The value is outside the limit, but by less than the guard band. */
  CONDITIONAL_FAIL,
  /** The requirement is not met. */
  FAIL;

  /**
   * Returns the stricter of two outcomes.
   *
   * @param other the other; not null
   * @return the stricter; never null
   */
  public TestOutcome stricter(TestOutcome other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
