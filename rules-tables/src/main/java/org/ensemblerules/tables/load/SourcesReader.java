package org.ensemblerules.tables.load;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.source.SourceKind;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;
import org.ensemblerules.tables.set.TableRevision;

/** Reads the table of the sources that rows cite. */
final class SourcesReader {
  static final String FILE = "sources.json";
  private static final String TABLE = "sources";

  /** The sources, and the head of their file. */
  record Sources(Map<SourceId, Source> byId, TableRevision revision) {}

  private SourcesReader() {}

  static Optional<Sources> read(JsonCursor at) {
    ObjectCursor file = at.object();
    file.required("table", name -> name.named(Map.of(TABLE, TABLE)));
    FileHead head = FileHead.read(file);
    Map<SourceId, Source> sources = new LinkedHashMap<>();
    for (JsonCursor place : head.rows()) {
      ObjectCursor row = place.object();
      source(row)
          .filter(source -> sources.putIfAbsent(source.id(), source) != null)
          .ifPresent(
              again ->
                  row.fault(
                      FaultCode.DUPLICATE,
                      "id",
                      "a second source " + again.id(),
                      "each source once"));
    }
    return file.make(() -> new Sources(sources, head.revision(TABLE, Optional.empty())));
  }

  static Optional<Source> source(ObjectCursor row) {
    Optional<SourceId> id = row.required("id", ValueReaders::sourceId);
    Optional<SourceKind> kind = row.required("kind", at -> at.enumOf(SourceKind.class));
    Optional<String> title = row.required("title", JsonCursor::text);
    Optional<String> issuer = row.optional("issuer", JsonCursor::text);
    Optional<String> date = row.optional("date", JsonCursor::text);
    Optional<String> seenAt = row.optional("seenAt", JsonCursor::text);
    Optional<LocalDate> seenOn = row.optional("seenOn", ValueReaders::day);
    Optional<List<SourceId>> restates =
        row.optional("restates", at -> at.distinct(ValueReaders::sourceId));
    return row.make(
        () ->
            new Source(
                id.orElseThrow(),
                kind.orElseThrow(),
                title.orElseThrow(),
                issuer,
                date,
                seenAt,
                seenOn,
                new LinkedHashSet<>(restates.orElse(List.of()))));
  }
}
