package org.ensemblerules.care;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CareLimitTableTest {
  private static final CareLimitTable TABLE = Washes.table();
  private static final CareDemand.Within WIDER =
      new CareDemand.Within(
          WashMeasure.WATER_TEMPERATURE,
          Limit.atMost("105", Unit.DEGREE_FAHRENHEIT),
          Optional.of(Limit.atMost("140", Unit.DEGREE_FAHRENHEIT)));
  private static final Site WHOLE = Site.of(Part.WHOLE_ELEMENT);

  private static WashAnswer judge(WashRecordBuilder wash) {
    return TABLE.judge(wash.build(), Washes.coat(Use.STRUCTURAL), Set.of());
  }

  private static WashAnswer.OutsideLimits outside(WashRecordBuilder wash) {
    return (WashAnswer.OutsideLimits) judge(wash);
  }

  @Test
  void aWashWithinEveryLimitCounts() {
    assertThat(judge(Washes.sound()))
        .isInstanceOfSatisfying(
            WashAnswer.Counts.class, counts -> assertThat(counts.kept()).hasSize(9));
  }

  /** Restated as 105 °F (40 °C): 105 °F is 40.56 °C, and the first number counts. */
  @ParameterizedTest
  @CsvSource({
    "105, degF, true", "40, degC, true", "40.5, degC, true", "40.55, degC, true",
    "40.56, degC, false", "105.01, degF, false", "140, degF, false", "313.7, K, true"
  })
  void temperaturesAreComparedExactlyAcrossUnits(String value, String unit, boolean kept) {
    Quantity temperature = Quantity.of(value, Unit.ofSymbol(unit).orElseThrow());
    for (WashRecordBuilder wash :
        List.of(
            Washes.sound().waterTemperature(temperature),
            Washes.sound().dryingTemperature(temperature))) {
      if (kept) {
        assertThat(judge(wash)).isInstanceOf(WashAnswer.Counts.class);
      } else {
        assertThat(outside(wash).findings())
            .containsExactly(new WashAnswer.WashFinding(DefectKind.OVERHEATED_IN_WASHING, WHOLE));
      }
    }
  }

  @Test
  void overheatingTwiceIsOneFindingWithTwoDeviationsThatShowTheirBasis() {
    Quantity hot = Quantity.of("60", Unit.DEGREE_CELSIUS);
    WashAnswer.OutsideLimits answer =
        outside(Washes.sound().waterTemperature(hot).dryingTemperature(hot));
    assertThat(answer.findings()).hasSize(1);
    assertThat(answer.deviations())
        .extracting(WashDeviation::toString)
        .containsExactly(
            "WATER_TEMPERATURE: found 60 degC (about 140 degF), allowed: at most 105 degF (also"
                + " printed: 40 degC) (MEMORY, HIGH)",
            "DRYING_TEMPERATURE: found 60 degC (about 140 degF), allowed: at most 105 degF (also"
                + " printed: 40 degC) (MEMORY, HIGH)");
  }

  @Test
  void bleachIsAFinding() {
    assertThat(
            outside(Washes.sound().practice(WashPractice.CHLORINE_BLEACH, YesNoUnknown.YES))
                .findings())
        .containsExactly(new WashAnswer.WashFinding(DefectKind.BLEACHED, WHOLE));
  }

  @Test
  void whatNobodyStatedKeepsAWashFromCountingButIsNoFinding() {
    WashAnswer.OutsideLimits answer = outside(WashRecord.builder());
    assertThat(answer.deviations()).hasSize(9).noneMatch(WashDeviation::stated);
    assertThat(answer.findings()).isEmpty();
    assertThat(outside(Washes.sound().practice(WashPractice.CHLORINE_BLEACH, YesNoUnknown.UNKNOWN)))
        .satisfies(
            unknown -> {
              assertThat(unknown.findings()).isEmpty();
              assertThat(unknown.deviations())
                  .singleElement()
                  .returns("not stated", WashDeviation::found);
            });
  }

  @ParameterizedTest
  @CsvSource({
    "5.9, false",
    "5.99, false",
    "6, true",
    "6.0, true",
    "10.5, true",
    "10.51, false",
    "14, false"
  })
  void detergentsKeepBothLimits(String ph, boolean kept) {
    WashAnswer answer = judge(Washes.sound().detergentPh(new BigDecimal(ph)));
    assertThat(answer instanceof WashAnswer.Counts).isEqualTo(kept);
    if (answer instanceof WashAnswer.OutsideLimits outside) {
      assertThat(outside.findings()).isEmpty();
      assertThat(outside.deviations()).hasSize(1);
    }
  }

  @Test
  void machinesAreLimitedByTypeAndForce() {
    assertThat(judge(Washes.sound().machine(MachineType.TOP_LOADING)))
        .isInstanceOf(WashAnswer.OutsideLimits.class);
    assertThat(judge(Washes.sound().machine(MachineType.UNKNOWN)))
        .isInstanceOf(WashAnswer.OutsideLimits.class);
    assertThat(
            judge(Washes.sound().machine(MachineType.BY_HAND).extraction(new Extraction.NotSpun())))
        .isInstanceOf(WashAnswer.Counts.class);
    assertThat(
            judge(
                Washes.sound()
                    .extraction(
                        new Extraction.Stated(Quantity.of("100.01", Unit.STANDARD_GRAVITY)))))
        .isInstanceOf(WashAnswer.OutsideLimits.class);
  }

  /** 36 in drum: 442 r/min is 99.88 g, 443 r/min more than 100 g. */
  @Test
  void theForceMayFollowFromDrumAndSpeed() {
    for (int turns : new int[] {442, 443}) {
      ExtractorForce force =
          ExtractorForce.ofDiameter(
              Quantity.of("36", Unit.INCH),
              Quantity.of(Integer.toString(turns), Unit.TURN_PER_MINUTE));
      assertThat(
              judge(Washes.sound().extraction(new Extraction.Computed(force)))
                  instanceof WashAnswer.Counts)
          .isEqualTo(turns == 442);
    }
  }

  @Test
  void layersWashedTogetherDoNotCount() {
    assertThat(
            outside(Washes.sound().practice(WashPractice.LAYERS_TOGETHER, YesNoUnknown.YES))
                .deviations())
        .singleElement()
        .returns(true, WashDeviation::stated);
  }

  /** Restated of the 2008 edition: no machine wash, no machine dry of a reflective shell. */
  @Test
  void reflectiveShellsAreWashedByHand() {
    Element proximity = Washes.coat(Use.PROXIMITY);
    WashRecord machine = Washes.sound().build();
    WashRecord hand = Washes.sound().machine(MachineType.BY_HAND).build();
    Set<LayerKind> shell = Set.of(LayerKind.OUTER_SHELL);
    assertThat(TABLE.judge(machine, proximity, shell)).isInstanceOf(WashAnswer.OutsideLimits.class);
    assertThat(TABLE.judge(hand, proximity, shell)).isInstanceOf(WashAnswer.Counts.class);
    assertThat(TABLE.judge(machine, proximity, Set.of(LayerKind.LINER_SYSTEM)))
        .isInstanceOf(WashAnswer.Counts.class);
    // Nobody said which layers: the shell may have been among them.
    assertThat(TABLE.judge(machine, proximity, Set.of()))
        .isInstanceOf(WashAnswer.OutsideLimits.class);
    assertThat(
            TABLE.judge(
                Washes.sound()
                    .machine(MachineType.BY_HAND)
                    .practice(WashPractice.MACHINE_DRYING, YesNoUnknown.YES)
                    .build(),
                proximity,
                shell))
        .isInstanceOf(WashAnswer.OutsideLimits.class);
  }

  @ParameterizedTest
  @EnumSource(Use.class)
  void withoutARowNoWashCounts(Use use) {
    WashRecord sound = Washes.sound().build();
    Element hood = Element.builder(new ElementId("H-1"), ElementKind.HOOD, use).build();
    assertThat(TABLE.judge(sound, hood, Set.of())).isEqualTo(new WashAnswer.NoRule());
    assertThat(CareLimitTable.of(List.of()).orElseThrow().judge(sound, Washes.coat(use), Set.of()))
        .isEqualTo(new WashAnswer.NoRule());
  }

  @Test
  void unsoundRowsAreRefused() {
    CareLimitRow bleach = Washes.forbidden(Use.STRUCTURAL, WashPractice.CHLORINE_BLEACH);
    assertThat(CareLimitTable.of(List.of(bleach, bleach))).isInstanceOf(Checked.Refused.class);
    assertThat(
            CareLimitTable.of(
                List.of(
                    Washes.within(
                        Use.STRUCTURAL, WashMeasure.EXTRACTION, Limit.atMost("100", Unit.NEWTON)))))
        .isInstanceOfSatisfying(
            Checked.Refused.class,
            faulty ->
                assertThat(faulty.faults().toString())
                    .contains("at most 100 N", "ACCELERATION_RATIO"));
  }

  @Test
  void impossibleRecordsCannotBeBuilt() {
    WashRecordBuilder wash = WashRecord.builder();
    Quantity meter = Quantity.of("1", Unit.METER);
    Quantity belowZero = Quantity.of("-274", Unit.DEGREE_CELSIUS);
    Quantity minus = Quantity.of("-1", Unit.STANDARD_GRAVITY);
    BigDecimal basic = new BigDecimal("14.1");
    assertInvalid(() -> wash.waterTemperature(meter));
    assertInvalid(() -> wash.dryingTemperature(belowZero));
    assertInvalid(() -> wash.detergentPh(basic));
    assertInvalid(() -> new Extraction.Stated(minus));
    assertInvalid(() -> wash.practice(WashPractice.TOP_LOADER, YesNoUnknown.NO));
    assertInvalid(() -> wash.practice(WashPractice.MACHINE_WASHING, YesNoUnknown.NO));
  }

  private static void assertInvalid(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
    assertThatThrownBy(call).isInstanceOf(InvalidValueException.class);
  }

  @Test
  void betweenALimitAndTheWiderOneBelievedAWashDoesNotCountAndIsNoFinding() {
    CareLimitTable table =
        CareLimitTable.of(
                List.of(
                    new CareLimitRow(
                        Washes.within(
                                Use.STRUCTURAL,
                                WashMeasure.WATER_TEMPERATURE,
                                Limit.atMost("105", Unit.DEGREE_FAHRENHEIT))
                            .provenance(),
                        ElementKind.COAT,
                        Use.STRUCTURAL,
                        Optional.empty(),
                        WIDER)))
            .orElseThrow();
    for (String value : List.of("105.01", "120", "140")) {
      WashAnswer.OutsideLimits answer = outside(table, value);
      assertThat(answer.findings()).isEmpty();
      assertThat(answer.deviations())
          .singleElement()
          .satisfies(each -> assertThat(each.stated()).isTrue());
    }
    assertThat(outside(table, "140.01").findings())
        .extracting(WashAnswer.WashFinding::defect)
        .containsExactly(DefectKind.OVERHEATED_IN_WASHING);
  }

  @Test
  void aFirmLimitIsStricterThanTheSameOneBeyondWhichSomethingIsUnconfirmed() {
    CareDemand firm = new CareDemand.Within(WIDER.measure(), WIDER.limit());
    assertThat(firm.compareStrictness(WIDER)).isEqualTo(Comparison.STRICTER);
    assertThat(WIDER.compareStrictness(firm)).isEqualTo(Comparison.MILDER);
    assertThat(WIDER.compareStrictness(WIDER)).isEqualTo(Comparison.SAME);
    CareDemand warm =
        new CareDemand.Within(WIDER.measure(), Limit.atMost("120", Unit.DEGREE_FAHRENHEIT));
    assertThat(warm.letsMoreCount(WIDER)).isTrue();
    assertThat(WIDER.letsMoreCount(warm)).isFalse();
    assertThat(warm.compareStrictness(WIDER)).isEqualTo(Comparison.UNDECIDED);
    assertThat(WIDER.allowed()).isEqualTo("at most 105 degF, unconfirmed at most 140 degF");
  }

  @Test
  void aWiderLimitIsWiderAndOnTheSameSide() {
    for (Limit wrong :
        List.of(
            Limit.atMost("105", Unit.DEGREE_FAHRENHEIT),
            Limit.atMost("100", Unit.DEGREE_FAHRENHEIT),
            Limit.atLeast("140", Unit.DEGREE_FAHRENHEIT),
            Limit.atMost("140", Unit.ONE))) {
      assertThatThrownBy(
              () -> new CareDemand.Within(WIDER.measure(), WIDER.limit(), Optional.of(wrong)))
          .isInstanceOf(InvalidValueException.class)
          .hasMessageContaining("Within.unconfirmed");
    }
  }

  private static WashAnswer.OutsideLimits outside(CareLimitTable table, String fahrenheit) {
    return (WashAnswer.OutsideLimits)
        table.judge(
            Washes.sound()
                .waterTemperature(Quantity.of(fahrenheit, Unit.DEGREE_FAHRENHEIT))
                .build(),
            Washes.coat(Use.STRUCTURAL),
            Set.of());
  }
}
