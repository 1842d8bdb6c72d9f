package org.ensemblerules.schedule;

import java.util.Objects;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.inspection.InspectionKind;

/** What on record discharges a task. */
public sealed interface DoneBy {
  /**
   * An inspection that counts.
   *
   * @param kind its kind; no other kind stands in for it; not null
   */
  record Inspected(InspectionKind kind) implements DoneBy {
    /** Checks for null. */
    public Inspected {
      Objects.requireNonNull(kind, "kind");
    }

    @Override
    public String text() {
      return kind + " inspection";
    }
  }

  /**
   * A cleaning that counts.
   *
   * @param kind its kind; no other kind stands in for it; not null
   */
  record Cleaned(CleaningKind kind) implements DoneBy {
    /** Checks for null. */
    public Cleaned {
      Objects.requireNonNull(kind, "kind");
    }

    @Override
    public String text() {
      return kind + " cleaning";
    }
  }

  /**
   * A check passed by somebody permitted.
   *
   * @param check which; not null
   */
  record Checked(Check check) implements DoneBy {
    /** Checks for null. */
    public Checked {
      Objects.requireNonNull(check, "check");
    }

    @Override
    public String text() {
      return check + " passed";
    }
  }

  /**
   * Returns what is done, in words.
   *
   * @return the text; never null
   */
  String text();
}
