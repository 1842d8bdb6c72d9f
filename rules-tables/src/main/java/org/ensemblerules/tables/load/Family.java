package org.ensemblerules.tables.load;

import java.util.List;
import org.ensemblerules.source.EditionId;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.json.ObjectCursor;

/**
 * A family of rows and where it stands.
 *
 * @param key its key
 * @param origin the edition of its file
 * @param place its object
 * @param rows its rows, expanded; none if it is faulty
 * @param <R> the rows
 */
record Family<R extends Row>(String key, EditionId origin, ObjectCursor place, List<R> rows) {}
