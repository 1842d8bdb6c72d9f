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

  TreeReader(JsonParser parser, String source, int deepest, Faults faults) {
    this.parser = parser;
    this.source = source;
    this.deepest = deepest;
    this.faults = faults;
  }

  JsonNode value(JsonToken token) throws IOException {
    return value(token, null, 1);
  }

  private JsonNode value(JsonToken token, @Nullable Place place, int depth) throws IOException {
    return switch (token) {
      case START_OBJECT -> object(place, depth);
      case START_ARRAY -> array(place, depth);
      case VALUE_STRING -> TextNode.valueOf(wellFormed(parser.getText(), place));
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(place);
      case VALUE_TRUE -> BooleanNode.TRUE;
      case VALUE_FALSE -> BooleanNode.FALSE;
      default -> NullNode.getInstance();
    };
  }

  private DecimalNode number(@Nullable Place place) throws IOException {
    try {
      return DecimalNode.valueOf(parser.getDecimalValue());
    } catch (NumberFormatException e) {
      // The grammar was checked by the parser; only the exponent can be beyond a decimal.
      fault(place, "a number with a very large exponent", "at most nine digits in it");
      return DecimalNode.ZERO;
    }
  }

  private ObjectNode object(@Nullable Place here, int depth) throws IOException {
    requireDepth(here, depth);
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = wellFormed(parser.currentName(), here);
      Place place = new Place(here, name, 0);
      JsonNode value = value(parser.nextToken(), place, depth + 1);
      if (node.putIfAbsent(name, value) != null) {
        fault(place, "a second field " + Shown.text(name), "each field once");
      }
    }
    return node;
  }

  private ArrayNode array(@Nullable Place here, int depth) throws IOException {
    requireDepth(here, depth);
    ArrayNode node = JsonNodeFactory.instance.arrayNode();
    JsonToken token = parser.nextToken();
    while (token != JsonToken.END_ARRAY) {
      node.add(value(token, new Place(here, null, node.size()), depth + 1));
      token = parser.nextToken();
    }
    return node;
  }

  private void requireDepth(@Nullable Place place, int depth) {
    if (depth > deepest) {
      throw new TooDeepException(Place.pointer(place));
    }
  }

  private void fault(@Nullable Place place, String found, String allowed) {
    faults.add(new JsonFault(FaultCode.UNREADABLE, source, Place.pointer(place), found, allowed));
  }

  /** An escaped half of a surrogate pair is JSON, but no text that can be written again. */
  private String wellFormed(String text, @Nullable Place place) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Character.isHighSurrogate(c)
          && i + 1 < text.length()
          && Character.isLowSurrogate(text.charAt(i + 1))) {
        i++;
      } else if (Character.isSurrogate(c)) {
        fault(place, "half a surrogate pair in a text", "whole characters");
        break;
      }
    }
    return text;
  }

  /**
   * Where a value stands. Its pointer is written only for a fault: that of each value would be long
   * where names are long and nest.
   *
   * @param within the place of the object or list around it; null for the whole text
   * @param name the name of the field; null for an entry of a list
   * @param index which entry
   */
  private record Place(@Nullable Place within, @Nullable String name, int index) {
    static String pointer(@Nullable Place place) {
      if (place == null) {
        return "";
      }
      String before = pointer(place.within);
      return place.name == null
          ? Pointer.entry(before, place.index)
          : Pointer.field(before, place.name);
    }
  }
}
