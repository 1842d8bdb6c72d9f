package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of a safety notice. */
public final class NoticeTree {
  private NoticeTree() {}

  /** Reads a safety notice. */
  public static Optional<SafetyNotice> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> id = object.required("id", JsonCursor::text);
    Optional<SafetyNotice.Asks> asks =
        object.required("asks", value -> value.enumOf(SafetyNotice.Asks.class));
    Optional<Set<ElementKind>> kinds =
        object.optional("kinds", value -> value.setOf(ElementKind.class));
    Optional<String> manufacturer = object.required("manufacturer", JsonCursor::text);
    Optional<List<String>> models =
        object.optional("models", value -> value.distinct(JsonCursor::text));
    Optional<List<String>> lots =
        object.optional("lots", value -> value.distinct(JsonCursor::text));
    Optional<MarkedDate> from = object.optional("madeFrom", ValueReaders::markedDate);
    Optional<MarkedDate> through = object.optional("madeThrough", ValueReaders::markedDate);
    return object.make(
        () ->
            new SafetyNotice(
                id.orElseThrow(),
                asks.orElseThrow(),
                kinds.orElse(Set.of()),
                manufacturer.orElseThrow(),
                Set.copyOf(models.orElse(List.of())),
                Set.copyOf(lots.orElse(List.of())),
                from.orElseGet(MarkedDate::unknown),
                through.orElseGet(MarkedDate::unknown)));
  }

  /** Writes a safety notice. */
  public static JsonNode write(SafetyNotice notice) {
    return new Fields()
        .put("id", notice.id())
        .put("asks", notice.asks())
        .some("kinds", notice.kinds())
        .put("manufacturer", notice.manufacturer())
        .some("models", notice.models())
        .some("lots", notice.lots())
        .known("madeFrom", notice.madeFrom())
        .known("madeThrough", notice.madeThrough())
        .node();
  }
}
