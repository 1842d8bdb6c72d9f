package org.ensemblerules.tables.message;

import java.util.Objects;
import org.ensemblerules.issue.Join;
import org.ensemblerules.issue.SetRow;
import org.ensemblerules.issue.SizeFit;

/**
 * An entry of what a department decided about sets.
 *
 * @since 0.1
 */
public sealed interface SetEntry {
  /**
   * What a set must have.
   *
   * @param row the row; not null
   */
  record Needs(SetRow row) implements SetEntry {
    /** Checks for null. */
    public Needs {
      Objects.requireNonNull(row, "row");
    }
  }

  /**
   * Where two elements of a set must be shown to meet.
   *
   * @param join the place; not null
   */
  record Meets(Join join) implements SetEntry {
    /** Checks for null. */
    public Meets {
      Objects.requireNonNull(join, "join");
    }
  }

  /**
   * Which sizes fit who needs another.
   *
   * @param fit the sizes; not null
   */
  record Fits(SizeFit fit) implements SetEntry {
    /** Checks for null. */
    public Fits {
      Objects.requireNonNull(fit, "fit");
    }
  }
}
