package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.ruleset.AdoptionKind;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;
import org.ensemblerules.tables.message.PlaceRule;
import org.ensemblerules.tables.message.PlaceRules;

/** The JSON form of what the law of a place asks to go by. */
public final class AdoptionTree {
  private static final String SUBJECT = "subject";
  private static final String RULES = "rules";

  private enum Known {
    RULES,
    NOT_KNOWN
  }

  private AdoptionTree() {}

  /** Writes the answer. */
  public static JsonNode write(PlaceRules answer) {
    return new Fields()
        .put("place", answer.place())
        .put("asOf", answer.asOf())
        .known("bought", answer.bought())
        .list("subjects", answer.subjects().entrySet(), AdoptionTree::write)
        .node();
  }

  private static JsonNode write(Map.Entry<Subject, List<PlaceRule>> subject) {
    List<PlaceRule> rules = subject.getValue();
    return new Fields()
        .put(SUBJECT, subject.getKey())
        .put("answer", rules.isEmpty() ? Known.NOT_KNOWN : Known.RULES)
        .some(RULES, rules, AdoptionTree::write)
        .node();
  }

  private static JsonNode write(PlaceRule rule) {
    return new Fields()
        .put("where", rule.where())
        .put("kind", rule.kind())
        .known("edition", rule.edition())
        .known("from", rule.from())
        .known("before", rule.before())
        .put("covers", rule.covers())
        .put("sinceKnown", rule.sinceKnown())
        .put("stale", rule.stale())
        .put("row", RowJson.write(rule.row()))
        .node();
  }

  /** Reads the answer. */
  public static Optional<PlaceRules> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<PlaceCode> place = object.required("place", value -> value.parsed(PlaceCode::new));
    Optional<LocalDate> asOf = object.required("asOf", DayJson::read);
    Optional<LocalDate> bought = object.optional("bought", DayJson::read);
    Map<Subject, List<PlaceRule>> subjects = new EnumMap<>(Subject.class);
    object.required("subjects", list -> list.list(each -> subject(each, subjects)));
    return object.make(
        () -> new PlaceRules(place.orElseThrow(), asOf.orElseThrow(), bought, subjects));
  }

  private static Optional<Subject> subject(JsonCursor at, Map<Subject, List<PlaceRule>> subjects) {
    ObjectCursor object = at.object();
    Optional<Subject> subject = object.required(SUBJECT, value -> value.enumOf(Subject.class));
    Optional<Known> known = object.required("answer", value -> value.enumOf(Known.class));
    Optional<List<PlaceRule>> rules =
        known.filter(Known.RULES::equals).isPresent()
            ? object.required(RULES, list -> list.distinct(AdoptionTree::rule))
            : Optional.of(List.of());
    Optional<Subject> made = object.make(subject::orElseThrow);
    if (made.isPresent() && subjects.put(made.get(), rules.orElseThrow()) != null) {
      object.fault(FaultCode.DUPLICATE, SUBJECT, made.get() + " again", "each subject once");
      return Optional.empty();
    }
    return made;
  }

  private static Optional<PlaceRule> rule(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> where = object.required("where", JsonCursor::text);
    Optional<AdoptionKind> kind =
        object.required("kind", value -> value.enumOf(AdoptionKind.class));
    Optional<OriginId> edition = object.optional("edition", ValueReaders::editionId);
    Optional<LocalDate> from = object.optional("from", DayJson::read);
    Optional<LocalDate> before = object.optional("before", DayJson::read);
    Optional<String> covers = object.required("covers", JsonCursor::text);
    Optional<Boolean> sinceKnown = object.required("sinceKnown", JsonCursor::bool);
    Optional<Boolean> stale = object.required("stale", JsonCursor::bool);
    Optional<CitedRow> row = object.required("row", RowJson::read);
    return object.make(
        () ->
            new PlaceRule(
                where.orElseThrow(),
                kind.orElseThrow(),
                edition,
                from,
                before,
                covers.orElseThrow(),
                sinceKnown.orElseThrow(),
                stale.orElseThrow(),
                row.orElseThrow()));
  }
}
