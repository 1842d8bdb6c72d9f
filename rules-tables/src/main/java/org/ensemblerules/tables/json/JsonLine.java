package org.ensemblerules.tables.json;

import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.UncheckedIOException;
import org.jspecify.annotations.Nullable;

/** Writes a tree on one line, its fields in the order they stand in. */
public final class JsonLine {
  private static final JsonMapper MAPPER =
      new JsonMapper(new JsonFactoryBuilder().characterEscapes(new LineEnds()).build());

  private JsonLine() {}

  /** Writes a tree; the same tree gives the same text. */
  public static String of(JsonNode tree) {
    try {
      return MAPPER.writeValueAsString(tree);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException("writing a tree to memory does not fail", e);
    }
  }

  /** JSON lets two of Unicode's line ends stand as they are; some readers would end the line. */
  private static final class LineEnds extends CharacterEscapes {
    private static final long serialVersionUID = 1L;

    @Override
    public int[] getEscapeCodesForAscii() {
      return standardAsciiEscapesForJSON();
    }

    @Override
    public @Nullable SerializableString getEscapeSequence(int character) {
      return switch (character) {
        case '\u2028' -> new SerializedString("\\u2028");
        case '\u2029' -> new SerializedString("\\u2029");
        default -> null;
      };
    }
  }
}
