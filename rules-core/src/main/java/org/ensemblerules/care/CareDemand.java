package org.ensemblerules.care;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;

/** What an edition asks of a wash. */
public sealed interface CareDemand {
  /**
   * A measured value keeps a limit, compared by the absolute method.
   *
   * @param measure what is measured; not null
   * @param limit the limit; not null
   * @param unconfirmed the wider limit that an edition is believed to set, where it is known to
   *     allow more than before and its number was not seen: a value between both keeps a wash from
   *     counting, and is no finding; empty where the limit is firm; not null
   */
  record Within(WashMeasure measure, Limit limit, Optional<Limit> unconfirmed)
      implements CareDemand {
    /**
     * Checks that the wider limit is one of the same sort.
     *
     * @throws InvalidValueException if it is on another side, of another dimension, or not wider
     */
    public Within {
      Objects.requireNonNull(measure, "measure");
      Objects.requireNonNull(limit, "limit");
      unconfirmed.ifPresent(
          wider ->
              InvalidValueException.require(
                  wider.bound() == limit.bound()
                      && wider.value().unit().dimension() == limit.value().unit().dimension()
                      && limit.compareStrictness(wider) == Comparison.STRICTER,
                  "Within.unconfirmed",
                  wider,
                  "a limit on the same side that is wider than " + limit));
    }

    /**
     * Of a firm limit.
     *
     * @param measure what is measured; not null
     * @param limit the limit; not null
     */
    public Within(WashMeasure measure, Limit limit) {
      this(measure, limit, Optional.empty());
    }

    @Override
    public String subject() {
      return measure.name();
    }

    @Override
    public String allowed() {
      return limit + unconfirmed.map(wider -> ", unconfirmed " + wider).orElse("");
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
          .and(mine.limit().compareStrictness(theirs.limit()))
          .and(firmness(mine.unconfirmed(), theirs.unconfirmed()));
    }
    return Comparison.sameOnly(equals(other));
  }

  /** A firm limit is stricter than the same one beyond which something is unconfirmed. */
  private static Comparison firmness(Optional<Limit> mine, Optional<Limit> theirs) {
    return mine.isPresent() && theirs.isPresent()
        ? mine.get().compareStrictness(theirs.get())
        : Comparison.of(mine.isEmpty(), theirs.isEmpty());
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
