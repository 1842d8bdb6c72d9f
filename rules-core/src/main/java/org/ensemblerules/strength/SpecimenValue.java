package org.ensemblerules.strength;

import org.ensemblerules.source.InvalidValueException;

/**
 * How one specimen's value is formed from its reading, exactly and in the reading's unit. ASTM
 * D5587, as restated, has both the single highest peak and the mean of the highest; which one
 * counts is told by the requirement.
 *
 * @since 0.1
 */
public sealed interface SpecimenValue {
  /** The reading is the value. */
  record AsRead() implements SpecimenValue {
    @Override
    public String text() {
      return "AS_READ";
    }
  }

  /** The single highest peak. */
  record HighestPeak() implements SpecimenValue {
    @Override
    public String text() {
      return "HIGHEST_PEAK";
    }
  }

  /**
   * The mean of the highest peaks: {@code (p1 + ... + pn) / n} over the n highest of a trace. A
   * trace of fewer gives no result; a mean that the laboratory formed counts if it is of just so
   * many.
   *
   * @param peaks of how many, 2 to 100
   */
  record MeanOfHighestPeaks(int peaks) implements SpecimenValue {
    /**
     * Checks the number.
     *
     * @throws InvalidValueException if the number is out of range
     */
    public MeanOfHighestPeaks {
      InvalidValueException.require(
          peaks >= 2 && peaks <= 100, "SpecimenValue.peaks", peaks, "2 to 100");
    }

    @Override
    public String text() {
      return "MEAN_OF_HIGHEST_PEAKS " + peaks;
    }
  }

  /**
   * Returns the rule on one line.
   *
   * @return the text; never null
   */
  String text();
}
