package org.ensemblerules.tables.json;

import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.UncheckedIOException;
import org.ensemblerules.source.Printable;
import org.jspecify.annotations.Nullable;

/** Writes a tree on one line, its fields in the order they stand in. */
public final class JsonLine {
  private static final JsonMapper MAPPER =
      new JsonMapper(new JsonFactoryBuilder().characterEscapes(new Unprintable()).build());

  private JsonLine() {}

  /** Writes a tree; the same tree gives the same text. */
  public static String of(JsonNode tree) {
    try {
      return MAPPER.writeValueAsString(tree);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException("writing a tree to memory does not fail", e);
    }
  }

  /**
   * JSON lets line ends of Unicode and controls of direction stand as they are; some readers would
   * end the line, and a person would see another text.
   */
  private static final class Unprintable extends CharacterEscapes {
    private static final long serialVersionUID = 1L;

    @Override
    public int[] getEscapeCodesForAscii() {
      return standardAsciiEscapesForJSON();
    }

    @Override
    public @Nullable SerializableString getEscapeSequence(int character) {
      // Half of a pair is written as it is: the whole was well formed.
      return Character.getType(character) == Character.SURROGATE || Printable.isPrintable(character)
          ? null
          : new SerializedString(Printable.of(Character.toString(character)));
    }
  }
}
