package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.assess.Verdicts.kinds;
import static org.ensemblerules.assess.Verdicts.onlyReason;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.DecisionRule;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.strength.Specimen;
import org.ensemblerules.strength.SpecimenOrigin;
import org.ensemblerules.strength.TestMethod;
import org.ensemblerules.strength.TestReport;
import org.ensemblerules.strength.TestReportBuilder;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenMeasures;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Headline;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What test reports come to in a verdict; the frozen requirement is a mean of 500 N. */
class TestVerdictsTest {
  private static final GearCase COAT = FitGear.fit(ElementKind.COAT);

  private static Moment on(String date) {
    return Moment.on(MarkedDate.parse(date));
  }

  private static TestReportBuilder report(
      ElementKind element, TestMethod method, String... newtons) {
    return TestReport.builder(
            element, Use.STRUCTURAL, FrozenMeasures.SHELL, Property.BREAKING_STRENGTH, method)
        .origin(SpecimenOrigin.SAME_MODEL_AGE_AND_USE)
        .specimens(
            Stream.of(newtons)
                .map(value -> Specimen.of(value, Direction.WARP, Quantity.of(value, Unit.NEWTON)))
                .toList());
  }

  private static TestReportBuilder report(String... newtons) {
    return report(ElementKind.COAT, FrozenMeasures.STRIP, newtons);
  }

  private static GearCase tested(TestReport report, FindingId... answers) {
    return COAT.with(
        new LookEvent.Tested(
            on("2024-03-01"),
            FrozenMeasures.PRODUCT,
            report,
            new Purpose.AtLeastNewRequirement(new OriginId("FROZEN_POLICY")),
            new DecisionRule.SimpleAcceptance(ComparisonMethod.absolute()),
            Set.of(answers)));
  }

  private static GearCase evaluated(GearCase given, String date, CheckResult result) {
    return given.with(
        new LookEvent.Checked(
            on(date),
            Check.EXPERT_EVALUATION,
            result,
            People.permitted(
                FrozenRules.rules().tables().checks().row(Check.EXPERT_EVALUATION).task()),
            Set.of(new FindingId("failed:2024-03-01:BREAKING_STRENGTH:" + FrozenMeasures.SHELL))));
  }

  @ParameterizedTest
  @CsvSource({"500, true", "620, true", "499, false", "480, false"})
  void aTestThatMeetsItsRequirementIsNotedAndOneThatDoesNotKeepsOut(String value, boolean met) {
    Verdict verdict = tested(report(value).build()).verdict();
    assertThat(kinds(verdict)).containsExactly(met ? ReasonKind.TEST_MET : ReasonKind.TEST_NOT_MET);
    assertThat(verdict.service()).isEqualTo(met ? Service.IN : Service.OUT);
    Reason reason = verdict.reasons().get(0);
    assertThat(reason.effect())
        .isEqualTo(
            met ? new Effect.Note() : new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT));
    assertThat(reason.site()).isEqualTo(FrozenMeasures.SHELL);
    assertThat(reason.rowKey()).map(Object::toString).contains("frozen/requirement");
    assertThat(reason.seen())
        .startsWith(
            "BREAKING_STRENGTH tested on 2024-03-01 by FROZEN_STRIP: " + (met ? "PASS" : "FAIL"))
        .contains("WARP " + (met ? "PASS" : "FAIL"), value + " N", "500 N", "FROZEN_POLICY");
  }

  @Test
  void aReportWithoutAResult() {
    Reason reason = onlyReason(tested(report().build()), ReasonKind.TEST_WITHOUT_RESULT);
    assertThat(reason.seen()).contains("no result");
    assertThat(reason.effect())
        .isEqualTo(new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT));
    assertThat(
            onlyReason(
                    tested(report(ElementKind.COAT, new TestMethod("ANOTHER"), "620").build()),
                    ReasonKind.TEST_WITHOUT_RESULT)
                .seen())
        .contains("no result");
  }

  @Test
  void theElementThatWasCutIsGoneWhateverCameOfIt() {
    for (String value : List.of("480", "620")) {
      Verdict verdict = tested(report(value).origin(SpecimenOrigin.THIS_ELEMENT).build()).verdict();
      assertThat(verdict.reasons())
          .filteredOn(reason -> reason.kind() == ReasonKind.SPECIMENS_CUT)
          .singleElement()
          .satisfies(
              reason -> {
                assertThat(reason.effect()).isEqualTo(new Effect.Retire(Scope.ELEMENT));
                assertThat(reason.seen()).endsWith("specimens were cut from this element");
              });
      assertThat(verdict.headline()).isEqualTo(Headline.RETIRE);
      assertThat(kinds(tested(report(value).build()).verdict()))
          .doesNotContain(ReasonKind.SPECIMENS_CUT);
    }
  }

  /** Specimens of which nobody says what they were cut from may be of this element. */
  @Test
  void whatTheSpecimensWereCutFromIsAskedFor() {
    TestReport silent =
        TestReport.builder(
                ElementKind.COAT,
                Use.STRUCTURAL,
                FrozenMeasures.SHELL,
                Property.BREAKING_STRENGTH,
                FrozenMeasures.STRIP)
            .specimens(report("620").build().specimens())
            .build();
    Verdict verdict = tested(silent).verdict();
    assertThat(verdict.reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.SPECIMENS_CUT)
        .singleElement()
        .satisfies(
            reason -> {
              assertThat(reason.effect())
                  .isEqualTo(new Effect.Evaluate(Check.RECORD_CORRECTION, Scope.ELEMENT));
              assertThat(reason.seen()).endsWith("state its origin");
            });
  }

  @Test
  void aReportOfAnotherKindOfElementContradictsTheRecord() {
    Reason reason =
        onlyReason(
            tested(report(ElementKind.HELMET, FrozenMeasures.STRIP, "620").build()),
            ReasonKind.CONTRADICTION);
    assertThat(reason.seen()).endsWith("the report is of a HELMET STRUCTURAL");
    TestReport proximity =
        TestReport.builder(
                ElementKind.COAT,
                Use.PROXIMITY,
                FrozenMeasures.SHELL,
                Property.BREAKING_STRENGTH,
                FrozenMeasures.STRIP)
            .specimens(report("620").build().specimens())
            .build();
    assertThat(onlyReason(tested(proximity), ReasonKind.CONTRADICTION).effect())
        .isEqualTo(new Effect.Evaluate(Check.RECORD_CORRECTION, Scope.ELEMENT));
  }

  @Test
  void anExpertsEvaluationAfterwardettlesWhatDidNotMeetAndNothingElseDoes() {
    for (TestReport report : List.of(report("480").build(), report().build())) {
      GearCase failed = tested(report, new FindingId("F1"));
      assertThat(evaluated(failed, "2024-03-02", CheckResult.PASSED).verdict().service())
          .isEqualTo(Service.IN);
      assertThat(evaluated(failed, "2024-02-29", CheckResult.PASSED).verdict().service())
          .isEqualTo(Service.OUT);
      assertThat(evaluated(failed, "2024-03-02", CheckResult.FAILED).verdict().service())
          .isEqualTo(Service.OUT);
    }
  }

  @Test
  void theOnlyFindingItWasMadeForIsNamed() {
    assertThat(
            tested(report("620").build(), new FindingId("F1")).verdict().reasons().get(0).finding())
        .contains(new FindingId("F1"));
    for (GearCase given :
        List.of(
            tested(report("620").build()),
            tested(report("620").build(), new FindingId("F1"), new FindingId("F2")))) {
      assertThat(given.verdict().reasons().get(0).finding()).isEqualTo(Optional.empty());
    }
  }
}
