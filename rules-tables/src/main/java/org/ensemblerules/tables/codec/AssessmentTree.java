package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.JsonLimits;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.UnknownFields;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.AssessmentBuilder;

/** The JSON form of an assessment. */
public final class AssessmentTree {
  // A credential of an inspection of the history lies 7 deep; the rest is room to grow.
  private static final int DEEPEST = 16;
  private static final int LONGEST_TEXT = 10_000;
  private static final int LONGEST_NUMBER = 100;
  private static final int LONGEST_NAME = 1_000;
  private static final String BESIDE_THE_HISTORY = "inspections";

  private AssessmentTree() {}

  /** Makes a reader of texts of at most a number of characters. */
  public static JsonReader reader(int longest) {
    return reader(longest, UnknownFields.REFUSED);
  }

  /** Makes a reader of answers, of which not everything is asked for. */
  static JsonReader readerOfAnswers(int longest) {
    return reader(longest, UnknownFields.PASSED_OVER);
  }

  private static JsonReader reader(int longest, UnknownFields unknown) {
    return new JsonReader(
        new JsonLimits(DEEPEST, LONGEST_TEXT, LONGEST_NUMBER, LONGEST_NAME, longest), unknown);
  }

  /** Reads an assessment. */
  public static Optional<Assessment> read(JsonCursor at) {
    ObjectCursor object = at.object();
    if (object.has(BESIDE_THE_HISTORY)) {
      object.optional(BESIDE_THE_HISTORY, AssessmentTree::besideTheHistory);
    }
    Optional<Element> element = object.required("element", ElementJson::read);
    Optional<List<Event>> history =
        object.optional(
            "history",
            value -> value.list(entry -> EventReader.read(entry, element.map(Element::named))));
    Optional<List<Finding>> findings =
        object.optional("findings", value -> value.list(FindingJson::read));
    return object.make(
        () -> {
          AssessmentBuilder assessment = Assessment.builder(element.orElseThrow());
          history.ifPresent(events -> assessment.history(History.of(events)));
          findings.orElse(List.of()).forEach(assessment::finding);
          return assessment.build();
        });
  }

  /** Inspections stood in a field of their own once. */
  private static Optional<Assessment> besideTheHistory(JsonCursor at) {
    return at.fault(
        FaultCode.UNKNOWN_FIELD,
        "inspections beside the history",
        "each of them inside \"history\", as an event {\"event\": \"INSPECTED\", \"inspection\":"
            + " {...}} with the inspection as it stands here");
  }

  /** Writes an assessment. */
  public static JsonNode write(Assessment assessment) {
    return new Fields()
        .put("element", ElementJson.write(assessment.element()))
        .some("history", assessment.history().events(), EventWriter::write)
        .some("findings", assessment.findings(), FindingJson::write)
        .node();
  }

  /** Writes an assessment with short names of criteria. */
  public static JsonNode write(Assessment assessment, CriterionNames names) {
    return names.shorten(write(assessment), assessment.element().named());
  }

  /**
   * Writes an assessment with short names of criteria that names doers where a register has them.
   */
  public static JsonNode write(Assessment assessment, NamedDoers doers, CriterionNames names) {
    return doers.shorten(write(assessment, names));
  }

  /** Writes an assessment that names doers where a register has them. */
  public static JsonNode write(Assessment assessment, NamedDoers names) {
    return names.shorten(write(assessment));
  }
}
