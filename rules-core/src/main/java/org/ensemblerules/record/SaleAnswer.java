package org.ensemblerules.record;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * Whether gear may be sold at a place on a day, as far as added PFAS goes.
 *
 * @since 0.1
 */
public sealed interface SaleAnswer {
  /**
   * It may not, or it is not known to be free of added PFAS where that may not be sold.
   *
   * @param rows the rows that forbid it; at least one
   */
  record Barred(List<PfasLawRow> rows) implements SaleAnswer {
    /**
     * Copies the rows.
     *
     * @throws InvalidValueException if there is none
     */
    public Barred {
      rows = List.copyOf(rows);
      InvalidValueException.require(!rows.isEmpty(), "Barred.rows", rows, "at least one");
    }
  }

  /**
   * The bans on record do not bar it: they begin later, have ended, or are of what it does not
   * contain. Other laws may.
   *
   * @param rows the bans on record for the place; at least one
   */
  record NotBarredBy(List<PfasLawRow> rows) implements SaleAnswer {
    /**
     * Copies the rows.
     *
     * @throws InvalidValueException if there is none
     */
    public NotBarredBy {
      rows = List.copyOf(rows);
      InvalidValueException.require(!rows.isEmpty(), "NotBarredBy.rows", rows, "at least one");
    }
  }

  /**
   * No ban is on record for the place, which does not say that there is none.
   *
   * @param place the place; not null
   */
  record NotKnown(PlaceCode place) implements SaleAnswer {
    /** Checks for null. */
    public NotKnown {
      Objects.requireNonNull(place, "place");
    }
  }
}
