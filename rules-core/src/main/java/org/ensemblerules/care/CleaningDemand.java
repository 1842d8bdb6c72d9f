package org.ensemblerules.care;

import java.util.Objects;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;

/**
 * What an edition asks of the cleaning of test pieces.
 *
 * @since 0.1
 */
public sealed interface CleaningDemand {
  /**
   * The average removal keeps a limit, compared by the absolute method.
   *
   * @param limit the limit, a ratio; not null
   */
  record Removal(Limit limit) implements CleaningDemand {
    /** Checks for null. */
    public Removal {
      Objects.requireNonNull(limit, "limit");
    }

    @Override
    public String toString() {
      return "removal " + limit;
    }
  }

  /**
   * The count is lessened by so many whole powers of ten.
   *
   * @param logs the least number, 1 to 20
   */
  record WholeLogs(int logs) implements CleaningDemand {
    /**
     * Checks the number.
     *
     * @throws InvalidValueException if it is out of range
     */
    public WholeLogs {
      InvalidValueException.require(logs >= 1 && logs <= 20, "WholeLogs.logs", logs, "1 to 20");
    }

    @Override
    public String toString() {
      return "reduction at least " + logs + " logs";
    }
  }

  /**
   * Compares the demand with another.
   *
   * @param other the other; not null
   * @return how strict this one is, set against the other; never null
   */
  default Comparison compareStrictness(CleaningDemand other) {
    if (this instanceof Removal mine && other instanceof Removal theirs) {
      return mine.limit().compareStrictness(theirs.limit());
    }
    if (this instanceof WholeLogs mine && other instanceof WholeLogs theirs) {
      return Comparison.moreIsStricter(mine.logs(), theirs.logs());
    }
    return Comparison.UNDECIDED;
  }
}
