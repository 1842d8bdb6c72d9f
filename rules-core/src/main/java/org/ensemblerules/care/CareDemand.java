package org.ensemblerules.care;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;

/**
 * What an edition asks of a wash.
 *
 * @since 0.1
 */
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

    /** The limit beyond which a value is a finding, where its measure makes findings at all. */
    private Limit findingsBeyond() {
      return unconfirmed.orElse(limit);
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
          .and(mine.findingsBeyond().compareStrictness(theirs.findingsBeyond()));
    }
    return Comparison.sameOnly(equals(other));
  }

  /**
   * Tells whether washes count by this demand that do not count by the other.
   *
   * @param other the other; not null
   * @return true if it certainly lets more count, whatever beyond it is a finding
   */
  default boolean letsMoreCount(CareDemand other) {
    if (this instanceof Within mine && other instanceof Within theirs) {
      return mine.measure() == theirs.measure()
          && mine.limit().compareStrictness(theirs.limit()) == Comparison.MILDER;
    }
    return compareStrictness(other) == Comparison.MILDER;
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
