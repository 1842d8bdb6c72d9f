package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/**
 * The JSON form of which rules a verdict was computed with. Where no form of the fingerprint is
 * named, it is the first, since there was no other when the form was not yet written.
 */
public final class IdentityJson {
  private static final int FIRST_FORM = 1;

  private IdentityJson() {}

  public static Optional<Identity> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Map<Subject, OriginId>> editions = object.required("editions", IdentityJson::editions);
    Optional<List<OriginId>> overlays =
        object.required("overlays", list -> list.distinctOrNone(ValueReaders::editionId));
    Optional<Map<String, Integer>> revisions =
        object.required("revisions", IdentityJson::revisions);
    Optional<Integer> form =
        object.optional("form", value -> value.integer(FIRST_FORM + 1, Integer.MAX_VALUE));
    Optional<String> fingerprint = object.required("fingerprint", JsonCursor::text);
    return object.make(
        () ->
            new Identity(
                editions.orElseThrow(),
                overlays.orElseThrow(),
                revisions.orElseThrow(),
                form.orElse(FIRST_FORM),
                fingerprint.orElseThrow()));
  }

  private static Optional<Map<Subject, OriginId>> editions(JsonCursor at) {
    ObjectCursor object = at.object();
    Map<Subject, OriginId> editions = new EnumMap<>(Subject.class);
    for (Subject subject : Subject.values()) {
      object
          .optional(subject.name(), ValueReaders::editionId)
          .ifPresent(edition -> editions.put(subject, edition));
    }
    return object.make(() -> editions);
  }

  /** The names of the table files are those of the release of then; any may stand here. */
  private static Optional<Map<String, Integer>> revisions(JsonCursor at) {
    ObjectCursor object = at.object();
    Map<String, Integer> revisions = new TreeMap<>();
    for (String file : object.names()) {
      object
          .required(file, value -> value.integer(0, Integer.MAX_VALUE))
          .ifPresent(revision -> revisions.put(file, revision));
    }
    return object.make(() -> revisions);
  }

  public static JsonNode write(Identity identity) {
    Fields editions = new Fields();
    identity.editions().forEach((subject, edition) -> editions.put(subject.name(), edition));
    Fields revisions = new Fields();
    identity.revisions().forEach((file, revision) -> revisions.put(file, (int) revision));
    Fields fields =
        new Fields()
            .put("editions", editions.node())
            .list("overlays", identity.overlays())
            .put("revisions", revisions.node());
    if (identity.form() != FIRST_FORM) {
      fields.put("form", identity.form());
    }
    return fields.put("fingerprint", identity.fingerprint()).node();
  }
}
