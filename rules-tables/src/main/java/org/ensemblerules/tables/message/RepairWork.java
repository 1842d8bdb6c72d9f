package org.ensemblerules.tables.message;

import java.time.LocalDate;
import java.util.Objects;
import org.ensemblerules.effect.Doer;

/**
 * Who is to do it.
 *
 * @param doer who; not null
 * @param on on which day; not null
 * @since 0.1
 */
public record RepairWork(Doer doer, LocalDate on) {
  /** Checks for nulls. */
  public RepairWork {
    Objects.requireNonNull(doer, "doer");
    Objects.requireNonNull(on, "on");
  }
}
