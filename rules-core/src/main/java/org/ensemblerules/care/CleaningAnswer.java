package org.ensemblerules.care;

import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * Whether a cleaning achieved what it must against one contaminant.
 *
 * @since 0.1
 */
public sealed interface CleaningAnswer {
  /**
   * It did.
   *
   * @param row the row; not null
   */
  record Meets(CleaningResultRow row) implements CleaningAnswer {
    /** Checks for null. */
    public Meets {
      Objects.requireNonNull(row, "row");
    }
  }

  /**
   * It did not.
   *
   * @param row the row; not null
   * @param found what was found, in words; not null
   */
  record Fails(CleaningResultRow row, String found) implements CleaningAnswer {
    /** Checks for nulls. */
    public Fails {
      Objects.requireNonNull(row, "row");
      Objects.requireNonNull(found, "found");
    }
  }

  /**
   * Nothing was measured that could tell.
   *
   * @param row the row; not null
   * @param why why not, 1 to 200 characters; not null
   */
  record NoResult(CleaningResultRow row, String why) implements CleaningAnswer {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if it is blank or too long
     */
    public NoResult {
      Objects.requireNonNull(row, "row");
      InvalidValueException.requireText("NoResult.why", why, 200);
    }
  }

  /** No row says what it must be: the measurement shows nothing. */
  record NoRule() implements CleaningAnswer {}
}
