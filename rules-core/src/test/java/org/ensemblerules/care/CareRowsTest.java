package org.ensemblerules.care;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;
import org.junit.jupiter.api.Test;

/** What rows and records say of themselves: rule sets are told apart by it. */
class CareRowsTest {
  @Test
  void rowsSayTheirValuesInAFixedOrder() {
    assertThat(
            Washes.within(Use.STRUCTURAL, WashMeasure.WATER_TEMPERATURE, Washes.WARM).canonical())
        .containsExactly(
            "COAT",
            "STRUCTURAL",
            "",
            "WATER_TEMPERATURE",
            "at most 105 degF (also printed: 40 degC)");
    assertThat(
            new CareLimitRow(
                    Washes.provenance("a"),
                    ElementKind.TROUSERS,
                    Use.PROXIMITY,
                    Optional.of(LayerKind.OUTER_SHELL),
                    new CareDemand.Forbidden(WashPractice.MACHINE_WASHING))
                .canonical())
        .containsExactly("TROUSERS", "PROXIMITY", "OUTER_SHELL", "MACHINE_WASHING", "NO");
    assertThat(
            new CleaningResultRow(
                    Washes.provenance("a"), Contaminant.BACTERIA, new CleaningDemand.WholeLogs(3))
                .canonical())
        .containsExactly("BACTERIA", "reduction at least 3 logs");
    assertThat(
            new CleaningResultRow(
                    Washes.provenance("a"),
                    Contaminant.HEAVY_METALS,
                    new CleaningDemand.Removal(Limit.atLeast("50", Unit.PERCENT)))
                .canonical())
        .containsExactly("HEAVY_METALS", "removal at least 50 %");
    assertThat(Washes.table().rows()).isEqualTo(Washes.rows());
  }

  @Test
  void deviationsOfForceAndPracticeSayWhatWasFound() {
    ExtractorForce force =
        ExtractorForce.ofDiameter(
            Quantity.of("36", Unit.INCH), Quantity.of("500", Unit.TURN_PER_MINUTE));
    WashRecord wash =
        Washes.sound()
            .extraction(new Extraction.Computed(force))
            .practice(WashPractice.CHLORINE_BLEACH, YesNoUnknown.YES)
            .build();
    WashAnswer.OutsideLimits answer =
        (WashAnswer.OutsideLimits)
            Washes.table().judge(wash, Washes.coat(Use.STRUCTURAL), Set.of());
    assertThat(answer.deviations())
        .extracting(WashDeviation::found)
        .containsExactly("127.82 g (radius 18.0 in at 500 r/min)", "YES");
    assertThat(answer.deviations())
        .extracting(WashDeviation::allowed)
        .containsExactly("at most 100 g", "NO");
  }

  @Test
  void aLeastForceIsComparedToo() {
    CareLimitTable table =
        CareLimitTable.of(
                List.of(
                    Washes.within(
                        Use.STRUCTURAL,
                        WashMeasure.EXTRACTION,
                        Limit.atLeast("50", Unit.STANDARD_GRAVITY))))
            .orElseThrow();
    Quantity radius = Quantity.of("0.5", Unit.METER);
    for (Extraction enough :
        List.of(
            new Extraction.Stated(Quantity.of("50", Unit.STANDARD_GRAVITY)),
            new Extraction.Computed(
                ExtractorForce.ofRadius(radius, Quantity.of("300", Unit.TURN_PER_MINUTE))))) {
      assertThat(judge(table, enough)).isInstanceOf(WashAnswer.Counts.class);
    }
    for (Extraction little :
        List.of(
            new Extraction.NotSpun(),
            new Extraction.NotStated(),
            new Extraction.Stated(Quantity.of("49.9", Unit.STANDARD_GRAVITY)),
            new Extraction.Computed(
                ExtractorForce.ofRadius(radius, Quantity.of("299", Unit.TURN_PER_MINUTE))))) {
      assertThat(judge(table, little)).isInstanceOf(WashAnswer.OutsideLimits.class);
    }
  }

  private static WashAnswer judge(CareLimitTable table, Extraction extraction) {
    return table.judge(
        WashRecord.builder().extraction(extraction).build(), Washes.coat(Use.STRUCTURAL), Set.of());
  }

  @Test
  void recordsAreEqualByWhatTheySay() {
    WashRecord wash = Washes.sound().build();
    assertThat(wash).isEqualTo(Washes.sound().build()).hasSameHashCodeAs(Washes.sound().build());
    for (WashRecordBuilder other :
        List.of(
            Washes.sound().detergentPh(BigDecimal.ONE),
            Washes.sound().extraction(new Extraction.NotSpun()),
            Washes.sound().machine(MachineType.BY_HAND),
            Washes.sound().practice(WashPractice.CHLORINE_BLEACH, YesNoUnknown.UNKNOWN))) {
      assertThat(other.build()).isNotEqualTo(wash);
    }
    assertThat(wash.toString()).contains("WATER_TEMPERATURE=105 degF", "100 g", "FRONT_LOADING");
  }

  @Test
  void edgesOfWhatCanBeBuilt() {
    WashRecordBuilder wash = Washes.sound().detergentPh(new BigDecimal("14"));
    assertThat(wash.waterTemperature(Quantity.of("0", Unit.KELVIN)).detergentPh(BigDecimal.ZERO))
        .isNotNull();
    assertThatThrownBy(() -> new CleaningDemand.WholeLogs(0))
        .isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(() -> new CleaningDemand.WholeLogs(21))
        .isInstanceOf(InvalidValueException.class);
    assertThat(new CleaningDemand.WholeLogs(20).logs()).isEqualTo(20);
  }
}
