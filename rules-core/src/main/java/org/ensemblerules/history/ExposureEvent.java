package org.ensemblerules.history;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.source.InvalidValueException;

/**
 * What an element met.
 *
 * @since 0.1
 */
public sealed interface ExposureEvent extends Event {
  /**
   * It met something that may have soiled, contaminated or damaged it.
   *
   * @param when when; not null
   * @param to what it met; not null
   */
  record Exposed(Moment when, Exposure to) implements ExposureEvent {
    /** Checks for nulls. */
    public Exposed {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(to, "to");
    }

    @Override
    public String name() {
      return "Exposed";
    }
  }

  /**
   * It became known what it met, of which the record had said that nobody had named it. What the
   * record says of an exposure changes only so: what is written over leaves no trace.
   *
   * @param when when it became known; not null
   * @param met when it met that, as the exposure has it; not null
   * @param as what it was; not null
   * @param by who says so; not null
   * @param ground on what ground, 1 to 300 characters; not null
   */
  record ExposureIdentified(Moment when, Moment met, Exposure as, Doer by, String ground)
      implements ExposureEvent {
    /**
     * Checks the values.
     *
     * @throws InvalidValueException if the ground is blank or too long, or what it was is not known
     */
    public ExposureIdentified {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(met, "met");
      Objects.requireNonNull(by, "by");
      requireNamed(as);
      Event.requireWords("ExposureIdentified.ground", ground);
    }

    /**
     * Checks what it was alone.
     *
     * @param as what it was; not null
     * @return what it was
     * @throws InvalidValueException if it is not known
     */
    public static Exposure requireNamed(Exposure as) {
      InvalidValueException.require(
          Objects.requireNonNull(as, "as") != Exposure.UNKNOWN,
          "ExposureIdentified.as",
          as,
          "something that has a name");
      return as;
    }

    @Override
    public String name() {
      return "ExposureIdentified";
    }

    @Override
    public Optional<Doer> doer() {
      return Optional.of(by);
    }
  }
}
