package org.ensemblerules.tables.load;

import java.util.List;
import java.util.function.Function;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.json.ObjectCursor;

/**
 * The rows that one entry of a file stands for.
 *
 * @param key the entry's key
 * @param origin the edition it was written for
 * @param place where it stands
 * @param rows its rows
 * @param unconfirmed reads the same rows for an edition whose own text was not seen
 */
record Family<R extends ComparableRow<R>>(
    String key,
    OriginId origin,
    ObjectCursor place,
    List<R> rows,
    Function<OriginId, List<R>> unconfirmed) {
  /** The same rows, marked as carried over into an edition whose own text was not seen. */
  Family<R> carriedInto(OriginId edition) {
    return new Family<>(key, origin, place, unconfirmed.apply(edition), unconfirmed);
  }
}
