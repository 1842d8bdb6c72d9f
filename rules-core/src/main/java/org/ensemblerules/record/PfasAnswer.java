package org.ensemblerules.record;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * What the rows of a place say of a demand on a day.
 *
 * @since 0.1
 */
public sealed interface PfasAnswer {
  /**
   * It is asked.
   *
   * @param rows the rows that ask for it; at least one
   */
  record Asked(List<PfasLawRow> rows) implements PfasAnswer {
    /**
     * Copies the rows.
     *
     * @throws InvalidValueException if there is none
     */
    public Asked {
      rows = List.copyOf(rows);
      InvalidValueException.require(!rows.isEmpty(), "Asked.rows", rows, "at least one");
    }
  }

  /**
   * Rows ask for it on other days, and none on this.
   *
   * @param rows the rows of other days; at least one
   */
  record OnOtherDays(List<PfasLawRow> rows) implements PfasAnswer {
    /**
     * Copies the rows.
     *
     * @throws InvalidValueException if there is none
     */
    public OnOtherDays {
      rows = List.copyOf(rows);
      InvalidValueException.require(!rows.isEmpty(), "OnOtherDays.rows", rows, "at least one");
    }
  }

  /**
   * No row says anything of it for the place. That is no leave to do without.
   *
   * @param place the place; not null
   */
  record NotKnown(PlaceCode place) implements PfasAnswer {
    /** Checks for null. */
    public NotKnown {
      Objects.requireNonNull(place, "place");
    }
  }
}
