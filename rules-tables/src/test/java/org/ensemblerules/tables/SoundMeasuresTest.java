package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.CleaningDemand;
import org.ensemblerules.care.CleaningResultRow;
import org.ensemblerules.care.WashMeasure;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.fieldcheck.Expected;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.StrengthKinds;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.Construction;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.DiscardRow;
import org.ensemblerules.strength.DiscardRule;
import org.ensemblerules.strength.HydrostaticRow;
import org.ensemblerules.strength.MethodRow;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.RequirementRow;
import org.ensemblerules.strength.SmallSampleRow;
import org.ensemblerules.strength.SpecimenValue;
import org.ensemblerules.strength.Statistic;
import org.ensemblerules.strength.TestMethod;
import org.ensemblerules.tables.set.EditionTables;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.tables.set.TableFiles;
import org.junit.jupiter.api.Test;

/** What the frozen sound set says of measurements, value for value. */
class SoundMeasuresTest {
  private static final OriginId FIRST = new OriginId("FROZEN_1");
  private static final OriginId SECOND = new OriginId("FROZEN_2");
  private static final TestMethod TEAR = new TestMethod("FROZEN_TEAR");
  private static final TestMethod GRAB = new TestMethod("FROZEN_GRAB");

  private final LoadedTables set =
      TableLoader.load(TableFiles.in(FixtureSets.sound())).orElseThrow();

  private List<RequirementRow> requirements(OriginId edition) {
    return set.tables(edition).find(StrengthKinds.REQUIREMENTS).orElseThrow().rows();
  }

  @Test
  void everyTableBelongsToItsSubject() {
    assertThat(set.editions(Subject.CARE)).extracting(Edition::id).containsExactly(FIRST);
    assertThat(set.editions(Subject.PRODUCT))
        .extracting(Edition::id)
        .containsExactly(FIRST, SECOND);
    assertThat(set.tables(SECOND).find(CareKinds.CARE_LIMITS)).isEmpty();
    assertThat(set.tables(FIRST).find(StrengthKinds.METHODS)).isEmpty();
  }

  @Test
  void conditionsHaveALimitACountOrJustAYes() {
    List<ConditionRow> rows =
        set.tables(FIRST).find(InspectionKinds.CONDITIONS).orElseThrow().rows();
    assertThat(rows)
        .extracting(ConditionRow::condition)
        .containsExactly(
            Condition.WATER_PER_ALCOHOL,
            Condition.LIQUID_VOLUME,
            Condition.PLACES,
            Condition.ITEM_CLEAN);
    assertThat(rows)
        .extracting(ConditionRow::expected)
        .containsExactly(
            new Expected.Within(Limit.atLeast("6", Unit.ONE)),
            new Expected.Within(
                Limit.atLeast("1.0", Unit.US_CUP).alsoPrinted(Quantity.of("240", Unit.MILLILITER))),
            new Expected.CountAtLeast(3),
            new Expected.Yes());
    assertThat(rows)
        .extracting(ConditionRow::couldFailSound)
        .containsExactly(true, false, false, true);
  }

  @Test
  void strongerChecksAndConditionsAreCarriedOver() {
    EditionTables second = set.tables(SECOND);
    assertThat(
            second
                .find(InspectionKinds.STRONGER_CHECKS)
                .orElseThrow()
                .next(Check.LINER_LEAKAGE)
                .orElseThrow())
        .returns(Check.EXPERT_EVALUATION, row -> row.stronger())
        .returns(SECOND, row -> row.provenance().origin());
    assertThat(second.find(InspectionKinds.STRONGER_CHECKS).orElseThrow().rows()).hasSize(2);
    assertThat(second.find(InspectionKinds.CONDITIONS).orElseThrow().rows())
        .extracting(row -> row.key() + " " + row.expected())
        .containsExactly(
            "mixture-weak at least 6 1",
            "volume at least 1.0 cup (also printed: 240 mL)",
            "places at least 5");
  }

  @Test
  void aValueMeasuredInACheckHasALimitAndADefect() {
    assertThat(set.tables(FIRST).find(InspectionKinds.CHECK_LIMITS).orElseThrow().rows())
        .singleElement()
        .returns(Check.FIT_AND_OVERLAP, row -> row.check())
        .returns(DefectKind.OVERLAP_TOO_SMALL, row -> row.defect())
        .returns(
            Limit.atLeast("2", Unit.INCH).alsoPrinted(Quantity.of("50", Unit.MILLIMETER)),
            row -> row.limit());
  }

