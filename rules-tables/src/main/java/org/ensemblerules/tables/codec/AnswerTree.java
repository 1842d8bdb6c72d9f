package org.ensemblerules.tables.codec;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.message.AnswerKind;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.message.ToldAnswer;
import org.ensemblerules.tables.message.ToldItem;

/** Reads the JSON form of answers, all by one description of where each has what. */
public final class AnswerTree {
  private static final int LONGEST = 64 * 1024 * 1024;
  private static final JsonReader READER = AssessmentTree.readerOfAnswers(LONGEST);

  /**
   * Where the items of a list have what.
   *
   * @param answer the field of its answer; blank if it has none
   * @param day the field of its day; blank if it has none
   * @param texts the fields of its texts
   * @param rows the fields of its rows
   */
  private record Shape(
      String list, String code, String answer, String day, List<String> texts, List<String> rows) {}

  private AnswerTree() {}

  private static List<Shape> shapes(AnswerKind question) {
    List<String> why = List.of("why");
    List<String> row = List.of("row");
    return switch (question) {
      case DUE ->
          List.of(
              new Shape("due", "task", "", "by", why, row),
              new Shape("missed", "task", "", "by", why, row),
              new Shape("exempt", "task", "", "", why, row),
              new Shape("calendar", "task", "", "on", why, row));
      case CARE ->
          List.of(new Shape("steps", "action", "standing", "", List.of("text"), List.of("rows")));
      case REPAIR ->
          List.of(new Shape("orders", "level", "may", "", List.of("text"), List.of("limits")));
      case FILE ->
          List.of(
              new Shape(
                  "items", "item", "answer", "", List.of("missing", "contradictions", "why"), row),
              new Shape("contradictions", "kind", "", "", List.of("found", "allowed"), List.of()));
      case TEST ->
          List.of(
              new Shape("directions", "direction", "outcome", "", List.of("text"), List.of()),
              new Shape("remarks", "remark", "", "", List.of("text"), List.of()));
      case CUSTODY -> List.of(new Shape("steps", "step", "answer", "", List.of("what"), row));
      case DISPOSAL ->
          List.of(new Shape("routes", "route", "answer", "", List.of("whyNot"), List.of("rows")));
    };
  }

  /** The fields that tell the answer as a whole, the first that is there. */
  private static List<String> codes(AnswerKind question) {
    return switch (question) {
      case DUE, CUSTODY, DISPOSAL -> List.of();
      case CARE -> List.of("answer");
      case REPAIR -> List.of("level");
      case FILE -> List.of("complete");
      case TEST -> List.of("outcome", "reason");
    };
  }

  /** Reads an answer. */
  public static Checked<ToldAnswer, JsonFault> read(
      AnswerKind question, String sourceName, String json) {
    return READER.read(sourceName, json, at -> read(question, at));
  }

  private static Optional<ToldAnswer> read(AnswerKind question, JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<NamedElement> element =
        question == AnswerKind.TEST
            ? Optional.empty()
            : object.required("element", ElementJson::named);
    Optional<String> id =
        question == AnswerKind.TEST
            ? object.required("id", JsonCursor::text)
            : element.map(named -> named.id().value());
    Optional<LocalDate> asOf = object.optional("asOf", DayJson::read);
    Optional<String> code =
        codes(question).stream()
            .filter(object::has)
            .findFirst()
            .flatMap(field -> object.optional(field, AnswerTree::code));
    List<ToldItem> items = new ArrayList<>();
    for (Shape shape : shapes(question)) {
      object
          .optional(shape.list(), list -> list.list(entry -> item(shape, entry)))
          .ifPresent(items::addAll);
    }
    return object.make(
        () -> new ToldAnswer(question, id.orElseThrow(), element, asOf, code, items));
  }

  private static Optional<String> code(JsonCursor at) {
    return at.isText() ? at.text() : at.bool().map(String::valueOf);
  }

  private static Optional<ToldItem> item(Shape shape, JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> code = object.required(shape.code(), JsonCursor::text);
    Optional<String> answer = object.optional(shape.answer(), AnswerTree::answer);
    Optional<LocalDate> day = object.optional(shape.day(), DayJson::read);
    List<String> texts =
        shape.texts().stream()
            .flatMap(field -> object.optional(field, AnswerTree::texts).stream())
            .flatMap(List::stream)
            .toList();
    List<CitedRow> rows =
        shape.rows().stream()
            .flatMap(field -> object.optional(field, AnswerTree::rows).stream())
            .flatMap(List::stream)
            .toList();
    return object.make(
        () -> new ToldItem(shape.list(), code.orElseThrow(), answer, day, texts, rows));
  }

  /** A code, or an object that has its own answer. */
  private static Optional<String> answer(JsonCursor at) {
    return at.has("answer") ? at.object().required("answer", JsonCursor::text) : at.text();
  }

  private static Optional<List<String>> texts(JsonCursor at) {
    return at.isList() ? at.list(JsonCursor::text) : at.text().map(List::of);
  }

  private static Optional<List<CitedRow>> rows(JsonCursor at) {
    return at.isList() ? at.list(RowJson::read) : RowJson.read(at).map(List::of);
  }
}
