package org.ensemblerules.tables.load;

import org.ensemblerules.tables.json.JsonCursor;

/**
 * Counts the rows of a set, once families stand for rows and editions carry over those of others: a
 * short file can stand for more than any machine holds.
 */
final class RowCount {
  /** How many rows a set may have in all. */
  static final int MOST = 500_000;

  private int rows;
  private boolean full;

  /**
   * Adds rows, unless there would be too many; the first that are gives a fault.
   *
   * @param more how many
   * @param place where they come from
   * @return whether they are to be taken
   */
  boolean takes(int more, JsonCursor place) {
    if (full || more > MOST - rows) {
      if (!full) {
        full = true;
        place.fault(
            "entries that stand for more than " + MOST + " rows up to here",
            "at most " + MOST + " rows in a set, those carried over counted");
      }
      return false;
    }
    rows += more;
    return true;
  }
}
