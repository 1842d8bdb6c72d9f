package org.ensemblerules.tables.codec;

import java.util.List;
import java.util.Optional;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.JsonDecoder;
import org.ensemblerules.tables.json.ObjectCursor;

/**
 * Fields that say again what follows from others, for readers without the library. What they say
 * must be what follows, so that no text says one thing to people and another to programs.
 */
public final class Derived {
  private Derived() {}

  /** Reads a text that must be given and be what follows from other fields, if that is known. */
  static void text(ObjectCursor object, String field, Optional<String> follows) {
    object.required(field, at -> same(at, JsonCursor::text, follows));
  }

  /** Reads a text that must be given where one follows from other fields, and only there. */
  static void optionalText(ObjectCursor object, String field, Optional<String> follows) {
    optional(object, field, JsonCursor::text, follows);
  }

  /** Reads a value that must be given where one follows from other fields, and only there. */
  static <T> void optional(
      ObjectCursor object, String field, JsonDecoder<T> decoder, Optional<T> follows) {
    if (follows.isPresent()) {
      object.required(field, at -> same(at, decoder, follows));
    } else {
      object.optional(field, at -> at.<String>mismatch("no such field here"));
    }
  }

  /** Reads names that must be those that follow from other fields, in their order. */
  static void names(ObjectCursor object, String field, List<String> follow) {
    object.required(
        field, at -> same(at, list -> list.list(JsonCursor::text), Optional.of(follow)));
  }

  /** Reads a value that must be what follows from other fields, if that is known. */
  public static <T> Optional<T> same(JsonCursor at, JsonDecoder<T> decoder, Optional<T> follows) {
    Optional<T> given = decoder.read(at);
    if (given.isPresent() && follows.isPresent() && !given.equals(follows)) {
      return at.mismatch("what follows from the other fields, " + follows.get());
    }
    return given;
  }
}
