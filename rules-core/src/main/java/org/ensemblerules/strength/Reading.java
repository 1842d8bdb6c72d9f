package org.ensemblerules.strength;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;

/**
 * What was read from one specimen.
 *
 * @since 0.1
 */
public sealed interface Reading {
  /**
   * One value: the largest force, the pressure at the leak, the time.
   *
   * @param value the value; not negative, unless a ratio or a temperature; not null
   */
  record Single(Quantity value) implements Reading {
    /**
     * Checks the value.
     *
     * @throws InvalidValueException if it is negative and can not be
     */
    public Single {
      requirePossible(value);
    }

    @Override
    public List<Quantity> quantities() {
      return List.of(value);
    }
  }

  /**
   * The peaks of a tearing trace.
   *
   * @param peaks the peaks in any order, at least one, none negative
   */
  record Peaks(List<Quantity> peaks) implements Reading {
    /**
     * Checks the peaks.
     *
     * @throws InvalidValueException if there is none or one is negative
     */
    public Peaks {
      peaks = List.copyOf(peaks);
      InvalidValueException.require(!peaks.isEmpty(), "Reading.peaks", peaks, "at least one");
      peaks.forEach(Reading::requirePossible);
    }

    @Override
    public List<Quantity> quantities() {
      return peaks;
    }
  }

  /**
   * The mean of the highest peaks as the laboratory worked it out.
   *
   * @param count of how many peaks, 2 or more
   * @param mean the mean; not negative; not null
   */
  record MeanOfHighestPeaks(int count, Quantity mean) implements Reading {
    /**
     * Checks the values.
     *
     * @throws InvalidValueException if the count is below 2 or the mean negative
     */
    public MeanOfHighestPeaks {
      InvalidValueException.require(count >= 2, "Reading.count", count, "2 or more");
      requirePossible(mean);
    }

    @Override
    public List<Quantity> quantities() {
      return List.of(mean);
    }
  }

  /**
   * Returns the quantities as reported.
   *
   * @return the quantities, at least one; never null
   */
  List<Quantity> quantities();

  private static void requirePossible(Quantity value) {
    Objects.requireNonNull(value, "Reading.value");
    Dimension dimension = value.unit().dimension();
    InvalidValueException.require(
        value.value().signum() >= 0
            || dimension == Dimension.RATIO
            || dimension == Dimension.TEMPERATURE,
        "Reading.value",
        value,
        "zero or more");
  }
}
