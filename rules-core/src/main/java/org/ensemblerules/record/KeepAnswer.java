package org.ensemblerules.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * Until when a notice is kept.
 *
 * @since 0.1
 */
public sealed interface KeepAnswer {
  /**
   * Through a day.
   *
   * @param through the last day on which it is kept; not null
   * @param rows the rows that ask for it; at least one
   */
  record Through(LocalDate through, List<PfasLawRow> rows) implements KeepAnswer {
    /**
     * Copies the rows.
     *
     * @throws InvalidValueException if there is none
     */
    public Through {
      Objects.requireNonNull(through, "through");
      rows = List.copyOf(rows);
      InvalidValueException.require(!rows.isEmpty(), "Through.rows", rows, "at least one");
    }
  }

  /**
   * For now, since it is not known when it was sold or how long notices are kept there.
   *
   * @param why why, 1 to 200 characters; not null
   */
  record ForNow(String why) implements KeepAnswer {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if it is blank or too long
     */
    public ForNow {
      InvalidValueException.requireText("ForNow.why", why, 200);
    }
  }
}
