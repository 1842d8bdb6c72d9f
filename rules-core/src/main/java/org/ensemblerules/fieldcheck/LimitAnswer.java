package org.ensemblerules.fieldcheck;

import java.util.Objects;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.measure.Limit;

/**
 * Whether a value measured in a check is as it must be.
 *
 * @since 0.1
 */
public sealed interface LimitAnswer {
  /**
   * It is.
   *
   * @param row the row; not null
   * @param comparison the numbers compared; not null
   */
  record Meets(CheckLimitRow row, Limit.Answer comparison) implements LimitAnswer {
    /** Checks for nulls. */
    public Meets {
      Objects.requireNonNull(row, "row");
      Objects.requireNonNull(comparison, "comparison");
    }
  }

  /**
   * It is not.
   *
   * @param row the row; not null
   * @param comparison the numbers compared; not null
   */
  record Fails(CheckLimitRow row, Limit.Answer comparison) implements LimitAnswer {
    /** Checks for nulls. */
    public Fails {
      Objects.requireNonNull(row, "row");
      Objects.requireNonNull(comparison, "comparison");
    }

    /**
     * Returns what is wrong with the element.
     *
     * @return the defect; never null
     */
    public DefectKind defect() {
      return row.defect();
    }
  }

  /** No row says what it must be: the value shows nothing. */
  record NoRule() implements LimitAnswer {}
}
