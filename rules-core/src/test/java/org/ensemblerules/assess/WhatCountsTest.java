package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.fieldcheck.ConditionTable;
import org.ensemblerules.fieldcheck.Expected;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.EvidenceTables;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.Judgment;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Objection;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.Validity;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.Start;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.Layering;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.TaskDue;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** What does not count is told, and counts nowhere: not in a verdict, and not in what is due. */
class WhatCountsTest {
  private static final RuleSet RULES = FrozenRules.rules();
  private static final GearCase COAT = FitGear.fit(ElementKind.COAT);
  private static final FindingId TEAR = new FindingId("F1");
  private static final String NOT_COUNTING = "does not count: ";

  private static Moment on(String date) {
    return Moment.on(MarkedDate.parse(date));
  }

  /** The frozen rules, but that a check shows something only on what is clean. */
  private static EvidenceTables onlyOnCleanGear(Check check) {
    EvidenceTables frozen = RULES.evidenceTables();
    ConditionRow clean =
        new ConditionRow(
            FrozenProvenance.of("condition", check),
            check,
            Condition.ITEM_CLEAN,
            new Expected.Yes(),
            true);
    return new EvidenceTables(
        frozen.anatomy(),
        frozen.defects(),
        frozen.checks(),
        frozen.permissions(),
        frozen.criteria(),
        frozen.returns(),
        frozen.grades(),
        frozen.editions(),
        new Validity(
            frozen.anatomy(),
            ConditionTable.of(List.of(clean), frozen.validity().stronger()).orElseThrow(),
            RULES.tables().checkLimits(),
            RULES.tables().care().limits()));
  }

  private static Verdict judged(GearCase given, EvidenceTables tables) {
    Assessment assessment = given.assessment();
    Evidence evidence =
        tables.of(assessment.element(), assessment.serviceRecord().history(), given.asOf());
    return Assess.assess(new CaseFile(RULES, assessment, evidence));
  }

  private static Event passed(Check check, String day, FindingId... findings) {
    Doer by = People.permitted(RULES.tables().checks().row(check).task());
    return new LookEvent.Checked(on(day), check, CheckResult.PASSED, by, Set.of(findings));
  }

  private static List<TaskDue> due(Verdict verdict, TaskKey task) {
    return verdict.due().stream().filter(each -> each.task().equals(task)).toList();
  }

  @Test
  void aTaskIsNotDischargedByAPassThatTheVerdictCallsVoid() {
    Layering layer = Layering.of("POLICY");
    TaskRow yearly =
        layer.task(
            ElementKind.COAT,
            new Discharge.Checked(Check.LIGHT_THROUGH_LINER),
            new Timing.Every(Start.IN_SERVICE, 12, 1, 12));
    RuleSet rules = RULES.with(List.of(layer.policy(yearly)), FitGear.AS_OF).orElseThrow();
    GearCase given = COAT.with(passed(Check.LIGHT_THROUGH_LINER, "2024-05-02"));
    Verdict verdict = Assess.assess(rules, given.assessment(), given.asOf());
    assertThat(Verdicts.kinds(verdict)).contains(ReasonKind.CHECK_VOID, ReasonKind.TASK_DUE);
    TaskDue due = due(verdict, yearly.task()).get(0);
    assertThat(due.by()).contains(LocalDate.of(2021, 6, 1));
    assertThat(due.why())
        .contains("LIGHT_THROUGH_LINER passed: none on record counts; ")
        .contains("; " + NOT_COUNTING + "LIGHT_THROUGH_LINER of 2024-05-02 by ")
        .contains("ITEM_CLEAN");
  }

