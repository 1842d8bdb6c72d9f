package org.ensemblerules.care;

import java.util.Objects;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.source.Comparison;

/** What an edition asks of a wash. */
public sealed interface CareDemand {
  /**
   * A measured value keeps a limit, compared by the absolute method.
   *
   * @param measure what is measured; not null
   * @param limit the limit; not null
   */
  record Within(WashMeasure measure, Limit limit) implements CareDemand {
    /** Checks for nulls. */
    public Within {
      Objects.requireNonNull(measure, "measure");
      Objects.requireNonNull(limit, "limit");
    }

    @Override
    public String subject() {
      return measure.name();
    }

    @Override
    public String allowed() {
      return limit.toString();
    }
  }

  /**
   * Something was not done.
   *
   * @param practice what; not null
   */
  record Forbidden(WashPractice practice) implements CareDemand {
    /** Checks for null. */
    public Forbidden {
      Objects.requireNonNull(practice, "practice");
    }

    @Override
    public String subject() {
      return practice.name();
    }

    @Override
    public String allowed() {
      return "NO";
    }
  }

  /**
   * Returns what it is about.
   *
   * @return the name of the measure or practice; never null
   */
  String subject();

  /**
   * Returns what is allowed, in words.
   *
   * @return the text; never null
   */
  String allowed();

  /**
   * Compares the demand with another.
   *
   * @param other the other; not null
   * @return how strict this one is, set against the other; never null
   */
  default Comparison compareStrictness(CareDemand other) {
    if (this instanceof Within mine && other instanceof Within theirs) {
      return Comparison.sameOnly(mine.measure() == theirs.measure())
          .and(mine.limit().compareStrictness(theirs.limit()));
    }
    return Comparison.sameOnly(equals(other));
  }

  /**
   * Returns on which side a measured value is limited.
   *
   * @return the name of the bound; empty where a practice is forbidden; never null
   */
  default String side() {
    return this instanceof Within within ? within.limit().bound().name() : "";
  }
}
