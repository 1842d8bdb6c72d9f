package org.ensemblerules.retirement;

import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;

/**
 * How old an element or a layer may become, counted from its manufacture.
 *
 * @since 0.1
 */
public sealed interface AgeLimit {
  /**
   * A number of calendar years, as {@link AgeLimitTable#answer} counts them.
   *
   * @param years 1 to 50
   */
  record Years(int years) implements AgeLimit {
    /**
     * Checks the number.
     *
     * @throws InvalidValueException if it is out of range
     */
    public Years {
      InvalidValueException.require(
          years >= 1 && years <= 50, "AgeLimit.years", years, "1 to 50 years");
    }

    @Override
    public String toString() {
      return years + " years";
    }
  }

  /** The edition sets no limit. */
  record NoneSet() implements AgeLimit {
    @Override
    public String toString() {
      return "NONE_SET";
    }
  }

  /** Whether the edition sets a limit was not seen. */
  record NotSeen() implements AgeLimit {
    @Override
    public String toString() {
      return "NOT_SEEN";
    }
  }

  /**
   * Compares the limit with another.
   *
   * @param other the other; not null
   * @return how strict this one is, set against the other; never null
   */
  default Comparison compareStrictness(AgeLimit other) {
    // Any number of years is stricter than none; what was not seen compares with nothing.
    if (this instanceof Years mine && other instanceof Years theirs) {
      return Comparison.lessIsStricter(mine.years(), theirs.years());
    }
    return Comparison.of(
        equals(other) || (this instanceof Years && other instanceof NoneSet),
        equals(other) || (this instanceof NoneSet && other instanceof Years));
  }
}