  @Test
  void tasksHaveEveryFormOfTimingAndOfWhatDischargesThem() {
    assertThat(set.tables(SECOND).find(InspectionKinds.TASKS)).isEmpty();
    assertThat(set.tables(FIRST).find(InspectionKinds.TASKS).orElseThrow().rows())
        .extracting(row -> row.key() + "; " + row.doneBy().text() + "; " + row.timing().text())
        .containsExactly(
            "advanced/COAT/STRUCTURAL; ADVANCED inspection; as the table of intervals has it",
            "advanced/HELMET/STRUCTURAL; ADVANCED inspection; as the table of intervals has it",
            "twice/COAT/STRUCTURAL; ADVANCED cleaning; 2 times in every 12 months, first by 12"
                + " months from ISSUE",
            "twice/HELMET/STRUCTURAL; ADVANCED cleaning; 2 times in every 12 months, first by 12"
                + " months from ISSUE",
            "soon/COAT/STRUCTURAL; ADVANCED cleaning; after each EXPOSURE within 7 days",
            "soon/HELMET/STRUCTURAL; ADVANCED cleaning; after each EXPOSURE within 7 days",
            "leak-check/COAT/STRUCTURAL; LINER_LEAKAGE passed; in every 6 months, first by 6"
                + " months from IN_SERVICE");
    assertThat(set.tables(FIRST).find(InspectionKinds.TASKS).orElseThrow().rows())
        .extracting(row -> row.exemptInReserve())
        .containsExactly(true, true, false, false, false, false, false);
  }

  @Test
  void careRoutesExpandToElementsAndLayers() {
    assertThat(set.tables(SECOND).find(CareKinds.CARE_ROUTES)).isEmpty();
    assertThat(set.tables(FIRST).find(CareKinds.CARE_ROUTES).orElseThrow().rows())
        .hasSize(27)
        .extracting(row -> row.key() + "; " + row.steps() + "; " + row.handling())
        .contains(
            "asbestos/HELMET/STRUCTURAL; [ISOLATE [], ADVANCED_CLEANING AS_MANUFACTURER_SAYS [DATE,"
                + " DOER], SHOW_CLEAN []]; []",
            "coat-cbrn-agent/COAT/STRUCTURAL/LINER_SYSTEM; [ISOLATE [], NO_RETURN []];"
                + " [DO_NOT_WASH]");
  }

  @Test
  void limitsOfRepairHaveEveryKindOfSubject() {
    assertThat(set.tables(SECOND).find(CareKinds.REPAIR_LIMITS)).isEmpty();
    assertThat(set.tables(FIRST).find(CareKinds.REPAIR_LIMITS).orElseThrow().rows())
        .extracting(
            row ->
                row.key()
                    + "; "
                    + row.subject().text()
                    + "; "
                    + row.least()
                    + "; "
                    + row.before()
                    + row.afterward())
        .containsExactly(
            "any/COAT/STRUCTURAL/FABRIC@OUTER_SHELL; ANY_DAMAGE; BASIC_REPAIR;"
                + " [CLEANLINESS][SEAM_PULL]",
            "burned/COAT/STRUCTURAL/FABRIC@OUTER_SHELL/CHARRING; DAMAGE CHARRING;"
                + " ADVANCED_REPLACEMENT; [][]",
            "burned/COAT/STRUCTURAL/FABRIC@OUTER_SHELL/BURN_HOLE; DAMAGE BURN_HOLE;"
                + " ADVANCED_REPLACEMENT; [][]",
            "replaced/COAT/STRUCTURAL/FABRIC@OUTER_SHELL; REPLACEMENT; ADVANCED_REPAIR; [][]",
            "opened/COAT/STRUCTURAL/FABRIC@OUTER_SHELL; LINER_OPENED; BASIC_REPAIR; [][]",
            "shell/HELMET/STRUCTURAL/HELMET_SHELL; ANY_DAMAGE; NOT_REPAIRABLE; [][]");
  }

  @Test
  void washLimitsExpandToElementsUsesAndLayers() {
    assertThat(set.tables(FIRST).find(CareKinds.CARE_LIMITS).orElseThrow().rows())
        .extracting(row -> row.key() + " " + row.demand().allowed())
        .containsExactly(
            "water/COAT/STRUCTURAL at most 105 degF (also printed: 40 degC)",
            "water/HELMET/STRUCTURAL at most 105 degF (also printed: 40 degC)",
            "no-bleach/COAT/STRUCTURAL/OUTER_SHELL NO",
            "no-bleach/COAT/STRUCTURAL/LINER_SYSTEM NO",
            "no-bleach/COAT/PROXIMITY/OUTER_SHELL NO",
            "no-bleach/COAT/PROXIMITY/LINER_SYSTEM NO");
    assertThat(set.tables(FIRST).find(CareKinds.CARE_LIMITS).orElseThrow().rows().get(0).demand())
        .isEqualTo(
            new CareDemand.Within(
                WashMeasure.WATER_TEMPERATURE,
                new Limit(
                    Bound.MAXIMUM,
                    Quantity.of("105", Unit.DEGREE_FAHRENHEIT),
                    Optional.of(Quantity.of("40", Unit.DEGREE_CELSIUS)))));
    assertThat(set.tables(FIRST).find(CareKinds.CARE_LIMITS).orElseThrow().rows().get(2).demand())
        .isEqualTo(new CareDemand.Forbidden(WashPractice.CHLORINE_BLEACH));
  }

