package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.tables.json.Faults;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.message.AnsweredLine;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.message.LineOutcome;
import org.ensemblerules.tables.message.RefusedLine;

/** The JSON form of what came of a line. */
public final class LineTree {
  private LineTree() {}

  /** Writes what came of a line, without the answer. */
  public static JsonNode write(LineOutcome outcome) {
    Fields fields =
        new Fields()
            .put("source", outcome.source())
            .put("line", outcome.line())
            .known("id", outcome.id());
    return outcome instanceof AnsweredLine answered
        ? fields.some("cautions", answered.cautions()).node()
        : fields.list("faults", ((RefusedLine) outcome).faults(), LineTree::write).node();
  }

  private static JsonNode write(JsonFault fault) {
    return new Fields()
        .put("code", fault.code())
        .put("pointer", fault.pointer())
        .put("found", fault.found())
        .put("allowed", fault.allowed())
        .node();
  }

  /** Reads what came of a line that was refused. */
  public static Optional<RefusedLine> readRefused(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> source = object.required("source", JsonCursor::text);
    Optional<Integer> line = object.required("line", value -> value.integer(1, Integer.MAX_VALUE));
    Optional<String> id = object.optional("id", JsonCursor::text);
    String where = source.orElse("") + line.map(number -> ":" + number).orElse("");
    Optional<List<JsonFault>> faults =
        object.required("faults", value -> value.list(entry -> fault(entry, where)));
    return object.make(
        () -> new RefusedLine(source.orElseThrow(), line.orElseThrow(), id, faults.orElseThrow()));
  }

  private static Optional<JsonFault> fault(JsonCursor at, String where) {
    ObjectCursor object = at.object();
    Optional<FaultCode> code = object.required("code", value -> value.enumOf(FaultCode.class));
    Optional<String> pointer = object.required("pointer", JsonCursor::text);
    Optional<String> found = object.required("found", JsonCursor::text);
    Optional<String> allowed = object.required("allowed", JsonCursor::text);
    return object.make(
        () ->
            new JsonFault(
                code.orElseThrow(),
                where,
                pointer.orElseThrow(),
                found.orElseThrow(),
                allowed.orElseThrow()));
  }

  /** Reads what a text is about: the id of its element, or its own; empty where it has neither. */
  public static Optional<String> id(JsonReader reader, String text) {
    return reader
        .open("line", text, new Faults())
        .map(JsonCursor::object)
        .flatMap(
            line ->
                line.has("element")
                    ? line.optional(
                        "element", element -> element.object().optional("id", JsonCursor::text))
                    : line.optional("id", JsonCursor::text));
  }
}
