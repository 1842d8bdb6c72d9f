package org.ensemblerules.tables.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.tables.message.JsonFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Readers of the values that texts share. */
class ValueReadersTest {
  private static final JsonReader READER =
      new JsonReader(JsonLimits.ofDocument(1_000), UnknownFields.REFUSED);

  private static <T> List<String> faults(String text, JsonDecoder<T> decoder) {
    Checked<T, JsonFault> read = READER.read("t", text, decoder);
    assertThat(read).as(text).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<T, JsonFault>) read)
        .faults().stream().map(JsonFault::toString).toList();
  }

  private static <T> T value(String text, JsonDecoder<T> decoder) {
    return READER.read("t", text, decoder).orElseThrow();
  }

  @Test
  void daysAreIsoDaysOfTheCalendar() {
    assertThat(value("\"2024-02-29\"", ValueReaders::day)).isEqualTo(LocalDate.of(2024, 2, 29));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2023-02-29",
        "2023-2-9",
        "2023-02",
        "20230209",
        "2023-02-09T00:00",
        "1899-12-31",
        "2201-01-01",
        "+2023-02-09",
        "２０２３-02-09",
        ""
      })
  void otherDaysAreRefused(String day) {
    assertThat(faults("\"" + day + "\"", ValueReaders::day))
        .containsExactly(
            "t#: found \"" + day + "\", allowed: a day as YYYY-MM-DD, years 1900 to 2200");
  }

  @ParameterizedTest
  @ValueSource(strings = {"2019-05-14", "2019-05", "2019", "UNKNOWN"})
  void markedDatesAreReadAsTheyAreWritten(String date) {
    assertThat(value("\"" + date + "\"", ValueReaders::markedDate))
        .isEqualTo(MarkedDate.parse(date))
        .hasToString(date);
  }

  @ParameterizedTest
  @ValueSource(strings = {"2019-13", "2019-02-30", "19", "1899", "unknown", "-999", "05/2019", ""})
  void otherMarkedDatesAreRefused(String date) {
    assertThat(faults("\"" + date + "\"", ValueReaders::markedDate))
        .containsExactly("t#: found \"" + date + "\", allowed: " + MarkedDate.FORMS);
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void quantitiesKeepDigitsAndUnit(Unit unit) {
    String text = "{\"value\": \"2.50\", \"unit\": \"" + unit.symbol() + "\"}";
    assertThat(value(text, ValueReaders::quantity))
        .isEqualTo(new Quantity(new BigDecimal("2.50"), unit));
  }

  @Test
  void quantitiesBeyondTheirLimitsAreRefused() {
    assertThat(faults("{\"value\": 1e30, \"unit\": \"mm\"}", ValueReaders::quantity))
        .containsExactly("t#/value: found 1E+30, allowed: at most 30 digits, scale -9 to 20");
    assertThat(faults("{\"value\": \"1 in\", \"unit\": \"IN\"}", ValueReaders::quantity))
        .containsExactly(
            "t#/value: found \"1 in\", allowed: a number, or a text that is one",
            "t#/unit: found \"IN\", allowed: nearest in; one of "
                + Stream.of(Unit.values()).map(Unit::symbol).collect(Collectors.joining(", ")));
  }

  @Test
  void sitesAreAPartWithOrWithoutALayer() {
    assertThat(value("\"SUSPENSION\"", ValueReaders::site)).isEqualTo(Site.of(Part.SUSPENSION));
    assertThat(value("\"FABRIC@OUTER_SHELL\"", ValueReaders::site))
        .isEqualTo(Site.of(Part.FABRIC, LayerKind.OUTER_SHELL));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "@", "FABRIC@", "@OUTER_SHELL", "FABRIC@OUTER_SHELL@", "fabric"})
  void otherSitesAreRefused(String site) {
    assertThat(faults("\"" + site + "\"", ValueReaders::site)).isNotEmpty();
  }

  @Test
  void idsAreReadInTheirForms() {
    assertThat(value("\"NFPA_1851_2020\"", ValueReaders::editionId))
        .isEqualTo(new OriginId("NFPA_1851_2020"));
    assertThat(value("\"cfr-29-1910\"", ValueReaders::sourceId))
        .isEqualTo(new SourceId("cfr-29-1910"));
    assertThat(faults("\"NFPA 1851\"", ValueReaders::editionId))
        .containsExactly("t#: found \"NFPA 1851\", allowed: groups of A-Z and 0-9, underscores");
  }
}
