package org.ensemblerules.tables.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.tables.message.JsonFault;
import org.jspecify.annotations.Nullable;

/**
 * Builds the tree of a text. Unlike the parser's own detection, which ends at the first duplicate
 * field, this goes on and names all of them. Every number keeps its digits.
 */
final class TreeReader {
  private final JsonParser parser;
  private final String source;
  private final int deepest;
  private final Faults faults;

  // Where the value being read stands, level by level: the name of a field, or the number of an
  // entry. Its pointer is written only for a fault: that of each value would be long where names
  // are long and nest.
  private final @Nullable String[] names;
  private final int[] entries;
  private int depth;

  TreeReader(JsonParser parser, String source, int deepest, Faults faults) {
    this.parser = parser;
    this.source = source;
    this.deepest = deepest;
    this.faults = faults;
    this.names = new String[deepest];
    this.entries = new int[deepest];
  }

  JsonValue value(JsonToken token) throws IOException {
    return switch (token) {
      case START_OBJECT -> object();
      case START_ARRAY -> array();
      case VALUE_STRING -> new JsonValue.Text(wellFormed(parser.getText()));
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new JsonValue.Decimal(number());
      case VALUE_TRUE -> JsonValue.Truth.TRUE;
      case VALUE_FALSE -> JsonValue.Truth.FALSE;
      default -> JsonValue.Nothing.NOTHING;
    };
  }

  private BigDecimal number() throws IOException {
    try {
      return parser.getDecimalValue();
    } catch (NumberFormatException e) {
      // The grammar was checked by the parser; only the exponent can be beyond a decimal.
      fault("a number with a very large exponent", "at most nine digits in it");
      return BigDecimal.ZERO;
    }
  }

  private JsonFields object() throws IOException {
    requireDepth();
    JsonFields fields = new JsonFields();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = wellFormed(parser.currentName());
      names[depth++] = name;
      if (!fields.add(name, value(parser.nextToken()))) {
        fault("a second field " + Shown.text(name), "each field once");
      }
      depth--;
    }
    return fields;
  }

  private JsonValue.Items array() throws IOException {
    requireDepth();
    List<JsonValue> values = new ArrayList<>();
    JsonToken token = parser.nextToken();
    while (token != JsonToken.END_ARRAY) {
      names[depth] = null;
      entries[depth++] = values.size();
      values.add(value(token));
      depth--;
      token = parser.nextToken();
    }
    return new JsonValue.Items(values);
  }

  private void requireDepth() {
    if (depth == deepest) {
      throw new TooDeepException(pointer());
    }
  }

  private String pointer() {
    String pointer = "";
    for (int level = 0; level < depth; level++) {
      String name = names[level];
      pointer =
          name == null ? Pointer.entry(pointer, entries[level]) : Pointer.field(pointer, name);
    }
    return pointer;
  }

  private void fault(String found, String allowed) {
    faults.add(new JsonFault(FaultCode.UNREADABLE, source, pointer(), found, allowed));
  }

  /** An escaped half of a surrogate pair is JSON, but no text that can be written again. */
  private String wellFormed(String text) {
    int at = 0;
    while (at < text.length()) {
      char each = text.charAt(at++);
      if (Character.isSurrogate(each)) {
        boolean whole =
            Character.isHighSurrogate(each)
                && at < text.length()
                && Character.isLowSurrogate(text.charAt(at++));
        if (!whole) {
          fault("half a surrogate pair in a text", "whole characters");
          break;
        }
      }
    }
    return text;
  }
}
