package org.ensemblerules.tables.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

/** A line says what its tree does, to another reader of JSON (RFC 8259) as well. */
class JsonLineTest {
  private static final ObjectMapper OTHER = new ObjectMapper();

  @Test
  void everyCharacterIsReadBackAsItWasInNamesAndTexts() throws JsonProcessingException {
    for (int character = 0; character <= Character.MAX_CODE_POINT; character++) {
      if (Character.getType(character) == Character.SURROGATE) {
        continue;
      }
      String text = "a" + Character.toString(character) + "b";
      JsonNode tree = JsonNodeFactory.instance.objectNode().put(text, text);
      String line = JsonLine.of(tree);
      assertThat(OTHER.readTree(line)).as(line).isEqualTo(tree);
    }
  }

  @Test
  void whatDoesNotPrintIsEscaped() {
    assertThat(JsonLine.of(TextNode.valueOf("\"\\/ \b\t\n\f\r\u0001\u001f")))
        .isEqualTo("\"\\\"\\\\/ \\b\\t\\n\\f\\r\\u0001\\u001F\"");
    assertThat(JsonLine.of(TextNode.valueOf("\u0085\u2028\u202e\ufeff\u00e9\ud83d\ude92")))
        .isEqualTo("\"\\u0085\\u2028\\u202e\\ufeff\u00e9\ud83d\ude92\"");
  }

  @Test
  void valuesOfEachKindStandInTheirOrder() {
    ObjectNode tree = JsonNodeFactory.instance.objectNode();
    tree.putArray("none");
    tree.putObject("empty");
    tree.putArray("some").add(1).add(1L << 60).add(new BigDecimal("1.50")).add(true).addNull();
    tree.putObject("inner").put("a", "b").put("c", false);
    assertThat(JsonLine.of(tree))
        .isEqualTo(
            "{\"none\":[],\"empty\":{},\"some\":[1,1152921504606846976,1.50,true,null],"
                + "\"inner\":{\"a\":\"b\",\"c\":false}}");
  }
}