  @Test
  void theCheckAfterARepairStaysDueUntilOneOfItsPassesCounts() {
    GearCase given =
        COAT.with(
                new LookEvent.Found(
                    Verdicts.finding(
                        TEAR.value(),
                        "FABRIC@MOISTURE_BARRIER",
                        DefectKind.TEAR,
                        new Extent.NotMeasured(),
                        "2024-02-01")))
            .with(
                new WorkEvent.Repaired(
                    on("2024-02-10"), RepairClass.ADVANCED, false, People.PROVIDER, Set.of(TEAR)))
            .with(passed(Check.BARRIER_UNDER_PRESSURE, "2024-02-20", TEAR));
    assertThat(given.verdict().openFindings()).isEmpty();
    assertThat(due(given.verdict(), TaskKey.CHECK_AFTERWARD)).isEmpty();

    Verdict verdict = judged(given, onlyOnCleanGear(Check.BARRIER_UNDER_PRESSURE));
    assertThat(verdict.openFindings())
        .singleElement()
        .satisfies(
            open ->
                assertThat(open.attempts())
                    .contains(
                        "repaired ADVANCED on 2024-02-10 by "
                            + People.PROVIDER.name()
                            + ": no BARRIER_UNDER_PRESSURE passed certainly later"));
    assertThat(due(verdict, TaskKey.CHECK_AFTERWARD))
        .singleElement()
        .satisfies(
            due ->
                assertThat(due.why())
                    .startsWith(
                        "BARRIER_UNDER_PRESSURE for finding F1, repaired or cleaned 2024-02-10; "
                            + NOT_COUNTING
                            + "BARRIER_UNDER_PRESSURE of 2024-02-20 by "));
  }

  @Test
  void anAlterationIsNotEvaluatedByAPassThatIsVoid() {
    GearCase given =
        COAT.with(new WorkEvent.Modified(on("2024-02-01"), "a pocket sewn on", YesNoUnknown.NO))
            .with(passed(Check.EXPERT_EVALUATION, "2024-02-20"));
    assertThat(given.verdict().service()).isEqualTo(Service.IN);
    Verdict verdict = judged(given, onlyOnCleanGear(Check.EXPERT_EVALUATION));
    assertThat(Verdicts.kinds(verdict)).contains(ReasonKind.ALTERED, ReasonKind.CHECK_VOID);
    assertThat(verdict.service()).isEqualTo(Service.OUT);
  }

  private static Event inspected(String day, Doer by) {
    return new LookEvent.Inspected(
        FitGear.inspection(InspectionKind.ADVANCED, ElementKind.COAT, MarkedDate.parse(day), by)
            .build(),
        0);
  }

  @Test
  void anInspectionWithoutTheCredentialIsToldInTheVerdictAndInWhatIsDue() {
    GearCase bare =
        new GearCase(COAT.element(), List.of(), COAT.inspections(), List.of(), COAT.asOf())
            .with(inspected("2024-06-03", People.UNTRAINED));
    String told =
        NOT_COUNTING
            + "ADVANCED inspection of 2024-06-03 by "
            + People.UNTRAINED.name()
            + ", credential INSPECT is missing";
    Verdict verdict = bare.verdict();
    assertThat(verdict.reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.INSPECTION_NOT_CURRENT)
        .anySatisfy(
            reason -> assertThat(reason.seen()).contains("none on record counts").endsWith(told));
    assertThat(verdict.due())
        .anySatisfy(
            due -> assertThat(due.why()).contains("ADVANCED inspection: none").contains(told));
  }

