package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.issue.Member;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;

/** The JSON form of a member of a department. */
public final class MemberTree {
  private MemberTree() {}

  /** Reads a member. */
  public static Optional<Member> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> name = object.required("name", JsonCursor::text);
    Optional<String> station = object.optional("station", JsonCursor::text);
    Optional<List<Use>> uses =
        object.required("uses", value -> value.distinctOrNone(one -> one.enumOf(Use.class)));
    Optional<Map<ElementKind, String>> sizes = object.optional("sizes", MemberTree::sizesNeeded);
    return object.make(
        () ->
            new Member(
                name.orElseThrow(), station, set(uses.orElseThrow()), sizes.orElse(Map.of())));
  }

  private static Set<Use> set(List<Use> uses) {
    return uses.isEmpty() ? Set.of() : EnumSet.copyOf(uses);
  }

  private static Optional<Map<ElementKind, String>> sizesNeeded(JsonCursor at) {
    ObjectCursor object = at.object();
    Map<ElementKind, String> sizes = new EnumMap<>(ElementKind.class);
    for (ElementKind kind : ElementKind.values()) {
      object.optional(kind.name(), JsonCursor::text).ifPresent(size -> sizes.put(kind, size));
    }
    return object.make(() -> sizes);
  }

  /** Writes a member. */
  public static JsonNode write(Member member) {
    Fields fields =
        new Fields()
            .put("name", member.name())
            .known("station", member.station())
            .list("uses", member.uses());
    if (!member.sizes().isEmpty()) {
      Fields sizes = new Fields();
      member.sizes().forEach((kind, size) -> sizes.put(kind.name(), size));
      fields.put("sizes", sizes.node());
    }
    return fields.node();
  }
}
