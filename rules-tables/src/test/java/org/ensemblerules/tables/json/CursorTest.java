package org.ensemblerules.tables.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.message.JsonFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Readers of places: values, objects, and every fault at once. */
class CursorTest {
  record Pair(String left, Optional<Integer> right) {
    Pair {
      InvalidValueException.requireText("Pair.left", left, 5);
      InvalidValueException.require(!left.equals("both"), "Pair", left, "another pair");
    }
  }

  private static final JsonReader READER =
      new JsonReader(JsonLimits.ofDocument(100_000), UnknownFields.REFUSED);

  private static Optional<Pair> pair(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> left = object.required("left", JsonCursor::text);
    Optional<Integer> right = object.optional("right", value -> value.integer(1, 9));
    return object.make(() -> new Pair(left.orElseThrow(), right));
  }

  private static <T> List<String> faults(String text, JsonDecoder<T> decoder) {
    Checked<T, JsonFault> read = READER.read("t", text, decoder);
    assertThat(read).as(text).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<T, JsonFault>) read)
        .faults().stream().map(fault -> fault.code() + " " + fault).toList();
  }

  private static <T> T value(String text, JsonDecoder<T> decoder) {
    return READER.read("t", text, decoder).orElseThrow();
  }

  @Test
  void anObjectIsMadeOfItsFields() {
    assertThat(value("{\"left\": \"a\"}", CursorTest::pair))
        .isEqualTo(new Pair("a", Optional.empty()));
    assertThat(value("{\"right\": 9, \"left\": \"a\"}", CursorTest::pair))
        .isEqualTo(new Pair("a", Optional.of(9)));
  }

  @Test
  void everyFaultOfAnObjectIsNamed() {
    assertThat(faults("{\"rihgt\": 1, \"right\": 10, \"a/b~c\": 1}", CursorTest::pair))
        .containsExactly(
            "MISSING t#: found no field \"left\", allowed: a field of this name, which must be"
                + " given",
            "NOT_ALLOWED t#/right: found 10, allowed: a whole number from 1 to 9",
            "UNKNOWN_FIELD t#/rihgt: found unknown field \"rihgt\", allowed: nearest right; one of"
                + " left, right",
            "UNKNOWN_FIELD t#/a~1b~0c: found unknown field \"a/b~c\", allowed: one of left, right");
  }

  @Test
  void aValueThatItsTypeRefusesIsAFaultAtTheFieldThatTheTypeNames() {
    assertThat(faults("{\"left\": \"abcdef\"}", CursorTest::pair))
        .containsExactly(
            "NOT_ALLOWED t#/left: found 6 characters, allowed: 1 to 5 characters, not blank, no"
                + " control characters");
    assertThat(faults("{\"left\": \"both\"}", CursorTest::pair))
        .containsExactly("NOT_ALLOWED t#: found Pair both, allowed: another pair");
  }

  @Test
  void whatIsNoObjectIsOneFault() {
    assertThat(faults("[]", CursorTest::pair))
        .containsExactly("NOT_ALLOWED t#: found a list, allowed: an object");
    assertThat(faults("null", CursorTest::pair))
        .containsExactly(
            "NOT_ALLOWED t#: found null, allowed: an object; what is not known is left out");
  }

  @Test
  void unknownFieldsArePassedOverWhereThatIsAskedFor() {
    JsonReader lenient = new JsonReader(JsonLimits.ofDocument(100), UnknownFields.PASSED_OVER);
    assertThat(lenient.read("t", "{\"left\": \"a\", \"x\": [1]}", CursorTest::pair))
        .isEqualTo(new Checked.Sound<>(new Pair("a", Optional.empty())));
  }

  @Test
  void readingGoesOnPastFaultyEntries() {
    List<Pair> sound = new ArrayList<>();
    assertThat(
            faults(
                "[{\"left\": \"a\"}, {\"left\": 1}, 2, {\"left\": \"b\"}]",
                at -> {
                  at.entries().forEach(entry -> pair(entry).ifPresent(sound::add));
                  return Optional.of(sound);
                }))
        .containsExactly(
            "NOT_ALLOWED t#/1/left: found 1, allowed: a text",
            "NOT_ALLOWED t#/2: found 2, allowed: an object");
    assertThat(sound).extracting(Pair::left).containsExactly("a", "b");
  }

  @Test
  void aListWithAFaultyEntryIsNoList() {
    List<Integer> list = value("[1, 2, 1]", at -> at.list(entry -> entry.integer(1, 2)));
    assertThat(list).containsExactly(1, 2, 1);
    assertThat(faults("[1, 3, true]", at -> at.list(entry -> entry.integer(1, 2)))).hasSize(2);
    assertThat(faults("{}", at -> at.list(JsonCursor::text)))
        .containsExactly("NOT_ALLOWED t#: found an object, allowed: a list");
  }

  @Test
  void setsHaveEachNameOnceAndAtLeastOne() {
    Set<Use> uses = value("[\"PROXIMITY\", \"STRUCTURAL\"]", at -> at.setOf(Use.class));
    assertThat(uses).containsExactly(Use.STRUCTURAL, Use.PROXIMITY);
    assertThat(faults("[]", at -> at.setOf(Use.class)))
        .containsExactly("NOT_ALLOWED t#: found an empty list, allowed: at least one entry");
    assertThat(faults("[\"PROXIMITY\", \"PROXIMITY\"]", at -> at.setOf(Use.class)))
        .containsExactly("DUPLICATE t#/1: found \"PROXIMITY\" again, allowed: each entry once");
  }

  // The Turkish language that the tests run in has other capitals for i.
  @Test
  void namesOfEnumerationsAreExact() {
    assertThat(faults("\"structural\"", at -> at.enumOf(Use.class)))
        .containsExactly(
            "NOT_ALLOWED t#: found \"structural\", allowed: nearest STRUCTURAL; one of STRUCTURAL,"
                + " PROXIMITY");
    assertThat(faults("\"PROXİMİTY\"", at -> at.enumOf(Use.class)))
        .containsExactly(
            "NOT_ALLOWED t#: found \"PROXİMİTY\", allowed: nearest PROXIMITY; one of STRUCTURAL,"
                + " PROXIMITY");
    assertThat(faults("\"boots\"", at -> at.enumOf(Use.class)))
        .containsExactly("NOT_ALLOWED t#: found \"boots\", allowed: one of STRUCTURAL, PROXIMITY");
  }

  @ParameterizedTest
  @ValueSource(strings = {"7", "7.0", "70e-1", "0.7E1"})
  void wholeNumbersAreTakenInEverySpelling(String number) {
    Integer seven = value(number, at -> at.integer(0, 9));
    assertThat(seven).isEqualTo(7);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"7.5", "-1", "10", "1e999999999", "-1e999999999", "1e-999999999", "\"7\"", "null"})
  void whatIsNoWholeNumberInRangeIsRefusedAtOnce(String number) {
    assertThat(faults(number, at -> at.integer(0, 9)))
        .singleElement()
        .asString()
        .contains("allowed: a whole number from 0 to 9");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e9999999999", "1e-9999999999", "\"1e9999999999\"", "\"1e-2147483649\""})
  void exponentsBeyondEveryNumberAreRefused(String number) {
    assertThat(faults(number, JsonCursor::decimalOrText)).hasSize(1);
  }

  @Test
  void decimalsAreTakenAsTextToo() {
    assertThat(value("\"2.50\"", JsonCursor::decimalOrText)).isEqualTo(new BigDecimal("2.50"));
    assertThat(value("2.50", JsonCursor::decimalOrText)).isEqualTo(new BigDecimal("2.50"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"\"\"", "\"1,5\"", "\"+1\"", "\".5\"", "\" 1\"", "\"NaN\"", "\"١\"", "true"})
  void textThatIsNoNumberIsRefused(String text) {
    assertThat(faults(text, JsonCursor::decimalOrText))
        .singleElement()
        .asString()
        .endsWith("allowed: a number, or a text that is one");
  }

  @Test
  void whatWasFoundIsShownOnOneLineAndNotAtFullLength() {
    assertThat(faults("\"a\\n\\\"\\u001b[31m\\u2028\"", JsonCursor::bool))
        .containsExactly(
            "NOT_ALLOWED t#: found \"a\\u000a\\\"\\u001b[31m\\u2028\", allowed: true or false");
    assertThat(faults("\"" + "x".repeat(1_000) + "\"", JsonCursor::bool))
        .containsExactly(
            "NOT_ALLOWED t#: found \""
                + "x".repeat(80)
                + "\"... (1000 characters), allowed: true or false");
    assertThat(faults("1" + "0".repeat(99), JsonCursor::bool))
        .containsExactly(
            "NOT_ALLOWED t#: found 1"
                + "0".repeat(79)
                + "... (100 characters), allowed: true or false");
  }

  @Test
  void veryManyFaultsAreCountedAndNotKept() {
    String text = "[" + "1,".repeat(1_499) + "1]";
    List<String> faults = faults(text, at -> at.list(JsonCursor::text));
    assertThat(faults).hasSize(1_001);
    assertThat(faults.get(999)).isEqualTo("NOT_ALLOWED t#/999: found 1, allowed: a text");
    assertThat(faults.get(1_000))
        .isEqualTo("NOT_ALLOWED t#: found 500 more faults from here on, allowed: none");
  }
}
