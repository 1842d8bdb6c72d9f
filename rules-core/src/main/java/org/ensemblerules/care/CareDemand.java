package org.ensemblerules.care;

import java.util.Objects;
import org.ensemblerules.measure.Limit;

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
}
