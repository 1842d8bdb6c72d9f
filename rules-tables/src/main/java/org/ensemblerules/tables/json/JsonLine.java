package org.ensemblerules.tables.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.ensemblerules.source.Printable;

/** Writes a tree on one line, its fields in the order they stand in. */
public final class JsonLine {
  // About as long as a verdict, so that few have to grow.
  private static final int USUAL_LENGTH = 8_192;

  private static final String HEXADECIMAL = "0123456789ABCDEF";

  private final StringBuilder text = new StringBuilder(USUAL_LENGTH);

  private JsonLine() {}

  /** Writes a tree; the same tree gives the same text. */
  public static String of(JsonNode tree) {
    JsonLine line = new JsonLine();
    line.write(tree);
    return line.text.toString();
  }

  private void write(JsonNode node) {
    switch (node.getNodeType()) {
      case OBJECT -> {
        char before = '{';
        for (Map.Entry<String, JsonNode> field : node.properties()) {
          text.append(before);
          quote(field.getKey());
          text.append(':');
          write(field.getValue());
          before = ',';
        }
        text.append(before == '{' ? "{}" : "}");
      }
      case ARRAY -> {
        char before = '[';
        for (JsonNode each : node) {
          text.append(before);
          write(each);
          before = ',';
        }
        text.append(before == '[' ? "[]" : "]");
      }
      case STRING -> quote(node.textValue());
      case NUMBER, BOOLEAN -> text.append(node.asText());
      default -> text.append("null");
    }
  }

  private void quote(String value) {
    text.append('"');
    int plain = 0;
    while (plain < value.length() && isPlain(value.charAt(plain))) {
      plain++;
    }
    if (plain == value.length()) {
      text.append(value);
    } else {
      text.append(value, 0, plain);
      for (int i = plain; i < value.length(); i++) {
        escape(value.charAt(i));
      }
    }
    text.append('"');
  }

  private static boolean isPlain(char each) {
    return each >= ' ' && each < 0x80 && each != '"' && each != '\\';
  }

  /**
   * JSON lets line ends of Unicode and controls of direction stand as they are; some readers would
   * end the line, and a person would see another text. Half of a pair is written as it is: the
   * whole was well formed.
   */
  private void escape(char each) {
    switch (each) {
      case '"' -> text.append("\\\"");
      case '\\' -> text.append("\\\\");
      case '\b' -> text.append("\\b");
      case '\t' -> text.append("\\t");
      case '\n' -> text.append("\\n");
      case '\f' -> text.append("\\f");
      case '\r' -> text.append("\\r");
      default -> {
        if (each < ' ') {
          text.append("\\u00")
              .append(each < 0x10 ? '0' : '1')
              .append(HEXADECIMAL.charAt(each % 16));
        } else if (each < 0x80 || Character.isSurrogate(each) || Printable.isPrintable(each)) {
          text.append(each);
        } else {
          text.append(Printable.of(Character.toString(each)));
        }
      }
    }
  }
}
