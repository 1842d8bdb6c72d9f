package org.ensemblerules.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.Checked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CleaningResultTableTest {
  private static final CleaningResultRow ORGANICS =
      new CleaningResultRow(
          Washes.provenance("organics"),
          Contaminant.SEMIVOLATILE_ORGANICS,
          new CleaningDemand.Removal(Limit.atLeast("50", Unit.PERCENT)));
  private static final CleaningResultRow BACTERIA =
      new CleaningResultRow(
          Washes.provenance("bacteria"), Contaminant.BACTERIA, new CleaningDemand.WholeLogs(3));
  private static final CleaningResultTable TABLE =
      CleaningResultTable.of(List.of(ORGANICS, BACTERIA)).orElseThrow();

  private static CleaningAnswer organics(CleaningResult result) {
    return TABLE
        .judge(Map.of(Contaminant.SEMIVOLATILE_ORGANICS, result))
        .get(Contaminant.SEMIVOLATILE_ORGANICS);
  }

  private static CleaningAnswer bacteria(CleaningResult result) {
    return TABLE.judge(Map.of(Contaminant.BACTERIA, result)).get(Contaminant.BACTERIA);
  }

  private static CleaningResult removal(String before, String after) {
    return RemovalEfficiency.of(
        Quantity.of(before, Unit.MILLIGRAM_PER_LITER),
        Quantity.of(after, Unit.MICROGRAM_PER_LITER));
  }

  private static CleaningResult logs(String before, String after, String detectionLimit) {
    return LogReduction.of(
        new BigDecimal(before),
        new BigDecimal(after),
        Optional.of(detectionLimit).filter(text -> !text.isEmpty()).map(BigDecimal::new));
  }

  @ParameterizedTest
  @CsvSource({"1, 500, true", "1, 499, true", "1, 500.0001, false", "1, 1430, false", "1, 0, true"})
  void removalKeepsItsLimit(String before, String after, boolean meets) {
    assertThat(organics(removal(before, after)) instanceof CleaningAnswer.Meets).isEqualTo(meets);
  }

  /** 580 to 0.725 is 2.903 logs (cryer.org.uk): two whole logs, not three. */
  @Test
  void logsAreRoundedDown() {
    assertThat(bacteria(logs("580", "0.725", "")))
        .isEqualTo(new CleaningAnswer.Fails(BACTERIA, "2 whole logs"));
    assertThat(bacteria(logs("580", "0.58", ""))).isEqualTo(new CleaningAnswer.Meets(BACTERIA));
  }

  @Test
  void noneFoundMeetsOnlyWhatCouldHaveBeenFound() {
    assertThat(bacteria(logs("10000", "0", "10"))).isEqualTo(new CleaningAnswer.Meets(BACTERIA));
    assertThat(bacteria(logs("1000", "0", "10")))
        .isEqualTo(
            new CleaningAnswer.NoResult(
                BACTERIA, "none found, but shown only to be at least 2 logs"));
    assertThat(bacteria(logs("1000", "0", ""))).isInstanceOf(CleaningAnswer.NoResult.class);
    assertThat(bacteria(logs("0", "0", "1"))).isInstanceOf(CleaningAnswer.NoResult.class);
  }

  @Test
  void everyRowIsAnsweredAndNothingUnknownMeets() {
    assertThat(TABLE.judge(Map.of()))
        .isEqualTo(
            Map.of(
                Contaminant.SEMIVOLATILE_ORGANICS,
                new CleaningAnswer.NoResult(ORGANICS, "not stated"),
                Contaminant.BACTERIA,
                new CleaningAnswer.NoResult(BACTERIA, "not stated")));
    assertThat(TABLE.judge(Map.of(Contaminant.HEAVY_METALS, removal("1", "0"))))
        .containsEntry(Contaminant.HEAVY_METALS, new CleaningAnswer.NoRule());
    assertThat(organics(logs("1000", "1", ""))).isInstanceOf(CleaningAnswer.NoResult.class);
    assertThat(bacteria(removal("1", "0"))).isInstanceOf(CleaningAnswer.NoResult.class);
    assertThat(organics(removal("0", "0"))).isInstanceOf(CleaningAnswer.NoResult.class);
  }

  @Test
  void unsoundRowsAreRefused() {
    assertThat(CleaningResultTable.of(List.of(BACTERIA, BACTERIA)))
        .isInstanceOf(Checked.Refused.class);
    assertThat(
            CleaningResultTable.of(
                List.of(
                    new CleaningResultRow(
                        Washes.provenance("a"),
                        Contaminant.HEAVY_METALS,
                        new CleaningDemand.Removal(Limit.atLeast("50", Unit.NEWTON))))))
        .isInstanceOf(Checked.Refused.class);
  }
}
