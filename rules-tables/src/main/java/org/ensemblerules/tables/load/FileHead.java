package org.ensemblerules.tables.load;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;
import org.ensemblerules.tables.set.TableRevision;

/**
 * What every table file has besides its name. A part that is missing was faulty; only the review
 * date may be left out.
 *
 * @param rows the places of its rows
 */
record FileHead(
    String file,
    Optional<Integer> revision,
    Optional<String> about,
    Optional<List<String>> knownGaps,
    Optional<LocalDate> reviewedThrough,
    List<JsonCursor> rows) {
  // Stands in for a faulty date, so that the rows are still looked at; nothing of them is used.
  private static final LocalDate STAND_IN = LocalDate.EPOCH;

  static FileHead read(ObjectCursor file) {
    return new FileHead(
        file.at().source(),
        file.required("revision", at -> at.integer(1, Integer.MAX_VALUE)),
        file.required("about", JsonCursor::text),
        file.required("knownGaps", at -> at.list(JsonCursor::text)),
        file.optional("reviewedThrough", at -> Optional.of(ValueReaders.day(at).orElse(STAND_IN))),
        file.required("rows", at -> Optional.of(at.entries())).orElse(List.of()));
  }

  /** Returns the revision; to be asked for only while making the file. */
  TableRevision revision(String table, Optional<OriginId> edition) {
    return new TableRevision(
        file, table, edition, revision.orElseThrow(), about.orElseThrow(), knownGaps.orElseThrow());
  }
}
