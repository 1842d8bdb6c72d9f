package org.ensemblerules.audit.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.audit.json.AuditJson.Answer;
import org.ensemblerules.audit.soundness.AuditReport;
import org.ensemblerules.audit.soundness.Flaw;
import org.ensemblerules.audit.soundness.FlawKind;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.codec.DayJson;
import org.ensemblerules.tables.codec.Derived;
import org.ensemblerules.tables.codec.Fields;
import org.ensemblerules.tables.codec.RowJson;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of what an audit came to. */
final class AuditTree {
  private static final String SOUND = "sound";

  private AuditTree() {}

  /** Writes the report of a set. */
  static JsonNode write(Answer answer) {
    AuditReport report = answer.report();
    Fields proved = new Fields();
    report.proved().forEach((what, count) -> proved.put(what, (long) count));
    return new Fields()
        .known("edition", answer.edition())
        .list("overlays", answer.overlays())
        .put("asOf", report.asOf())
        .put(SOUND, report.isSound())
        .put("rows", report.rows())
        .put("proved", proved.node())
        .list("faults", report.faults(), AuditTree::write)
        .list("notes", report.notes(), AuditTree::write)
        .node();
  }

  private static JsonNode write(Flaw flaw) {
    return new Fields()
        .put("kind", flaw.kind())
        .list("rows", flaw.rows())
        .list("places", flaw.places())
        .put("found", flaw.found())
        .put("expected", flaw.expected())
        .known("reason", flaw.reason())
        .node();
  }

  /** Reads the report of a set. */
  static Optional<Answer> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<OriginId> edition = object.optional("edition", ValueReaders::editionId);
    Optional<List<OriginId>> overlays =
        object.required("overlays", list -> list.distinctOrNone(ValueReaders::editionId));
    Optional<LocalDate> asOf = object.required("asOf", DayJson::read);
    Optional<Integer> rows = object.required("rows", value -> value.integer(0, Integer.MAX_VALUE));
    Optional<Map<String, Long>> proved = object.required("proved", AuditTree::proved);
    Optional<List<Flaw>> faults =
        object.required("faults", list -> list.list(flaw -> flaw(flaw, true)));
    Optional<List<Flaw>> notes =
        object.required("notes", list -> list.list(flaw -> flaw(flaw, false)));
    object.required(
        SOUND, value -> Derived.same(value, JsonCursor::bool, faults.map(List::isEmpty)));
    return object.make(
        () ->
            new Answer(
                edition,
                overlays.orElseThrow().stream().map(OriginId::value).toList(),
                new AuditReport(
                    asOf.orElseThrow(),
                    rows.orElseThrow(),
                    Stream.of(faults, notes).flatMap(list -> list.orElseThrow().stream()).toList(),
                    proved.orElseThrow())));
  }

  /** What is proved is named by the release of then; any name may stand here. */
  private static Optional<Map<String, Long>> proved(JsonCursor at) {
    ObjectCursor object = at.object();
    Map<String, Long> proved = new LinkedHashMap<>();
    for (String what : object.names()) {
      object.required(what, value -> value.count(0)).ifPresent(count -> proved.put(what, count));
    }
    return object.make(() -> proved);
  }

  private static Optional<Flaw> flaw(JsonCursor at, boolean fault) {
    ObjectCursor object = at.object();
    Optional<FlawKind> kind = object.required("kind", value -> kind(value, fault));
    Optional<List<RowKey>> rows = object.required("rows", list -> list.list(RowJson::key));
    Optional<List<String>> places = object.required("places", list -> list.list(JsonCursor::text));
    Optional<String> found = object.required("found", JsonCursor::text);
    Optional<String> expected = object.required("expected", JsonCursor::text);
    Optional<String> reason = object.optional("reason", JsonCursor::text);
    return object.make(
        () ->
            new Flaw(
                kind.orElseThrow(),
                rows.orElseThrow(),
                places.orElseThrow(),
                found.orElseThrow(),
                expected.orElseThrow(),
                reason));
  }

  /** A fault never stands among the notes, where nobody would look for it. */
  private static Optional<FlawKind> kind(JsonCursor at, boolean fault) {
    return at.enumOf(FlawKind.class)
        .flatMap(
            kind ->
                kind.isFault() == fault
                    ? Optional.of(kind)
                    : at.mismatch(fault ? "a kind of fault" : "a kind of note"));
  }
}
