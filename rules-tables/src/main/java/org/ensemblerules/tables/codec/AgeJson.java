package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.Optional;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;
import org.ensemblerules.verdict.LayerAge;

/** The JSON form of by when age takes a layer or an element out of service. */
final class AgeJson {
  private enum Answer {
    LEAVES_ON,
    NO_LIMIT_SET,
    LIMIT_NOT_SEEN,
    DATE_UNKNOWN,
    NO_RULE
  }

  private AgeJson() {}

  /**
   * Reads the age of a layer of an element; empty if it is faulty, or if the element is not known,
   * which is a fault of its own.
   */
  static Optional<LayerAge> read(JsonCursor at, Optional<NamedElement> element) {
    ObjectCursor object = at.object();
    Optional<LayerKind> layer = object.optional("layer", value -> value.enumOf(LayerKind.class));
    Optional<MarkedDate> made = object.required("manufactured", ValueReaders::markedDate);
    Optional<Answer> answer = object.required("answer", value -> value.enumOf(Answer.class));
    if (answer.isEmpty()) {
      return Optional.empty();
    }
    Optional<LocalDate> first =
        answer.get() == Answer.LEAVES_ON
            ? object.required("firstDayOut", DayJson::read)
            : Optional.empty();
    if (answer.get() == Answer.LEAVES_ON) {
      object.required(
          "lastDay",
          value -> Derived.same(value, DayJson::read, first.map(day -> day.minusDays(1))));
    }
    Optional<AgeLimit> limit = limit(object, answer.get());
    Optional<CitedRow> row =
        answer.get() == Answer.NO_RULE ? Optional.empty() : object.required("row", RowJson::read);
    if (element.isEmpty()) {
      return Optional.empty();
    }
    return object.make(
        () ->
            new LayerAge(
                layer,
                made.orElseThrow(),
                row.<AgeAnswer>map(
                        cited -> {
                          AgeLimitRow its =
                              new AgeLimitRow(
                                  cited.provenance(),
                                  element.get().kind(),
                                  element.get().use(),
                                  layer,
                                  limit.orElseThrow());
                          return switch (answer.get()) {
                            case LEAVES_ON -> new AgeAnswer.LeavesOn(its, first.orElseThrow());
                            case NO_LIMIT_SET -> new AgeAnswer.NoLimitSet(its);
                            case LIMIT_NOT_SEEN -> new AgeAnswer.LimitNotSeen(its);
                            default -> new AgeAnswer.DateUnknown(its);
                          };
                        })
                    .orElseGet(AgeAnswer.NoRule::new)));
  }

  private static Optional<AgeLimit> limit(ObjectCursor object, Answer answer) {
    return switch (answer) {
      case LEAVES_ON, DATE_UNKNOWN ->
          object.required(
              "limitYears", value -> value.integer(1, 50).map(years -> new AgeLimit.Years(years)));
      case NO_LIMIT_SET -> Optional.of(new AgeLimit.NoneSet());
      case LIMIT_NOT_SEEN -> Optional.of(new AgeLimit.NotSeen());
      case NO_RULE -> Optional.empty();
    };
  }

  static JsonNode write(LayerAge age) {
    Fields fields =
        new Fields().known("layer", age.layer()).put("manufactured", age.manufactured());
    AgeAnswer answer = age.answer();
    if (answer instanceof AgeAnswer.LeavesOn leaves) {
      fields
          .put("answer", Answer.LEAVES_ON)
          .put("firstDayOut", leaves.firstDayOut())
          .put("lastDay", leaves.lastDay());
      return row(fields, leaves.row());
    } else if (answer instanceof AgeAnswer.NoLimitSet none) {
      return row(fields.put("answer", Answer.NO_LIMIT_SET), none.row());
    } else if (answer instanceof AgeAnswer.LimitNotSeen notSeen) {
      return row(fields.put("answer", Answer.LIMIT_NOT_SEEN), notSeen.row());
    } else if (answer instanceof AgeAnswer.DateUnknown unknown) {
      return row(fields.put("answer", Answer.DATE_UNKNOWN), unknown.row());
    }
    return fields.put("answer", Answer.NO_RULE).node();
  }

  private static JsonNode row(Fields fields, AgeLimitRow row) {
    Optional.of(row.limit())
        .filter(AgeLimit.Years.class::isInstance)
        .map(AgeLimit.Years.class::cast)
        .ifPresent(limit -> fields.put("limitYears", limit.years()));
    return fields.put("row", RowJson.write(row)).node();
  }
}
