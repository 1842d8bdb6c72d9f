package org.ensemblerules.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.YearMonth;
import org.ensemblerules.source.InvalidValueException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Dates as labels give them. */
class MarkedDateTest {
  @ParameterizedTest
  @CsvSource({
    "2020-02-29, 2020-02-29, 2020-02-29",
    "2020-02, 2020-02-01, 2020-02-29",
    "2019-02, 2019-02-01, 2019-02-28",
    "2019-12, 2019-12-01, 2019-12-31",
    "2019, 2019-01-01, 2019-12-31",
    "1900, 1900-01-01, 1900-12-31",
    "2200-12-31, 2200-12-31, 2200-12-31"
  })
  void earliestAndLatestDay(String text, LocalDate earliest, LocalDate latest) {
    MarkedDate date = MarkedDate.parse(text);
    assertThat(date.earliest()).contains(earliest);
    assertThat(date.latest()).contains(latest);
    assertThat(date).hasToString(text);
  }

  @Test
  void theUnknownDateHasNoDay() {
    MarkedDate date = MarkedDate.parse("UNKNOWN");
    assertThat(date).isEqualTo(MarkedDate.unknown()).hasToString("UNKNOWN");
    assertThat(date.earliest()).isEmpty();
    assertThat(date.latest()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "2019-02-29",
        "2019-13",
        "1899",
        "2201-01",
        "1899-12-31",
        "19-05",
        "05/2019",
        "unknown",
        "2019-5-1",
        "20190501",
        "2019/05/01",
        "2019-05_01",
        "2019_05",
        "201:",
        "20 9",
        "-201",
        "\u0662\u0660\u0661\u0669",
        "2019-05-01T00:00"
      })
  void otherFormsAreRefused(String text) {
    assertThatThrownBy(() -> MarkedDate.parse(text))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("MarkedDate")
        .hasMessageContaining("YYYY-MM-DD, YYYY-MM, YYYY or UNKNOWN, years 1900 to 2200");
  }

  @ParameterizedTest
  @CsvSource({
    "2020-01-02, 2020-01-01, true, true",
    "2020-01-01, 2020-01-01, false, true",
    "2020-01-01, 2020-01-02, false, false",
    "2020-02, 2020-01, true, true",
    "2020-01, 2020-01, false, false",
    "2020-01, 2020-01-01, false, true",
    "2020-01-31, 2020-01, false, true",
    "2020-01-30, 2020-01, false, false",
    "2021, 2020, true, true",
    "2020, 2020, false, false",
    "2020, 2019-12-31, true, true",
    "UNKNOWN, 2020, false, false",
    "2020, UNKNOWN, false, false",
    "UNKNOWN, UNKNOWN, false, false"
  })
  void certainOrder(String one, String other, boolean after, boolean notBefore) {
    assertThat(MarkedDate.parse(one).certainlyAfter(MarkedDate.parse(other))).isEqualTo(after);
    assertThat(MarkedDate.parse(one).certainlyNotBefore(MarkedDate.parse(other)))
        .isEqualTo(notBefore);
  }

  @ParameterizedTest
  @CsvSource({
    "2020-01-02, 2020-01-01, false, false",
    "2020-01-01, 2020-01-01, true, true",
    "2020-01-01, 2020-01-02, true, true",
    "2020-01, 2019-12-31, false, false",
    "2020-01, 2020-01-01, false, true",
    "2020-01, 2020-01-30, false, true",
    "2020-01, 2020-01-31, true, true",
    "2020, 2020-12-30, false, true",
    "2020, 2020-12-31, true, true",
    "UNKNOWN, 2200-12-31, false, true"
  })
  void certainlyAndPossiblyByADay(String date, LocalDate day, boolean certain, boolean possible) {
    assertThat(MarkedDate.parse(date).certainlyBy(day)).isEqualTo(certain);
    assertThat(MarkedDate.parse(date).possiblyBy(day)).isEqualTo(possible);
  }

  @Test
  void theWaysToMakeOneAgree() {
    assertThat(MarkedDate.of(LocalDate.of(2020, 5, 4))).isEqualTo(MarkedDate.parse("2020-05-04"));
    assertThat(new MarkedDate.Month(YearMonth.of(2020, 5))).isEqualTo(MarkedDate.parse("2020-05"));
    assertThat(new MarkedDate.OfYear(2020)).isEqualTo(MarkedDate.parse("2020"));
  }
}