  @Test
  void cleaningsMustRemoveAShareOrWholePowersOfTen() {
    assertThat(set.tables(FIRST).find(CareKinds.CLEANING_RESULTS).orElseThrow().rows())
        .extracting(CleaningResultRow::demand)
        .containsExactly(
            new CleaningDemand.Removal(Limit.atLeast("50", Unit.PERCENT)),
            new CleaningDemand.WholeLogs(3));
  }

  @Test
  void requirementsAreOfTheProductEditionOfTheirTable() {
    RequirementRow tear = requirements(FIRST).get(0);
    assertThat(tear.key().value()).isEqualTo("tear/COAT/STRUCTURAL/FABRIC@OUTER_SHELL");
    assertThat(tear.product()).isEqualTo(FIRST);
    assertThat(tear.property()).isEqualTo(Property.TEAR_RESISTANCE);
    assertThat(tear.directions()).containsExactly(Direction.WARP, Direction.FILL);
    assertThat(tear.methods()).containsExactlyInAnyOrder(TEAR, new TestMethod("FROZEN_PEAK"));
    assertThat(tear.specimenValue()).isEqualTo(new SpecimenValue.MeanOfHighestPeaks(5));
    assertThat(tear.statistic()).isEqualTo(Statistic.MEAN_OF_SPECIMENS);
    assertThat(tear.limit().alsoPrinted()).contains(Quantity.of("22", Unit.POUND_FORCE));
    assertThat(tear.leastSpecimens()).isEqualTo(5);
    assertThat(tear.construction()).isEmpty();
    assertThat(tear.fabricFailsFirst()).isFalse();
    RequirementRow seam = requirements(FIRST).get(2);
    assertThat(seam.construction()).contains(Construction.WOVEN);
    assertThat(seam.specimenValue()).isEqualTo(new SpecimenValue.AsRead());
    assertThat(seam.fabricFailsFirst()).isTrue();
    assertThat(requirements(FIRST).get(3).specimenValue())
        .isEqualTo(new SpecimenValue.HighestPeak());
  }

  @Test
  void aRequirementCarriedOverIsOneOfTheLaterEditionToo() {
    assertThat(requirements(SECOND))
        .extracting(row -> row.product() + " " + row.provenance().origin() + " " + row.limit())
        .containsExactly(
            "FROZEN_2 FROZEN_1 at least 100 N (also printed: 22 lbf)",
            "FROZEN_2 FROZEN_1 at least 100 N (also printed: 22 lbf)",
            "FROZEN_2 FROZEN_2 at most 3700 N");
    assertThat(set.find(StrengthKinds.REQUIREMENTS).orElseThrow().rows())
        .hasSize(7)
        .containsAll(requirements(FIRST))
        .containsAll(requirements(SECOND));
  }

  @Test
  void methodsSayWhatTheyNeedAndWhatTheyLetBeDiscarded() {
    MethodRow grab = set.find(StrengthKinds.METHODS).orElseThrow().method(GRAB).orElseThrow();
    assertThat(grab.title()).isEqualTo("Grab");
    assertThat(grab.destructive()).isFalse();
    assertThat(grab.leastTested(Direction.FILL)).isEqualTo(8);
    assertThat(grab.leastTested(Direction.WARP)).isEqualTo(6);
    assertThat(grab.leastTested(Direction.UNDIRECTED)).isEqualTo(5);
    MethodRow tear = set.find(StrengthKinds.METHODS).orElseThrow().method(TEAR).orElseThrow();
    assertThat(tear.destructive()).isTrue();
    assertThat(tear.leastKept()).isEqualTo(4);
    Quantity within = Quantity.of("5", Unit.MILLIMETER);
    assertThat(set.find(StrengthKinds.METHODS).orElseThrow().discardRows())
        .extracting(DiscardRow::rule)
        .containsExactly(
            new DiscardRule.Slipped(),
            new DiscardRule.LeftMarkedLine(),
            new DiscardRule.RecordedFault(),
            new DiscardRule.JawBreakBelowOthers(within, new BigDecimal("50")),
            new DiscardRule.JawBreakBelowNormal(within, 5));
  }

  @Test
  void theBarrierHoldsAPressureForATime() {
    List<HydrostaticRow> rows = set.find(StrengthKinds.HYDROSTATIC).orElseThrow().rows();
    assertThat(rows)
        .extracting(row -> row.key().value())
        .containsExactly("barrier/COAT/STRUCTURAL", "barrier/COAT/PROXIMITY");
    assertThat(rows.get(0).dwell()).isEqualTo(Limit.atLeast("15", Unit.SECOND));
    assertThat(rows.get(0).leastFabricSpots()).isEqualTo(3);
    assertThat(rows.get(0).leastSeamSpots()).isZero();
  }

  @Test
  void smallSamplesHaveRankAndExponent() {
    SmallSampleRow row =
        set.find(StrengthKinds.SMALL_SAMPLES)
            .orElseThrow()
            .row(new BigDecimal("90"), new BigDecimal("95"), 3)
            .orElseThrow();
    assertThat(row.rank()).isEqualTo(3);
    assertThat(row.exponent()).isEqualTo(new BigDecimal("7.859"));
  }
}
