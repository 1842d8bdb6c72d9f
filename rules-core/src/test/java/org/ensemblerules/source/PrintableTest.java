package org.ensemblerules.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrintableTest {
  @ParameterizedTest
  @ValueSource(
      strings = {"", "COAT", "J\u00FCrgen \u6D88\u9632 \uD83D\uDE92", "a \\ b \" c", "\u00A0"})
  void whatPrintsAsItselfStays(String text) {
    assertThat(Printable.of(text)).isSameAs(text);
  }

  /**
   * The controls of direction of Unicode Standard Annex 9, section 2, and the line ends of the
   * Unicode Standard, section 5.8.
   */
  @ParameterizedTest
  @CsvSource({
    "9", "a", "d", "b", "c", "85", "1b", "0", "7f", "2028", "2029", "61c", "200e", "200f", "202a",
    "202b", "202c", "202d", "202e", "2066", "2067", "2068", "2069", "feff", "200b", "ad"
  })
  void whatDoesNotIsEscaped(String digits) {
    String text = "a" + (char) Integer.parseInt(digits, 16) + "b";
    assertThat(Printable.of(text))
        .isEqualTo("a\\u" + "0".repeat(4 - digits.length()) + digits + "b");
  }

  @Test
  void halvesOfPairsAndHiddenPairsAreEscaped() {
    assertThat(Printable.of("a\uD83D")).isEqualTo("a\\ud83d");
    assertThat(Printable.of("\uDE92\uD83D")).isEqualTo("\\ude92\\ud83d");
    // A tag, which nothing shows.
    assertThat(Printable.of("a\uDB40\uDC41b")).isEqualTo("a\\udb40\\udc41b");
  }

  @Test
  void theMessageOfAnImpossibleValueStandsOnOneLine() {
    assertThatThrownBy(() -> new SourceId("a\nb: fit for service\u202e"))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("a\\u000ab: fit for service\\u202e");
  }
}
