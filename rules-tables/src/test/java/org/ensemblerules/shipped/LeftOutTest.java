package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.MachineType;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.CriterionOutcome;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.TaskDue;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Gear that is out of service by the shipped rules, and the same with something left out of its
 * record: it stays out.
 */
class LeftOutTest {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);
  private static final Kind HELMET = new Kind(ElementKind.HELMET, Use.STRUCTURAL);

  private static ShippedCase fit(Kind kind) {
    return ShippedCase.fit(RULES, kind);
  }

  private static Moment on(String date) {
    return Moment.on(MarkedDate.parse(date));
  }

  private static ShippedCase without(ShippedCase given, Predicate<Event> which) {
    return given.withEvents(given.events().stream().filter(which.negate()).toList());
  }

  private static ShippedCase and(ShippedCase given, Event... more) {
    List<Event> all = new ArrayList<>(given.events());
    all.addAll(List.of(more));
    return given.withEvents(all);
  }

  private static List<String> asked(Verdict verdict) {
    return verdict.actions().stream().map(action -> action.effect().text()).toList();
  }

  private static void staysOut(ShippedCase given) {
    assertThat(given.verdict().service()).isEqualTo(Service.OUT);
  }

  /** A helmet that was never cleaned, of which nothing says that it was ever issued or used. */
  private static ShippedCase neverCleaned(MarkedDate inService) {
    Element element =
        Element.builder(new ElementId("HELMET 1"), ElementKind.HELMET, Use.STRUCTURAL)
            .inService(inService)
            .cbrnOption(YesNoUnknown.NO)
            .label(ShippedGear.label().build())
            .build();
    return without(
            fit(HELMET),
            event -> event instanceof WorkEvent.Cleaned || event instanceof UseEvent.Issued)
        .with(element);
  }

  @Test
  void thatNothingStatesAStartIsNoStock() {
    assertThat(asked(neverCleaned(MarkedDate.of(ShippedGear.IN_SERVICE)).verdict()))
        .contains("CLEAN ADVANCED on ELEMENT");
    Verdict verdict = neverCleaned(MarkedDate.unknown()).verdict();
    assertThat(asked(verdict)).contains("CLEAN ADVANCED on ELEMENT");
    assertThat(verdict.due())
        .filteredOn(due -> due.task().value().equals("advanced-cleaning"))
        .extracting(TaskDue::by)
        .containsExactly(Optional.of(ShippedGear.MADE.plusMonths(12)));
    Verdict stock =
        neverCleaned(MarkedDate.unknown()).with(new UseEvent.Stocked(on("2021-03-20"))).verdict();
    assertThat(stock.service()).isEqualTo(Service.IN);
  }

  @ParameterizedTest
  @ValueSource(strings = {"2024-06-15", "2024-06", "2024", "UNKNOWN"})
  void whatMayHaveCalledForSomethingAtOnceHas(String date) {
    Inspection looked =
        ShippedGear.inspection(RULES, InspectionKind.ROUTINE, HELMET, MarkedDate.parse(date))
            .build();
    InspectionBuilder found =
        Inspection.builder(looked.kind(), looked.occasion(), looked.on(), looked.by())
            .gearClean(looked.gearClean())
            .atHand(looked.atHand());
    for (CriterionOutcome each : looked.outcomes()) {
      found.outcome(each.criterion(), Outcome.FOUND);
    }
    assertThat(asked(and(fit(HELMET), new LookEvent.Inspected(found.build(), 0)).verdict()))
        .contains("EVALUATE by ADVANCED_INSPECTION on ELEMENT");
    ShippedCase neverIssued = without(fit(HELMET), UseEvent.Issued.class::isInstance);
    assertThat(asked(and(neverIssued, new UseEvent.Issued(on(date), "Member 8")).verdict()))
        .contains("EVALUATE by ROUTINE_INSPECTION on ELEMENT");
  }

  private static LookEvent.Checked checked(
      String on, Check check, CheckResult result, String... ids) {
    Task task = RULES.tables().checks().row(check).task();
    return new LookEvent.Checked(
        on(on),
        check,
        result,
        ShippedGear.permitted(RULES, task),
        Arrays.stream(ids).map(FindingId::new).collect(Collectors.toSet()));
  }

  /** A failure that named two findings, of which one was evaluated; then the other is left out. */
  @Test
  void whatAFailureNamedIsNotLessForBeingLeftOut() {
    Event evaluated = checked("2024-05-10", Check.EXPERT_EVALUATION, CheckResult.PASSED, "F1");
    for (Event failed :
        List.of(
            checked("2024-05-01", Check.LINER_LEAKAGE, CheckResult.FAILED, "F1", "F2"),
            checked("2024-05-01", Check.LINER_LEAKAGE, CheckResult.FAILED, "F1"))) {
      staysOut(and(fit(COAT), failed, evaluated));
    }
    Event named =
        checked(
            "2024-05-10",
            Check.EXPERT_EVALUATION,
            CheckResult.PASSED,
            "failed:2024-05-01:LINER_LEAKAGE");
    Event failed = checked("2024-05-01", Check.LINER_LEAKAGE, CheckResult.FAILED, "F1");
    assertThat(and(fit(COAT), failed, named).verdict().reasons())
        .extracting(Reason::kind)
        .doesNotContain(ReasonKind.CHECK_FAILED, ReasonKind.CHECK_IN_DOUBT);
  }

  /** Sanitized on its shell only, and then nobody says what was washed. */
  @Test
  void aWashThatSaysNotWhatWasWashedIsOneOfNothing() {
    Event met = new ExposureEvent.Exposed(on("2024-05-01"), Exposure.BLOOD_OR_BODY_FLUIDS);
    for (WashedLayers layers :
        List.of(
            new WashedLayers.Only(Set.of(LayerKind.OUTER_SHELL)), new WashedLayers.NotStated())) {
      Event sanitized =
          new WorkEvent.Cleaned(
              on("2024-05-02"),
              CleaningKind.SANITIZING,
              ShippedGear.permitted(RULES, Task.SANITIZING),
              Set.of(),
              layers,
              true,
              Optional.empty());
      assertThat(asked(and(fit(COAT), met, sanitized).verdict()))
          .contains("CLEAN SANITIZING on ELEMENT");
    }
  }

  /** Writing down one particular costs nothing, and leaving a bad one out brings nothing back. */
  @Test
  void whoRecordsAParticularIsNotWorseOff() {
    WashRecord front = WashRecord.builder().machine(MachineType.FRONT_LOADING).build();
    WashRecord hot =
        WashRecord.builder()
            .machine(MachineType.FRONT_LOADING)
            .waterTemperature(Quantity.of("75", Unit.DEGREE_CELSIUS))
            .build();
    assertThat(washed(true, Optional.of(front)).verdict().service()).isEqualTo(Service.IN);
    staysOut(washed(true, Optional.of(hot)));
    staysOut(washed(false, Optional.of(hot)));
    staysOut(washed(false, Optional.of(front)));
    staysOut(washed(false, Optional.empty()));
  }

  /** A coat whose only washes are these two. */
  private static ShippedCase washed(boolean limitsKept, Optional<WashRecord> wash) {
    ShippedCase never = without(fit(COAT), WorkEvent.Cleaned.class::isInstance);
    return and(
        never, washedOn("2024-01-10", limitsKept, wash), washedOn("2024-01-11", limitsKept, wash));
  }

  private static Event washedOn(String date, boolean limitsKept, Optional<WashRecord> wash) {
    return new WorkEvent.Cleaned(
        on(date),
        CleaningKind.ADVANCED,
        ShippedGear.permitted(RULES, Task.ADVANCED_CLEANING),
        Set.of(),
        new WashedLayers.Whole(),
        limitsKept,
        wash);
  }
}
