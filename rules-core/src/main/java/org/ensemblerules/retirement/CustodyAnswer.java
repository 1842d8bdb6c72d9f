package org.ensemblerules.retirement;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * What a record of custody shows of a step.
 *
 * @since 0.1
 */
public sealed interface CustodyAnswer {
  /**
   * The step is shown.
   *
   * @param row the row that asks for it; not null
   */
  record Shown(CustodyStepRow row) implements CustodyAnswer {
    /** Checks for null. */
    public Shown {
      Objects.requireNonNull(row, "row");
    }
  }

  /**
   * The step is not shown.
   *
   * @param row the row that asks for it; not null
   * @param what what is missing or wrong, in words; at least one
   */
  record Missing(CustodyStepRow row, List<String> what) implements CustodyAnswer {
    /**
     * Copies the list.
     *
     * @throws InvalidValueException if nothing is named
     */
    public Missing {
      Objects.requireNonNull(row, "row");
      what = List.copyOf(what);
      InvalidValueException.require(!what.isEmpty(), "Missing.what", what, "at least one");
    }
  }

  /**
   * Custody has not ended, so there is no release yet.
   *
   * @param row the row that asks for one in the end; not null
   */
  record StillHeld(CustodyStepRow row) implements CustodyAnswer {
    /** Checks for null. */
    public StillHeld {
      Objects.requireNonNull(row, "row");
    }
  }
}
