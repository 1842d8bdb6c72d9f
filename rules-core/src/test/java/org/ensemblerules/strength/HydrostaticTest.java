package org.ensemblerules.strength;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.junit.jupiter.api.Test;

/** Fixed pressure: conditions, spots, and what a trial outside them still shows. */
class HydrostaticTest {
  private static final HydrostaticTable TABLE =
      HydrostaticTable.of(
              List.of(
                  new HydrostaticRow(
                      StrengthFixtures.row("barrier"),
                      ElementKind.COAT,
                      Use.STRUCTURAL,
                      Limit.atLeast("1", Unit.POUND_FORCE_PER_SQUARE_INCH)
                          .alsoPrinted(Quantity.of("6.9", Unit.KILOPASCAL)),
                      Limit.atLeast("15", Unit.SECOND),
                      3,
                      3,
                      "holds 1 psi for 15 s")))
          .orElseThrow();

  private static HydrostaticResult judge(
      Quantity pressure, String seconds, YesNoUnknown lastSpot, int spotsOfEach) {
    List<HydrostaticTrial.Spot> spots = new ArrayList<>();
    for (int i = 0; i < 2 * spotsOfEach; i++) {
      boolean last = i == 2 * spotsOfEach - 1;
      spots.add(
          new HydrostaticTrial.Spot("spot " + i, i % 2 == 0, last ? lastSpot : YesNoUnknown.NO));
    }
    return TABLE.judge(
        ElementKind.COAT,
        Use.STRUCTURAL,
        new HydrostaticTrial(pressure, Quantity.of(seconds, Unit.SECOND), spots),
        ComparisonMethod.roundedToLimit());
  }

  private static Quantity kilopascals(String value) {
    return Quantity.of(value, Unit.KILOPASCAL);
  }

  @Test
  void holdsAndLeaks() {
    assertThat(judge(kilopascals("6.9"), "15", YesNoUnknown.NO, 3))
        .isInstanceOf(HydrostaticResult.Held.class);
    assertThat(judge(kilopascals("6.9"), "15", YesNoUnknown.YES, 3))
        .isInstanceOfSatisfying(
            HydrostaticResult.Leaked.class, leak -> assertThat(leak.spots()).hasSize(1));
  }

  /** 45 cm of water, which a page gives for the pressure, is 0.64 psi. */
  @Test
  void holdingUnderMilderConditionsShowsNothing() {
    assertThat(judge(Quantity.of("30", Unit.CENTIMETER_OF_WATER), "10", YesNoUnknown.NO, 2))
        .isInstanceOfSatisfying(
            HydrostaticResult.ConditionsNotKept.class,
            not ->
                assertThat(not.faults())
                    .containsExactly(
                        HydrostaticFault.PRESSURE_TOO_LOW,
                        HydrostaticFault.DWELL_TOO_SHORT,
                        HydrostaticFault.TOO_FEW_FABRIC_SPOTS,
                        HydrostaticFault.TOO_FEW_SEAM_SPOTS));
    assertThat(judge(kilopascals("6.9"), "15", YesNoUnknown.UNKNOWN, 3))
        .isInstanceOf(HydrostaticResult.ConditionsNotKept.class);
  }

  @Test
  void aLeakUnderMilderConditionsStands() {
    assertThat(judge(kilopascals("3"), "5", YesNoUnknown.YES, 1))
        .isInstanceOf(HydrostaticResult.Leaked.class);
  }

  @Test
  void aLeakUnderHarderConditionsShowsNothingButHoldingDoes() {
    assertThat(judge(kilopascals("20"), "15", YesNoUnknown.YES, 3))
        .isInstanceOfSatisfying(
            HydrostaticResult.ConditionsNotKept.class,
            not -> assertThat(not.faults()).containsExactly(HydrostaticFault.PRESSURE_TOO_HIGH));
    assertThat(judge(kilopascals("20"), "60", YesNoUnknown.NO, 3))
        .isInstanceOf(HydrostaticResult.Held.class);
  }

  @Test
  void noRowIsNoPass() {
    assertThat(
            TABLE.judge(
                ElementKind.GLOVES,
                Use.STRUCTURAL,
                new HydrostaticTrial(kilopascals("6.9"), Quantity.of("15", Unit.SECOND), List.of()),
                ComparisonMethod.absolute()))
        .isInstanceOf(HydrostaticResult.NoRule.class);
  }
}
