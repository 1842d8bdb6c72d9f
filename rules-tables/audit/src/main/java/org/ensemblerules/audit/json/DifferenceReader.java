package org.ensemblerules.audit.json;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ensemblerules.audit.difference.ChangeKind;
import org.ensemblerules.audit.difference.DueMove;
import org.ensemblerules.audit.difference.FleetEffect;
import org.ensemblerules.audit.difference.Tally;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.codec.DayJson;
import org.ensemblerules.tables.codec.ElementJson;
import org.ensemblerules.tables.codec.IdentityJson;
import org.ensemblerules.tables.codec.RowJson;
import org.ensemblerules.tables.codec.VerdictReader;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.JsonDecoder;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.TaskDue;

/** Reads what differs between two sets of rules as it was written. */
final class DifferenceReader {
  private static final String KIND = "kind";

  private DifferenceReader() {}

  /** Reads a line. */
  static Optional<DifferenceLine> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<DifferenceTree.About> about =
        object.required(
            DifferenceTree.DIFFERENCE, value -> value.enumOf(DifferenceTree.About.class));
    if (about.isEmpty()) {
      return Optional.empty();
    }
    return switch (about.get()) {
      case RULES -> rules(object);
      case ROW -> row(object);
      case ELEMENT -> element(object);
      case FLEET -> fleet(object);
    };
  }

  private static Optional<DifferenceLine> rules(ObjectCursor object) {
    Optional<Identity> before = object.required(DifferenceTree.BEFORE, IdentityJson::read);
    Optional<Identity> after = object.required(DifferenceTree.AFTER, IdentityJson::read);
    Optional<Map<String, Map<ChangeKind, Integer>>> counts =
        object.required("counts", DifferenceReader::tables);
    return object.make(
        () ->
            new DifferenceLine.Rules(
                before.orElseThrow(), after.orElseThrow(), counts.orElseThrow()));
  }

  /** The names of the tables are those of the release of then; any may stand here. */
  private static Optional<Map<String, Map<ChangeKind, Integer>>> tables(JsonCursor at) {
    ObjectCursor object = at.object();
    Map<String, Map<ChangeKind, Integer>> tables = new LinkedHashMap<>();
    for (String table : object.names()) {
      object
          .required(
              table,
              kinds ->
                  counts(kinds, ChangeKind.class, value -> value.integer(1, Integer.MAX_VALUE)))
          .ifPresent(kinds -> tables.put(table, kinds));
    }
    return object.make(() -> tables);
  }

  private static <E extends Enum<E>, N> Optional<Map<E, N>> counts(
      JsonCursor at, Class<E> type, JsonDecoder<N> number) {
    ObjectCursor object = at.object();
    Map<E, N> counts = new EnumMap<>(type);
    for (E each : type.getEnumConstants()) {
      object.optional(each.name(), number).ifPresent(count -> counts.put(each, count));
    }
    return object.make(() -> counts);
  }

  private static Optional<DifferenceLine> row(ObjectCursor object) {
    Optional<ChangeKind> kind = object.required(KIND, value -> value.enumOf(ChangeKind.class));
    Optional<String> table = object.required("table", JsonCursor::text);
    Optional<List<String>> topic = object.required("topic", list -> list.list(JsonCursor::text));
    Optional<DifferenceLine.RowText> before =
        object.optional(DifferenceTree.BEFORE, DifferenceReader::rowText);
    Optional<DifferenceLine.RowText> after =
        object.optional(DifferenceTree.AFTER, DifferenceReader::rowText);
    Optional<Comparison> strictness =
        object.required("strictness", value -> value.enumOf(Comparison.class));
    return object.make(
        () ->
            new DifferenceLine.ChangedRow(
                kind.orElseThrow(),
                table.orElseThrow(),
                topic.orElseThrow(),
                before,
                after,
                strictness.orElseThrow()));
  }

  private static Optional<DifferenceLine.RowText> rowText(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<CitedRow> row = object.required("row", RowJson::read);
    Optional<List<String>> says = object.required("says", list -> list.list(JsonCursor::text));
    return object.make(() -> new DifferenceLine.RowText(row.orElseThrow(), says.orElseThrow()));
  }

  private static Optional<DifferenceLine> element(ObjectCursor object) {
    Optional<NamedElement> element = object.required("element", ElementJson::named);
    Optional<LocalDate> asOf = object.required("asOf", DayJson::read);
    Optional<Service> before =
        object.required("serviceBefore", value -> value.enumOf(Service.class));
    Optional<Service> after = object.required("serviceAfter", value -> value.enumOf(Service.class));
    Optional<List<FleetEffect>> effects =
        object.required(
            "effects", list -> list.distinctOrNone(each -> each.enumOf(FleetEffect.class)));
    Optional<List<DifferenceLine.Asked>> gained =
        object.required("gained", list -> list.list(DifferenceReader::asked));
    Optional<List<DifferenceLine.Asked>> lost =
        object.required("lost", list -> list.list(DifferenceReader::asked));
    Optional<List<DueMove>> due = object.required("due", list -> list.list(DifferenceReader::due));
    Optional<List<DifferenceLine.Leaving>> ages =
        object.required("ages", list -> list.list(DifferenceReader::leaving));
    return object.make(
        () ->
            new DifferenceLine.ChangedElement(
                element.orElseThrow(),
                asOf.orElseThrow(),
                before.orElseThrow(),
                after.orElseThrow(),
                new LinkedHashSet<>(effects.orElseThrow()),
                gained.orElseThrow(),
                lost.orElseThrow(),
                due.orElseThrow(),
                ages.orElseThrow()));
  }

  private static Optional<DifferenceLine.Asked> asked(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Action> action = object.required("action", VerdictReader::action);
    Optional<List<RowKey>> rows =
        object.required("rows", list -> list.distinctOrNone(RowJson::key));
    return object.make(() -> new DifferenceLine.Asked(action.orElseThrow(), rows.orElseThrow()));
  }

  private static Optional<DueMove> due(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<TaskKey> task = object.required("task", value -> value.parsed(TaskKey::new));
    Optional<LayerKind> layer = layer(object);
    Optional<TaskDue> before = object.optional(DifferenceTree.BEFORE, VerdictReader::due);
    Optional<TaskDue> after = object.optional(DifferenceTree.AFTER, VerdictReader::due);
    return object.make(() -> new DueMove(task.orElseThrow(), layer, before, after));
  }

  private static Optional<DifferenceLine.Leaving> leaving(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<LayerKind> layer = layer(object);
    Optional<String> before = object.optional(DifferenceTree.BEFORE, JsonCursor::text);
    Optional<String> after = object.optional(DifferenceTree.AFTER, JsonCursor::text);
    return object.make(() -> new DifferenceLine.Leaving(layer, before, after));
  }

  private static Optional<LayerKind> layer(ObjectCursor object) {
    return object.optional("layer", value -> value.enumOf(LayerKind.class));
  }

  private static Optional<DifferenceLine> fleet(ObjectCursor object) {
    Optional<LocalDate> asOf = object.required("asOf", DayJson::read);
    Optional<Long> elements = object.required("elements", DifferenceReader::count);
    Optional<Long> inBefore = object.required("inServiceBefore", DifferenceReader::count);
    Optional<Long> inAfter = object.required("inServiceAfter", DifferenceReader::count);
    Optional<Long> changed = object.required("changed", DifferenceReader::count);
    Optional<Map<FleetEffect, Long>> effects =
        object.required(
            "effects", value -> counts(value, FleetEffect.class, count -> count.count(1)));
    Optional<Map<RowKey, Long>> gainedFor = object.required("gainedFor", DifferenceReader::rows);
    Optional<Map<RowKey, Long>> lostWith = object.required("lostWith", DifferenceReader::rows);
    return object.make(
        () ->
            new DifferenceLine.ChangedFleet(
                asOf.orElseThrow(),
                new Tally(
                    elements.orElseThrow(),
                    inBefore.orElseThrow(),
                    inAfter.orElseThrow(),
                    changed.orElseThrow(),
                    effects.orElseThrow()),
                gainedFor.orElseThrow(),
                lostWith.orElseThrow()));
  }

  private static Optional<Long> count(JsonCursor at) {
    return at.count(0);
  }

  private static Optional<Map<RowKey, Long>> rows(JsonCursor at) {
    ObjectCursor object = at.object();
    Map<RowKey, Long> rows = new TreeMap<>();
    for (String key : object.names()) {
      object
          .required(key, count -> count.make(() -> new RowKey(key)).flatMap(row -> count(count)))
          .ifPresent(count -> rows.put(new RowKey(key), count));
    }
    return object.make(() -> rows);
  }
}
