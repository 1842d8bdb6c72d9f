package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.GearRules;
import org.ensemblerules.care.Extraction;
import org.ensemblerules.care.MachineType;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashRecordBuilder;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionValue;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.Construction;
import org.ensemblerules.strength.DecisionRule;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.FailureMode;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.strength.Reading;
import org.ensemblerules.strength.Specimen;
import org.ensemblerules.strength.SpecimenOrigin;
import org.ensemblerules.strength.TestMethod;
import org.ensemblerules.strength.TestReport;
import org.ensemblerules.tables.OverlayJson;
import org.ensemblerules.tables.set.OverlayFile;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** Checks made by hand, washes and test reports, as they show in verdicts of the shipped rules. */
class MeasuredVerdictsTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);
  private static final Kind PROXIMITY_COAT = new Kind(ElementKind.COAT, Use.PROXIMITY);
  private static final LocalDate DAY = LocalDate.of(2024, 6, 1);
  private static final FindingId DIM = new FindingId("dim");

  /** The name of the leak check that fails in these tests. */
  private static final FindingId LEAK = new FindingId("failed:2024-06-03:LINER_LEAKAGE");

  private static ShippedCase fit() {
    return ShippedCase.fit(RULES, COAT);
  }

  private static Moment on(int day) {
    return Moment.on(MarkedDate.of(DAY.withDayOfMonth(day)));
  }

  private static Doer by(Task task) {
    return ShippedGear.permitted(RULES, task);
  }

  private static List<Reason> reasons(Verdict verdict, ReasonKind kind) {
    return verdict.reasons().stream().filter(reason -> reason.kind() == kind).toList();
  }

  private static Reason only(Verdict verdict, ReasonKind kind) {
    List<Reason> reasons = reasons(verdict, kind);
    assertThat(reasons).as(kind + " among " + verdict.reasons()).hasSize(1);
    return reasons.get(0);
  }

  private static Map<Condition, ConditionValue> leakage(String minutes, int waterPerAlcohol) {
    Map<Condition, ConditionValue> kept = new EnumMap<>(Condition.class);
    kept.put(Condition.ITEM_CLEAN, new ConditionValue.Answered(YesNoUnknown.YES));
    kept.put(
        Condition.WATER_PER_ALCOHOL,
        new ConditionValue.Proportion(
            new Quantity(BigDecimal.valueOf(waterPerAlcohol), Unit.US_CUP),
            Quantity.of("1", Unit.US_CUP)));
    kept.put(
        Condition.ALCOHOL_STRENGTH, new ConditionValue.Measured(Quantity.of("70", Unit.PERCENT)));
    kept.put(Condition.LIQUID_VOLUME, new ConditionValue.Measured(Quantity.of("1", Unit.US_CUP)));
    kept.put(
        Condition.WAITING_TIME, new ConditionValue.Measured(Quantity.of(minutes, Unit.MINUTE)));
    kept.put(Condition.PLACES, new ConditionValue.Counted(3));
    return kept;
  }

  private static LookEvent.Checked checked(
      int day, Check check, CheckResult result, Map<Condition, ConditionValue> conditions) {
    return new LookEvent.Checked(
        on(day),
        check,
        result,
        by(RULES.tables().checks().row(check).task()),
        result == CheckResult.FAILED ? Set.of(DIM) : Set.of(DIM, LEAK),
        false,
        conditions,
        Optional.empty());
  }

  @Test
  void aLeakCheckOfOneMinuteInsteadOfThreeCountsAsNotMade() {
    Verdict verdict =
        fit().with(checked(3, Check.LINER_LEAKAGE, CheckResult.PASSED, leakage("1", 6))).verdict();
    Reason reason = only(verdict, ReasonKind.CHECK_VOID);
    assertThat(reason.seen())
        .contains("LINER_LEAKAGE passed")
        .contains("WAITING_TIME: found 1 min")
        .contains("3 min");
    assertThat(reason.effect().effectKind()).isEqualTo(EffectKind.NOTE);
    assertThat(verdict.service()).isEqualTo(Service.IN);
    Verdict kept =
        fit().with(checked(3, Check.LINER_LEAKAGE, CheckResult.PASSED, leakage("3", 6))).verdict();
    assertThat(reasons(kept, ReasonKind.CHECK_VOID)).isEmpty();
  }

  @Test
  void aFailureStandsAndIsFollowedByAStrongerCheck() {
    Verdict verdict =
        fit().with(checked(3, Check.LINER_LEAKAGE, CheckResult.FAILED, leakage("1", 6))).verdict();
    Reason reason = only(verdict, ReasonKind.CHECK_FAILED);
    assertThat(reason.effect())
        .isInstanceOfSatisfying(
            Effect.Evaluate.class,
            evaluate -> assertThat(evaluate.check()).isEqualTo(Check.LINER_INSPECTION));
    assertThat(reason.rowKey()).isPresent();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
  }

  @Test
  void tooMuchAlcoholLeavesAFailureInDoubtAndTheCoatOut() {
    Verdict verdict =
        fit().with(checked(3, Check.LINER_LEAKAGE, CheckResult.FAILED, leakage("3", 3))).verdict();
    assertThat(only(verdict, ReasonKind.CHECK_IN_DOUBT).seen())
        .contains("WATER_PER_ALCOHOL")
        .contains("sound item");
    assertThat(reasons(verdict, ReasonKind.CHECK_FAILED)).isEmpty();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
  }

  @Test
  void neitherARepeatNorTheOtherBarrierCheckSettlesAFailedLeakCheck() {
    ShippedCase failed =
        fit()
            .with(checked(3, Check.LINER_LEAKAGE, CheckResult.FAILED, leakage("3", 6)))
            .with(checked(4, Check.LINER_LEAKAGE, CheckResult.PASSED, leakage("3", 6)));
    assertThat(only(failed.verdict(), ReasonKind.CHECK_FAILED).effect().keepsOut()).isTrue();
    Map<Condition, ConditionValue> pressed =
        Map.of(
            Condition.PRESSURE,
            new ConditionValue.Measured(Quantity.of("1", Unit.POUND_FORCE_PER_SQUARE_INCH)),
            Condition.HELD_TIME,
            new ConditionValue.Measured(Quantity.of("15", Unit.SECOND)),
            Condition.MATERIAL_PLACES,
            new ConditionValue.Counted(3),
            Condition.SEAM_PLACES,
            new ConditionValue.Counted(3));
    Verdict other =
        failed
            .with(checked(5, Check.BARRIER_UNDER_PRESSURE, CheckResult.PASSED, pressed))
            .verdict();
    assertThat(only(other, ReasonKind.CHECK_FAILED).effect().keepsOut()).isTrue();
    Verdict evaluated =
        failed.with(checked(6, Check.EXPERT_EVALUATION, CheckResult.PASSED, Map.of())).verdict();
    assertThat(reasons(evaluated, ReasonKind.CHECK_FAILED)).isEmpty();
  }

  @Test
  void aTrimCheckOnAProximityCoatSaysThatTheRecordIsWrong() {
    Verdict verdict =
        ShippedCase.fit(RULES, PROXIMITY_COAT)
            .with(checked(3, Check.TRIM_BY_FLASHLIGHT, CheckResult.PASSED, Map.of()))
            .verdict();
    assertThat(only(verdict, ReasonKind.CHECK_DOES_NOT_APPLY).seen()).contains("PROXIMITY");
    assertThat(verdict.service()).isEqualTo(Service.OUT);
  }

  @Test
  void anOverlapBelowTwoInchesIsAFinding() {
    LookEvent.Checked fitted =
        new LookEvent.Checked(
            on(3),
            Check.FIT_AND_OVERLAP,
            CheckResult.PASSED,
            by(RULES.tables().checks().row(Check.FIT_AND_OVERLAP).task()),
            Set.of(),
            false,
            Map.of(),
            Optional.of(Quantity.of("1.5", Unit.INCH)));
    Verdict verdict = fit().with(fitted).verdict();
    assertThat(verdict.reasons())
        .anySatisfy(
            reason ->
                assertThat(reason.finding())
                    .contains(new FindingId("check:2024-06-03:OVERLAP_TOO_SMALL")));
    assertThat(verdict.service()).isEqualTo(Service.OUT);
  }

  private static WashRecordBuilder kept() {
    WashRecordBuilder wash =
        WashRecord.builder()
            .waterTemperature(Quantity.of("40", Unit.DEGREE_CELSIUS))
            .dryingTemperature(Quantity.of("38", Unit.DEGREE_CELSIUS))
            .detergentPh(new BigDecimal("8.5"))
            .extraction(new Extraction.NotSpun())
            .machine(MachineType.FRONT_LOADING);
    for (WashPractice practice : WashPractice.values()) {
      if (practice != WashPractice.TOP_LOADER && practice != WashPractice.MACHINE_WASHING) {
        wash.practice(practice, YesNoUnknown.NO);
      }
    }
    return wash;
  }

  private static WorkEvent.Cleaned washed(WashRecordBuilder wash) {
    return new WorkEvent.Cleaned(
        on(5),
        CleaningKind.ADVANCED,
        by(Task.of(CleaningKind.ADVANCED)),
        Set.of(new FindingId("soiled")),
        new WashedLayers.Only(Set.of(LayerKind.OUTER_SHELL)),
        false,
        Optional.of(wash.build()));
  }

  private static ShippedCase soiled() {
    return fit()
        .withFindings(
            List.of(
                new Finding(
                    new FindingId("soiled"),
                    Site.of(Part.FABRIC, LayerKind.OUTER_SHELL),
                    "",
                    DefectKind.SOILING,
                    new Extent.Graded(Grade.SEVERE),
                    MarkedDate.of(DAY))));
  }

  @Test
  void onlyAWashWithinItsLimitsIsACleaning() {
    assertThat(soiled().verdict().service()).isEqualTo(Service.OUT);
    ShippedCase hot =
        soiled().with(washed(kept().waterTemperature(Quantity.of("60", Unit.DEGREE_CELSIUS))));
    Verdict verdict = hot.verdict();
    assertThat(verdict.reasons())
        .anySatisfy(
            reason ->
                assertThat(reason.attempts()).anySatisfy(why -> assertThat(why).contains("60")));
    assertThat(verdict.reasons())
        .anySatisfy(
            reason -> {
              assertThat(reason.finding())
                  .contains(new FindingId("wash:2024-06-05:OVERHEATED_IN_WASHING"));
              assertThat(reason.effect().effectKind()).isEqualTo(EffectKind.EVALUATE);
            });
    LookEvent.Checked clean =
        new LookEvent.Checked(
            on(6),
            Check.CLEANLINESS,
            CheckResult.PASSED,
            by(RULES.tables().checks().row(Check.CLEANLINESS).task()),
            Set.of(new FindingId("soiled")));
    ShippedCase within = soiled().with(washed(kept())).with(clean);
    assertThat(hot.with(clean).verdict().reasons())
        .anySatisfy(reason -> assertThat(reason.seen()).contains("SOILING"));
    assertThat(within.verdict().reasons())
        .noneSatisfy(reason -> assertThat(reason.seen()).contains("SOILING"))
        .noneSatisfy(reason -> assertThat(reason.finding().toString()).contains("wash:"));
  }

  private static LookEvent.Tested torn(SpecimenOrigin origin, Purpose purpose, String... means) {
    List<Specimen> specimens = new ArrayList<>();
    for (Direction direction : List.of(Direction.WARP, Direction.FILL)) {
      for (String mean : means) {
        specimens.add(
            Specimen.of(
                direction + " " + specimens.size(),
                direction,
                new Reading.MeanOfHighestPeaks(5, Quantity.of(mean, Unit.POUND_FORCE))));
      }
    }
    TestReport report =
        TestReport.builder(
                ElementKind.COAT,
                Use.STRUCTURAL,
                Site.of(Part.FABRIC, LayerKind.OUTER_SHELL),
                Property.TEAR_RESISTANCE,
                new TestMethod("ASTM_D5587"))
            .origin(origin)
            .specimens(specimens)
            .build();
    return new LookEvent.Tested(
        on(7),
        new OriginId("NFPA_1971_2018"),
        report,
        purpose,
        new DecisionRule.SimpleAcceptance(ComparisonMethod.absolute()),
        Set.of());
  }

  @Test
  void aSeamSaysWhatGaveWaySpecimenBySpecimenCounted() {
    List<Specimen> specimens = new ArrayList<>();
    for (FailureMode mode :
        List.of(
            FailureMode.THREAD,
            FailureMode.THREAD,
            FailureMode.SLIPPAGE,
            FailureMode.FABRIC,
            FailureMode.NOT_RECORDED)) {
      specimens.add(
          Specimen.of("s" + specimens.size(), Direction.UNDIRECTED, Quantity.of("640", Unit.NEWTON))
              .withFailure(mode));
    }
    TestReport report =
        TestReport.builder(
                ElementKind.COAT,
                Use.STRUCTURAL,
                Site.of(Part.SEAM_MAJOR_A, LayerKind.OUTER_SHELL),
                Property.SEAM_STRENGTH,
                new TestMethod("ASTM_D1683"))
            .construction(Construction.WOVEN)
            .origin(SpecimenOrigin.SAME_MODEL_AGE_AND_USE)
            .specimens(specimens)
            .build();
    Event tested =
        new LookEvent.Tested(
            on(7),
            new OriginId("NFPA_1971_2018"),
            report,
            POLICY,
            new DecisionRule.SimpleAcceptance(ComparisonMethod.absolute()),
            Set.of());
    assertThat(only(fit().with(tested).verdict(), ReasonKind.TEST_NOT_MET).seen())
        .contains("gave way: ", "THREAD 2", "SLIPPAGE 1", "FABRIC 1", "NOT_RECORDED 1");
  }

  private static final Purpose POLICY =
      new Purpose.AtLeastNewRequirement(new OriginId("DEPARTMENT_POLICY"));

  @Test
  void aPolicyOnUsedGearJudgesEveryTestOfItBesides() {
    OriginId ours = new OriginId("OURS");
    OverlayFile overlay =
        OverlayJson.read(
                "ours.json",
                """
                {"overlay": "OURS", "kind": "DEPARTMENT_POLICY", "title": "Invented",
                 "usedGear": [{"key": "ours", "policy": "SHARE_OF_NEW_VALUE", "percent": 75,
                   "basis": {"kind": "COMMON_PRACTICE"}, "reviewedThrough": "2027-12-31"}]}
                """)
            .orElseThrow();
    Quantity whenNew = Quantity.of("40", Unit.POUND_FORCE);
    LookEvent.Tested half =
        torn(
            SpecimenOrigin.SAME_MODEL_AGE_AND_USE,
            new Purpose.AtLeastShareOfNewValue(
                new OriginId("THEIRS"),
                new BigDecimal(50),
                Map.of(Direction.WARP, whenNew, Direction.FILL, whenNew)),
            "25.0",
            "25.0",
            "25.0",
            "25.0",
            "25.0");
    ShippedCase given = fit().with(half);
    assertThat(given.verdict().reasons())
        .extracting(Reason::kind)
        .containsExactly(ReasonKind.TEST_MET);
    ShippedCase besides =
        new ShippedCase(
            OverlayJson.lay(GearRules.of(given.rules()), List.of(overlay), given.asOf())
                .orElseThrow()
                .rules(),
            given.kind(),
            given.element(),
            given.events(),
            given.inspections(),
            given.findings(),
            given.asOf());
    assertThat(besides.verdict().service()).isEqualTo(Service.OUT);
    assertThat(besides.verdict().reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.TEST_NOT_MET)
        .singleElement()
        .satisfies(
            reason -> {
              assertThat(reason.row().orElseThrow().provenance().origin()).isEqualTo(ours);
              assertThat(reason.seen()).contains("policy of OURS: 75 % of the value when new");
            });
  }

  @Test
  void twentyTwoPoundsForceAndABitIsLessThanAHundredNewtons() {
    Verdict verdict =
        fit()
            .with(
                torn(
                    SpecimenOrigin.SAME_MODEL_AGE_AND_USE,
                    POLICY,
                    "22.2",
                    "22.2",
                    "22.2",
                    "22.2",
                    "22.2"))
            .verdict();
    Reason reason = only(verdict, ReasonKind.TEST_NOT_MET);
    assertThat(reason.seen())
        .contains("FAIL by simple acceptance")
        .contains("mean of specimens ~ 98.8 N", "100 N")
        .contains("the limit is printed as 100 N and as 22 lbf")
        .contains("second unit would answer otherwise")
        .contains("clears no other element");
    assertThat(reason.row()).isPresent();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(reasons(verdict, ReasonKind.SPECIMENS_CUT)).isEmpty();
  }

  @Test
  void aTestThatIsMetIsOnRecordAndClosesNothing() {
    Verdict verdict =
        soiled()
            .with(torn(SpecimenOrigin.SAME_MODEL_AGE_AND_USE, POLICY, "30", "31", "30", "32", "30"))
            .verdict();
    assertThat(only(verdict, ReasonKind.TEST_MET).effect().keepsOut()).isFalse();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
  }

  @Test
  void theElementThatSpecimensWereCutFromRetiresWhateverTheOutcome() {
    for (String[] means : List.of(new String[] {"30", "31", "30", "32", "30"}, new String[] {})) {
      Verdict verdict = fit().with(torn(SpecimenOrigin.THIS_ELEMENT, POLICY, means)).verdict();
      assertThat(only(verdict, ReasonKind.SPECIMENS_CUT).effect().isFinal()).isTrue();
    }
  }

  @Test
  void aReportWithoutSpecimensIsNoPass() {
    Verdict verdict = fit().with(torn(SpecimenOrigin.SAME_MODEL_AGE_AND_USE, POLICY)).verdict();
    assertThat(only(verdict, ReasonKind.TEST_WITHOUT_RESULT).seen()).contains("NO_SPECIMENS");
    assertThat(verdict.service()).isEqualTo(Service.OUT);
  }

  @Test
  void aReportOfAnotherKindOfElementIsAContradiction() {
    Verdict verdict =
        ShippedCase.fit(RULES, new Kind(ElementKind.TROUSERS, Use.STRUCTURAL))
            .with(torn(SpecimenOrigin.THIS_ELEMENT, POLICY, "30"))
            .verdict();
    assertThat(only(verdict, ReasonKind.CONTRADICTION).seen()).contains("the report is of a COAT");
    assertThat(verdict.service()).isEqualTo(Service.OUT);
  }
}
