package org.ensemblerules.tables.load;

import java.util.List;
import java.util.Optional;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.json.ObjectCursor;

/**
 * Reads the own fields of a family of rows and expands it, one row for each combination.
 *
 * @param <R> the rows
 */
@FunctionalInterface
interface FamilyReader<R extends ComparableRow<R>> {
  /**
   * Reads a family.
   *
   * @param head what every family has; its provenance may be asked for only while making
   * @param row the family's object; the reader ends with its {@code make}
   * @return the rows; empty if there is a fault
   */
  Optional<List<R>> read(FamilyHead head, ObjectCursor row);
}
