package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.Optional;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of a row as far as an answer must carry it to outlive the tables. */
public final class RowJson {
  private RowJson() {}

  public static Optional<CitedRow> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<RowKey> key = object.required("key", RowJson::key);
    Optional<OriginId> origin = object.required("origin", ValueReaders::editionId);
    Optional<Basis> basis = object.required("basis", BasisJson::read);
    Derived.text(object, "basisText", basis.map(Basis::text));
    Optional<String> wording = object.optional("wording", JsonCursor::text);
    Optional<Boolean> open = object.required("open", JsonCursor::bool);
    Optional<LocalDate> through = object.required("reviewedThrough", DayJson::read);
    Optional<String> note = object.optional("note", JsonCursor::text);
    return object.make(
        () ->
            new CitedRow(
                new Provenance(
                    key.orElseThrow(),
                    origin.orElseThrow(),
                    basis.orElseThrow(),
                    through.orElseThrow(),
                    note),
                wording,
                open.orElseThrow()));
  }

  static JsonNode write(Row row) {
    return write(row.cited());
  }

  public static JsonNode write(CitedRow row) {
    Provenance provenance = row.provenance();
    return named(provenance)
        .put("basisText", provenance.basis().text())
        .known("wording", row.wording())
        .put("open", row.open())
        .put("reviewedThrough", provenance.reviewedThrough())
        .known("note", provenance.note())
        .node();
  }

  public static Optional<RowKey> key(JsonCursor at) {
    return at.parsed(RowKey::new);
  }

  /** Writes which row it is and on whose word, without what it says. */
  static JsonNode name(Row row) {
    return named(row.provenance()).node();
  }

  /** Reads which row it is, and sees that on whose word is told as well. */
  static Optional<RowKey> readName(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<RowKey> key = object.required("key", RowJson::key);
    object.required("origin", ValueReaders::editionId);
    object.required("basis", BasisJson::read);
    return object.make(key::orElseThrow);
  }

  private static Fields named(Provenance provenance) {
    return new Fields()
        .put("key", provenance.key())
        .put("origin", provenance.origin())
        .put("basis", BasisJson.write(provenance.basis()));
  }
}
