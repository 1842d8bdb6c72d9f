package org.ensemblerules.tables.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.tables.JsonFault;

/**
 * Builds the tree of a text. Unlike the parser's own detection, which ends at the first duplicate
 * field, this goes on and names all of them. Every number keeps its digits.
 */
final class TreeReader {
  private final JsonParser parser;
  private final String source;
  private final int deepest;
  private final Faults faults;

  TreeReader(JsonParser parser, String source, int deepest, Faults faults) {
    this.parser = parser;
    this.source = source;
    this.deepest = deepest;
    this.faults = faults;
  }

  JsonNode value(JsonToken token, String pointer, int depth) throws IOException {
    return switch (token) {
      case START_OBJECT -> object(pointer, depth);
      case START_ARRAY -> array(pointer, depth);
      case VALUE_STRING -> TextNode.valueOf(wellFormed(parser.getText(), pointer));
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(pointer);
      case VALUE_TRUE -> BooleanNode.TRUE;
      case VALUE_FALSE -> BooleanNode.FALSE;
      default -> NullNode.getInstance();
    };
  }

  private DecimalNode number(String pointer) throws IOException {
    try {
      return DecimalNode.valueOf(parser.getDecimalValue());
    } catch (NumberFormatException e) {
      // The grammar was checked by the parser; only the exponent can be beyond a decimal.
      faults.add(
          new JsonFault(
              FaultCode.UNREADABLE,
              source,
              pointer,
              "a number with a very large exponent",
              "at most nine digits in it"));
      return DecimalNode.ZERO;
    }
  }

  private ObjectNode object(String pointer, int depth) throws IOException {
    requireDepth(pointer, depth);
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = wellFormed(parser.currentName(), pointer);
      String place = Pointer.field(pointer, name);
      JsonNode value = value(parser.nextToken(), place, depth + 1);
      if (node.putIfAbsent(name, value) != null) {
        faults.add(
            new JsonFault(
                FaultCode.UNREADABLE,
                source,
                place,
                "a second field " + Shown.text(name),
                "each field once"));
      }
    }
    return node;
  }

  private ArrayNode array(String pointer, int depth) throws IOException {
    requireDepth(pointer, depth);
    ArrayNode node = JsonNodeFactory.instance.arrayNode();
    JsonToken token = parser.nextToken();
    while (token != JsonToken.END_ARRAY) {
      node.add(value(token, Pointer.entry(pointer, node.size()), depth + 1));
      token = parser.nextToken();
    }
    return node;
  }

  private void requireDepth(String pointer, int depth) {
    if (depth > deepest) {
      throw new TooDeepException(pointer);
    }
  }

  /** An escaped half of a surrogate pair is JSON, but no text that can be written again. */
  private String wellFormed(String text, String pointer) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Character.isHighSurrogate(c)
          && i + 1 < text.length()
          && Character.isLowSurrogate(text.charAt(i + 1))) {
        i++;
      } else if (Character.isSurrogate(c)) {
        faults.add(
            new JsonFault(
                FaultCode.UNREADABLE,
                source,
                pointer,
                "half a surrogate pair in a text",
                "whole characters"));
        break;
      }
    }
    return text;
  }
}
