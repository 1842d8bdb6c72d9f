package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.ensemblerules.GearRules;
import org.ensemblerules.LaboratoryRules;
import org.ensemblerules.care.CleaningAnswer;
import org.ensemblerules.care.CleaningResult;
import org.ensemblerules.care.Contaminant;
import org.ensemblerules.care.RemovalEfficiency;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.strength.HydrostaticResult;
import org.ensemblerules.strength.HydrostaticTrial;
import org.ensemblerules.strength.Risk;
import org.ensemblerules.strength.numeric.Percentages;
import org.ensemblerules.strength.numeric.Retroreflection;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Test;

/** What a laboratory asks at the door is answered by the shipped tables and by the formulas. */
class LaboratoryRulesTest {
  private static final GearRules RULES = ShippedRules.standard();
  private static final LaboratoryRules DOOR = RULES.laboratory();

  private static Quantity newtons(String value) {
    return Quantity.of(value, Unit.NEWTON);
  }

  @Test
  void theTablesJudgeWaterAndCleaning() {
    HydrostaticTrial trial =
        new HydrostaticTrial(
            Quantity.of("6.9", Unit.KILOPASCAL), Quantity.of("15", Unit.SECOND), List.of());
    ComparisonMethod method = new ComparisonMethod.Absolute();
    assertThat(DOOR.waterUnderPressure(ElementKind.COAT, Use.STRUCTURAL, trial, method))
        .isNotInstanceOf(HydrostaticResult.NoRule.class)
        .isEqualTo(
            RULES
                .tables()
                .strength()
                .hydrostatic()
                .judge(ElementKind.COAT, Use.STRUCTURAL, trial, method));
    CleaningResult half =
        RemovalEfficiency.of(
            Quantity.of("10", Unit.MILLIGRAM_PER_LITER),
            Quantity.of("5", Unit.MILLIGRAM_PER_LITER));
    Map<Contaminant, CleaningResult> results = Map.of(Contaminant.SEMIVOLATILE_ORGANICS, half);
    assertThat(DOOR.cleaning(results))
        .hasEntrySatisfying(
            Contaminant.SEMIVOLATILE_ORGANICS,
            answer -> assertThat(answer).isInstanceOf(CleaningAnswer.Meets.class))
        .isEqualTo(RULES.tables().care().results().judge(results));
  }

  /**
   * The formulas have checks against the outside of their own; these are shares of a normal law.
   */
  @Test
  void theFormulasAreThoseOfTheirPackages() {
    Risk.Interval upTo = Risk.Interval.atMost(10);
    assertThat(DOOR.conformanceProbability(9, 1, upTo))
        .isEqualTo(Risk.conformanceProbability(9, 1, upTo))
        .isCloseTo(0.841, within(0.001));
    assertThat(DOOR.riskOfGuardBand(1, 2))
        .isEqualTo(Risk.ofGuardBand(1, 2))
        .isCloseTo(0.023, within(0.001));
    assertThat(DOOR.globalRisk(9, 1, 0.25, upTo, upTo))
        .isEqualTo(Risk.global(9, 1, 0.25, upTo, upTo));
    assertThat(DOOR.criticalDifference(newtons("12"), 4)).isEqualTo(6);
    Quantity distance = Quantity.of("15", Unit.METER);
    Quantity area = Quantity.of("0.01", Unit.SQUARE_METER);
    BigDecimal half = new BigDecimal("0.5");
    assertThat(DOOR.retroreflection(half, BigDecimal.TEN, distance, area))
        .isEqualTo(Retroreflection.coefficient(half, BigDecimal.TEN, distance, area));
    assertThat(DOOR.seamEfficiency(newtons("80"), newtons("100")))
        .isEqualTo(Percentages.seamEfficiency(newtons("80"), newtons("100")));
    assertThat(DOOR.retention(newtons("70"), newtons("100")))
        .isEqualTo(Percentages.retention(newtons("70"), newtons("100")));
    assertThat(DOOR.shrinkage(newtons("100"), newtons("95")))
        .isEqualTo(Percentages.shrinkage(newtons("100"), newtons("95")));
  }
}
