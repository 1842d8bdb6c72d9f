package org.ensemblerules.care;

import java.util.Objects;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;

/**
 * How strongly the water was spun out.
 *
 * @since 0.1
 */
public sealed interface Extraction {
  /** It was not spun. */
  record NotSpun() implements Extraction {
    @Override
    public String toString() {
      return "not spun";
    }
  }

  /** Nobody has said. */
  record NotStated() implements Extraction {
    @Override
    public String toString() {
      return "not stated";
    }
  }

  /**
   * The force as the machine states it.
   *
   * @param force a multiple of gravity, zero or more; not null
   */
  record Stated(Quantity force) implements Extraction {
    /**
     * Checks the value.
     *
     * @throws InvalidValueException if it is no multiple of gravity, or negative
     */
    public Stated {
      InvalidValueException.require(
          force.unit().dimension() == Dimension.ACCELERATION_RATIO && force.value().signum() >= 0,
          "Extraction.force",
          force,
          "zero or more, of dimension " + Dimension.ACCELERATION_RATIO);
    }

    @Override
    public String toString() {
      return force.toString();
    }
  }

  /**
   * The force as it follows from drum and speed.
   *
   * @param force the force; not null
   */
  record Computed(ExtractorForce force) implements Extraction {
    /** Checks for null. */
    public Computed {
      Objects.requireNonNull(force, "force");
    }

    @Override
    public String toString() {
      return force.toString();
    }
  }
}
