package org.ensemblerules.tables.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.message.JsonFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is JSON (RFC 8259), and what is more than this reader takes. */
class JsonReaderTest {
  private static final JsonReader READER =
      new JsonReader(new JsonLimits(3, 20, 10, 5, 200), UnknownFields.REFUSED);

  private static <T> Checked<T, JsonFault> read(String text, JsonDecoder<T> decoder) {
    return READER.read("text", text, decoder);
  }

  private static List<String> faults(String text) {
    Checked<Boolean, JsonFault> read = read(text, at -> Optional.of(true));
    assertThat(read).as(text).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<Boolean, JsonFault>) read)
        .faults().stream().map(fault -> fault.code() + " " + fault).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"1", "1.0", "1.50", "-0.00", "25.400", "1E+2", "1e-9", "1234567890"})
  void numbersKeepTheirDigits(String number) {
    assertThat(read(number, JsonCursor::decimalOrText).orElseThrow())
        .isEqualTo(new BigDecimal(number));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "01",
        "+1",
        ".5",
        "1.",
        "NaN",
        "Infinity",
        "0x10",
        "'a'",
        "{a: 1}",
        "[1,]",
        "{\"a\": 1,}",
        "// c\n1",
        "tru",
        "\"a",
        "\"\t\"",
        "\"\\x\"",
        "[1 2]",
        "{\"a\" 1}",
        "}"
      })
  void whatIsNoJsonIsRefused(String text) {
    assertThat(faults(text))
        .singleElement()
        .asString()
        .matches(
            "UNREADABLE text#\\S*: found (no JSON|more text after the value) at line [12], .*");
  }

  @Test
  void aSyntaxFaultIsNamedWithItsLineAndTheFieldItStandsIn() {
    assertThat(faults("{\"a\": 1,\n \"b\": [true, tru]}"))
        .singleElement()
        .asString()
        .startsWith("UNREADABLE text#/b/1: found no JSON at line 2, column ")
        .endsWith(", allowed: JSON (RFC 8259)");
  }

  @Test
  void everyDuplicateFieldIsNamed() {
    assertThat(faults("{\"a\": 1, \"a\": 2, \"b\": {\"c\": 1, \"c\": 1}, \"a\": 3}"))
        .containsExactly(
            "UNREADABLE text#/a: found a second field \"a\", allowed: each field once",
            "UNREADABLE text#/b/c: found a second field \"c\", allowed: each field once",
            "UNREADABLE text#/a: found a second field \"a\", allowed: each field once");
  }

  @Test
  void limitsHoldToTheLastCharacter() {
    assertThat(read("[[[]]]", at -> Optional.of(1))).isInstanceOf(Checked.Sound.class);
    assertThat(faults("[[[[]]]]"))
        .containsExactly("UNREADABLE text#/0/0/0: found a deeper level, allowed: at most 3 levels");
    assertThat(read("\"" + "a".repeat(20) + "\"", JsonCursor::text))
        .isInstanceOf(Checked.Sound.class);
    String lengths =
        ": found a text, number or name that is too long, allowed:"
            + " texts of at most 20 characters, numbers of 10, names of 5";
    assertThat(faults("\"" + "a".repeat(21) + "\"")).containsExactly("UNREADABLE text#" + lengths);
    assertThat(faults("{\"n\": 12345678901}")).containsExactly("UNREADABLE text#/n" + lengths);
    assertThat(faults("{\"abcdef\": 1}")).hasSize(1);
    assertThat(read(" ".repeat(199) + "1", JsonCursor::decimalOrText))
        .isInstanceOf(Checked.Sound.class);
    assertThat(faults(" ".repeat(200) + "1"))
        .containsExactly("UNREADABLE text#: found 201 characters, allowed: at most 200 characters");
  }

  @Test
  void nestingBeyondAnyStackIsRefused() {
    JsonReader reader = new JsonReader(JsonLimits.ofDocument(10_000_000), UnknownFields.REFUSED);
    Checked<Integer, JsonFault> read =
        reader.read("text", "[".repeat(5_000_000), at -> Optional.of(1));
    assertThat(((Checked.Refused<Integer, JsonFault>) read).faults())
        .extracting(JsonFault::found)
        .containsExactly("a deeper level");
  }

  @ParameterizedTest
  @CsvSource({"\"\\ud83d\"", "\"\\ude92\"", "\"a\\ud83d b\"", "\"\\ude92\\ud83d\""})
  void halfACharacterIsRefused(String text) {
    assertThat(faults(text))
        .containsExactly(
            "UNREADABLE text#: found half a surrogate pair in a text, allowed: whole characters");
  }

  @Test
  void wholeCharactersBeyondTheBasicPlaneAreTaken() {
    assertThat(read("\"\\ud83d\\ude92\"", JsonCursor::text).orElseThrow()).isEqualTo("🚒");
  }

  @Test
  void aByteOrderMarkIsPassedOver() {
    Faults faults = new Faults();
    byte[] bytes = "\uFEFF\"ä\"".getBytes(StandardCharsets.UTF_8);
    assertThat(READER.open("text", bytes, faults).flatMap(JsonCursor::text)).contains("ä");
    assertThat(faults.list()).isEmpty();
  }

  @Test
  void otherEncodingsAreRefused() {
    Faults faults = new Faults();
    assertThat(READER.open("text", "\"ä\"".getBytes(StandardCharsets.ISO_8859_1), faults))
        .isEmpty();
    assertThat(faults.list())
        .containsExactly(
            new JsonFault(FaultCode.UNREADABLE, "text", "", "bytes that are no UTF-8", "UTF-8"));
  }

  @Test
  void limitsBelowOneAreMisuse() {
    assertThatThrownBy(() -> JsonLimits.ofDocument(0))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("JsonLimits.document: given 0, allowed: 1 or more");
  }
}
