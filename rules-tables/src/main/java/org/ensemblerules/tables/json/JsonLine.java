package org.ensemblerules.tables.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;
import org.ensemblerules.source.Printable;
import org.jspecify.annotations.Nullable;

/** Writes a tree on one line, its fields in the order they stand in. */
public final class JsonLine {
  private static final JsonFactory FACTORY = new JsonFactory();
  private static final CharacterEscapes UNPRINTABLE = new Unprintable();

  /** The first character above the printable ones of ASCII. */
  private static final char DELETE = 0x7F;

  private JsonLine() {}

  /** Writes a tree; the same tree gives the same text. */
  public static String of(JsonNode tree) {
    StringWriter text = new StringWriter();
    try (JsonGenerator generator = FACTORY.createGenerator(text)) {
      write(tree, generator);
    } catch (IOException e) {
      throw new UncheckedIOException("writing a tree to memory does not fail", e);
    }
    return text.toString();
  }

  // A mapper would do it as well; making one takes longer than a first answer may.
  private static void write(JsonNode node, JsonGenerator generator) throws IOException {
    switch (node.getNodeType()) {
      case OBJECT -> {
        generator.writeStartObject();
        for (Map.Entry<String, JsonNode> field : node.properties()) {
          escape(field.getKey(), generator);
          generator.writeFieldName(field.getKey());
          write(field.getValue(), generator);
        }
        generator.writeEndObject();
      }
      case ARRAY -> {
        generator.writeStartArray();
        for (JsonNode each : node) {
          write(each, generator);
        }
        generator.writeEndArray();
      }
      case STRING -> {
        escape(node.textValue(), generator);
        generator.writeString(node.textValue());
      }
      case NUMBER -> generator.writeNumber(node.asText());
      case BOOLEAN -> generator.writeBoolean(node.booleanValue());
      default -> generator.writeNull();
    }
  }

  // Escapes of our own make the generator slow, and hardly any text needs one.
  private static void escape(String text, JsonGenerator generator) {
    generator.setCharacterEscapes(isAscii(text) ? null : UNPRINTABLE);
  }

  private static boolean isAscii(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= DELETE) {
        return false;
      }
    }
    return true;
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
