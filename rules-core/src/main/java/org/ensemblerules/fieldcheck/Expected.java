package org.ensemblerules.fieldcheck;

import java.util.Objects;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;

/**
 * What a table asks of a condition.
 *
 * @since 0.1
 */
public sealed interface Expected {
  /**
   * The measured value keeps a limit, compared by the absolute method.
   *
   * @param limit the limit; not null
   */
  record Within(Limit limit) implements Expected {
    /** Checks for null. */
    public Within {
      Objects.requireNonNull(limit, "limit");
    }

    @Override
    public ConditionForm form() {
      return ConditionForm.MEASURED;
    }

    @Override
    public String toString() {
      return limit.toString();
    }
  }

  /** It was so. */
  record Yes() implements Expected {
    @Override
    public ConditionForm form() {
      return ConditionForm.ANSWERED;
    }

    @Override
    public String toString() {
      return "YES";
    }
  }

  /**
   * The count is large enough.
   *
   * @param count the least count, at least 1
   */
  record CountAtLeast(int count) implements Expected {
    /**
     * Checks the count.
     *
     * @throws InvalidValueException if it is below 1
     */
    public CountAtLeast {
      InvalidValueException.require(count >= 1, "CountAtLeast.count", count, "1 or more");
    }

    @Override
    public ConditionForm form() {
      return ConditionForm.COUNTED;
    }

    @Override
    public String toString() {
      return "at least " + count;
    }
  }

  /**
   * Returns how a value must be told to be compared.
   *
   * @return the form; never null
   */
  ConditionForm form();

  /**
   * Compares what is asked with another.
   *
   * @param other the other; not null
   * @return how strict this one is, set against the other; never null
   */
  default Comparison compareStrictness(Expected other) {
    if (this instanceof Within mine && other instanceof Within theirs) {
      return mine.limit().compareStrictness(theirs.limit());
    }
    if (this instanceof CountAtLeast mine && other instanceof CountAtLeast theirs) {
      return Comparison.moreIsStricter(mine.count(), theirs.count());
    }
    return Comparison.sameOnly(equals(other));
  }

  /**
   * Returns on which side a measured value is limited.
   *
   * @return the name of the bound, or of the form where nothing is measured; never null
   */
  default String side() {
    return this instanceof Within within ? within.limit().bound().name() : form().name();
  }
}