  @Test
  void itIsToldBackToTheLastThatCountsAndOlderOnRequest() {
    GearCase given =
        COAT.inspectedBy(List.of())
            .with(inspected("2023-05-03", People.UNTRAINED))
            .with(inspected("2024-03-03", People.UNTRAINED))
            .with(inspected("2024-06-03", People.UNTRAINED))
            .with(inspected("2024-09", People.UNTRAINED));
    Evidence evidence = RULES.evidence(given.element(), given.assessment().history(), given.asOf());
    List<Judgment> since = evidence.notCounting(LookEvent.Inspected.class::isInstance);
    assertThat(since)
        .extracting(each -> each.event().when().toString())
        .containsExactly("2024-06-03", "2024-03-03");
    assertThat(Judgment.text(since).orElseThrow())
        .isEqualTo(
            NOT_COUNTING
                + "ADVANCED inspection of 2024-06-03, 2024-03-03 by "
                + People.UNTRAINED.name()
                + ", credential INSPECT is missing");
    assertThat(evidence.judgments(LookEvent.Inspected.class::isInstance))
        .filteredOn(each -> !each.counts())
        .extracting(each -> each.event().when().toString())
        .containsExactly("2024-09", "2024-06-03", "2024-03-03", "2023-05-03");
    assertThat(evidence.judgment(inspected("2024-09", People.UNTRAINED)).orElseThrow().objections())
        .extracting(Objection::code)
        .containsExactly(Objection.Code.NOT_BY_THEN, Objection.Code.NOT_PERMITTED);
    assertThat(Judgment.text(List.of())).isEmpty();
  }

  @Test
  void whatWasDoneSinceSomethingWasMetAndDoesNotCountIsTold() {
    GearCase given =
        COAT.with(new ExposureEvent.Exposed(on("2024-06-05"), Exposure.PRODUCTS_OF_COMBUSTION))
            .with(
                WorkEvent.Cleaned.whole(
                    on("2024-06-07"), CleaningKind.ADVANCED, People.UNTRAINED, Set.of()));
    String told = "; " + NOT_COUNTING + "ADVANCED cleaning of 2024-06-07 by ";
    assertThat(given.verdict().reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.CARE_OUTSTANDING)
        .anySatisfy(reason -> assertThat(reason.seen()).contains(told));
    GearCase before =
        COAT.with(new ExposureEvent.Exposed(on("2024-06-09"), Exposure.PRODUCTS_OF_COMBUSTION))
            .with(
                WorkEvent.Cleaned.whole(
                    on("2024-06-07"), CleaningKind.ADVANCED, People.UNTRAINED, Set.of()));
    assertThat(before.verdict().reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.CARE_OUTSTANDING)
        .isNotEmpty()
        .allSatisfy(reason -> assertThat(reason.seen()).doesNotContain(NOT_COUNTING));
  }

  @Test
  void whatIsJudgedAndWhatIsNot() {
    Event used = new UseEvent.Used(on("2024-01-01"));
    Event returned = new UseEvent.Returned(on("2024-01-02"));
    Event failed =
        new LookEvent.Checked(
            on("2024-01-03"), Check.SEAM_PULL, CheckResult.FAILED, People.PROVIDER, Set.of());
    Event repaired =
        new WorkEvent.Repaired(
            on("UNKNOWN"), RepairClass.ADVANCED, false, People.WEARER, Set.of(TEAR));
    GearCase given = COAT.withEvents(List.of(used, returned, failed, repaired));
    Evidence evidence = RULES.evidence(given.element(), given.assessment().history(), given.asOf());
    assertThat(evidence.judgment(used)).isEmpty();
    assertThat(evidence.counts(used)).isFalse();
    assertThat(evidence.counts(returned)).isTrue();
    assertThat(codes(evidence, failed)).containsExactly(Objection.Code.FAILED);
    assertThat(codes(evidence, repaired))
        .containsExactly(Objection.Code.NOT_BY_THEN, Objection.Code.NOT_PERMITTED);
    assertThat(evidence.judgment(new UseEvent.Returned(on("2024-01-04")))).isEmpty();
    assertThat(evidence.done().workedOn(TEAR)).isEqualTo(Optional.empty());
    assertThat(evidence.judgment(failed).orElseThrow().objection(EnumSet.of(Objection.Code.FAILED)))
        .isPresent();
  }

  private static List<Objection.Code> codes(Evidence evidence, Event event) {
    return evidence.judgment(event).orElseThrow().objections().stream()
        .map(Objection::code)
        .toList();
  }
}
