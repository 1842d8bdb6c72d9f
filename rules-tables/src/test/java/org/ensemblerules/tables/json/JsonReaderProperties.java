package org.ensemblerules.tables.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ensemblerules.source.Checked;

/** Laws of reading, on random text and bytes. */
class JsonReaderProperties {
  private static final JsonReader READER =
      new JsonReader(JsonLimits.ofDocument(1_000), UnknownFields.REFUSED);
  private static final JsonMapper BINDER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
          .build();

  /** Texts of the pieces that JSON is made of, so that many are nearly JSON and some are. */
  @Provide
  Arbitrary<String> nearlyJson() {
    return Arbitraries.of(
            "{",
            "}",
            "[",
            "]",
            ",",
            ":",
            "\"a\"",
            "\"b\"",
            "\"",
            "\\",
            "\\u00",
            "1",
            "0",
            "-",
            ".",
            "e",
            "+",
            "9999999999",
            "true",
            "null",
            "nul",
            " ",
            "\n",
            "\u0000",
            "\uFEFF",
            "\ud83d",
            "{\"a\":",
            "[1,")
        .list()
        .ofMaxSize(12)
        .map(pieces -> String.join("", pieces));
  }

  @Property(tries = 5_000)
  void everyTextEndsInAValueOrFaults(@ForAll("nearlyJson") String text) {
    assertThat(READER.read("t", text, at -> Optional.of(true))).isNotNull();
  }

  @Property(tries = 1_000)
  void everyRowOfBytesEndsInAValueOrFaults(@ForAll byte[] bytes) {
    Faults faults = new Faults();
    Optional<JsonCursor> open = READER.open("t", bytes, faults);
    assertThat(open.isPresent() || faults.count() > 0).isTrue();
  }

  // The parser's own strict reading to a tree, with binary numbers, is the measure.
  @Property(tries = 5_000)
  void whatAStrictParserRefusesIsRefused(@ForAll("nearlyJson") String text) {
    boolean refused;
    try {
      refused = BINDER.readTree(text).isMissingNode();
    } catch (JsonProcessingException e) {
      refused = true;
    }
    if (refused && !text.startsWith("\uFEFF")) {
      assertThat(READER.read("t", text, at -> Optional.of(true)))
          .isInstanceOf(Checked.Refused.class);
    }
  }
}
