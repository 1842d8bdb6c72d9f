package org.ensemblerules.measure;

import java.util.Objects;

/**
 * How a measured value is compared with a limit. ASTM E29, as restated, has an absolute and a
 * rounding method; a limit without the method named can be read both ways.
 *
 * <p>The value x is first converted exactly to the unit of the limit L. The absolute method
 * compares x itself with L; the rounding method compares {@code d n}, the multiple of a place d
 * that is nearest to x, by {@link Rounding}. A value equal to the limit conforms.
 *
 * @since 0.1
 */
public sealed interface ComparisonMethod {
  /** The absolute method: the value is not rounded, and any excess fails. */
  record Absolute() implements ComparisonMethod {
    @Override
    public String toString() {
      return "absolute method";
    }
  }

  /**
   * The rounding method: the value is first rounded, once, to the last place the limit is written
   * to.
   *
   * @param ties what becomes of halves; not null
   */
  record RoundedToLimit(Ties ties) implements ComparisonMethod {
    /** Checks for nulls. */
    public RoundedToLimit {
      Objects.requireNonNull(ties, "ties");
    }

    @Override
    public String toString() {
      return "rounding method, to the last place of the limit, " + ties;
    }
  }

  /**
   * The rounding method with a place or interval of its own, for limits whose written zeros do not
   * tell the place (36000 to the nearest 100).
   *
   * @param rounding the rounding, in the limit's unit; not null
   */
  record RoundedTo(Rounding rounding) implements ComparisonMethod {
    /** Checks for nulls. */
    public RoundedTo {
      Objects.requireNonNull(rounding, "rounding");
    }

    @Override
    public String toString() {
      return "rounding method, " + rounding;
    }
  }

  /**
   * The absolute method.
   *
   * @return the method; never null
   */
  static ComparisonMethod absolute() {
    return new Absolute();
  }

  /**
   * The rounding method of ASTM E29 to the last place of the limit, halves to even.
   *
   * @return the method; never null
   */
  static ComparisonMethod roundedToLimit() {
    return new RoundedToLimit(Ties.HALF_EVEN);
  }
}
