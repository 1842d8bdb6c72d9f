package org.ensemblerules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.testkit.ArbitrariesOfFindings;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whoever carries out the steps that a verdict names has the element back in service. */
class WayBackTest {
  private static final FindingId ID = new FindingId("F1");
  private static final Effect LOOK = whole(Check.ROUTINE_INSPECTION);

  static Stream<DefectRow> rows() {
    return FrozenRules.rules().tables().defects().rows().stream();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theStepsBringItBack(DefectRow row) {
    Finding finding = ArbitrariesOfFindings.covered(row, ID.value(), MarkedDate.of(FitGear.AS_OF));
    GearCase given = FitGear.fit(row.element()).with(finding);
    Verdict verdict = given.verdict();
    if (row.effect() instanceof Effect.Note) {
      assertThat(verdict.wayBack()).isEqualTo(new WayBack.NotNeeded());
      assertThat(verdict.service()).isEqualTo(Service.IN);
    } else if (row.effect().isFinal()) {
      assertThat(verdict.wayBack()).isInstanceOf(WayBack.None.class);
      neitherRepairNorEvaluationBringsItBack(given);
    } else {
      assertThat(verdict.service()).isEqualTo(Service.OUT);
      GearCase done = carriedOut(given, ((WayBack.Steps) verdict.wayBack()).steps());
      assertThat(done.verdict().reasons()).isEmpty();
      assertThat(done.verdict().service()).isEqualTo(Service.IN);
    }
  }

  /** Without the last event before the new inspection it is not back: no step is for nothing. */
  @ParameterizedTest
  @MethodSource("rows")
  void noStepIsForNothing(DefectRow row) {
    Finding finding = ArbitrariesOfFindings.covered(row, ID.value(), MarkedDate.of(FitGear.AS_OF));
    GearCase given = FitGear.fit(row.element()).with(finding);
    if (!(given.verdict().wayBack() instanceof WayBack.Steps way)) {
      return;
    }
    GearCase done = carriedOut(given, way.steps());
    List<Event> added =
        done.events().stream()
            .filter(event -> !given.events().contains(event))
            .filter(event -> !(event instanceof LookEvent.Inspected))
            .toList();
    Event last = added.get(added.size() - 1);
    if (added.size() > 1 && last instanceof LookEvent.Checked again) {
      // The new inspection stands in for an advanced one asked for afterward.
      last = again.check() == Check.ADVANCED_INSPECTION ? added.get(added.size() - 2) : last;
    }
    List<Event> fewer = new ArrayList<>(done.events());
    fewer.remove(last);
    GearCase without =
        new GearCase(done.element(), fewer, done.inspections(), done.findings(), done.asOf());
    assertThat(without.verdict().service()).isEqualTo(Service.OUT);
  }

  private static void neitherRepairNorEvaluationBringsItBack(GearCase given) {
    LocalDate day = FitGear.AS_OF.plusDays(1);
    Moment when = Moment.on(MarkedDate.of(day));
    GearCase done =
        given
            .with(
                new WorkEvent.Repaired(
                    when, RepairClass.ADVANCED, true, People.PROVIDER, Set.of(ID)))
            .with(
                new LookEvent.Checked(
                    when,
                    Check.EXPERT_EVALUATION,
                    CheckResult.PASSED,
                    People.PROVIDER,
                    Set.of(ID)));
    assertThat(inspectedAnew(done, day.plusDays(1)).verdict().service()).isEqualTo(Service.OUT);
  }

  /** Does each step, by the last of those who may, and what the action asks for afterward. */
  private static GearCase carriedOut(GearCase given, List<Step> steps) {
    List<Action> actions = given.verdict().actions();
    List<Event> events = new ArrayList<>();
    LocalDate day = FitGear.AS_OF;
    Element element = given.element();
    for (Step step : steps) {
      assertThat(step.by()).isNotEmpty();
      if (actions.stream().noneMatch(action -> action.effect().equals(step.effect()))
          && step.effect().equals(LOOK)) {
        continue; // the new inspection that every way back ends with
      }
      assertThat(step.shown()).allSatisfy(text -> assertThat(text).isNotBlank());
      Doer by = People.permittedBy(step.by().get(step.by().size() - 1));
      day = day.plusDays(1);
      events.add(done(step.effect(), Moment.on(MarkedDate.of(day)), by));
      if (step.shown().stream().anyMatch(text -> text.contains("pass EXPERT_EVALUATION"))) {
        day = day.plusDays(1);
        events.add(passed(Check.EXPERT_EVALUATION, day));
      }
      if (step.effect() instanceof Effect.Retire && step.effect().scope() == Scope.LAYER) {
        element = relabeled(element, step, day);
      }
      for (Action action : actions) {
        if (action.effect().equals(step.effect()) && action.target().equals(step.target())) {
          for (Check check : action.afterward()) {
            if (steps.stream().anyMatch(each -> each.effect().equals(whole(check)))) {
              continue; // a step of its own
            }
            day = day.plusDays(1);
            events.add(passed(check, day));
          }
        }
      }
    }
    return inspectedAnew(given.with(element).withEvents(events), day.plusDays(1));
  }

  private static Effect whole(Check check) {
    return new Effect.Evaluate(check, Scope.ELEMENT);
  }

  private static Event done(Effect effect, Moment when, Doer by) {
    if (effect instanceof Effect.Clean clean) {
      return WorkEvent.Cleaned.whole(when, clean.kind(), by, Set.of(ID));
    } else if (effect instanceof Effect.Repair repair) {
      return new WorkEvent.Repaired(when, repair.repairClass(), false, by, Set.of(ID));
    } else if (effect instanceof Effect.ReplacePart replace) {
      return new WorkEvent.Repaired(when, replace.repairClass(), true, by, Set.of(ID));
    } else if (effect instanceof Effect.Evaluate evaluate) {
      return new LookEvent.Checked(when, evaluate.check(), CheckResult.PASSED, by, Set.of(ID));
    }
    return new WorkEvent.Repaired(when, RepairClass.ADVANCED, true, People.PROVIDER, Set.of(ID));
  }

  private static Event passed(Check check, LocalDate day) {
    Doer by = People.permitted(FrozenRules.rules().tables().checks().row(check).task());
    return new LookEvent.Checked(
        Moment.on(MarkedDate.of(day)), check, CheckResult.PASSED, by, Set.of(ID));
  }

  private static Element relabeled(Element element, Step step, LocalDate made) {
    ElementBuilder builder = FitGear.element(element.kind());
    step.target()
        .layer()
        .ifPresent(
            layer ->
                builder.layer(layer, FitGear.label().manufactured(MarkedDate.of(made)).build()));
    return builder.build();
  }

  private static GearCase inspectedAnew(GearCase given, LocalDate day) {
    ElementKind kind = given.element().kind();
    List<Inspection> made = new ArrayList<>();
    for (InspectionKind inspection : FitGear.inspections(kind)) {
      made.add(FitGear.inspection(inspection, given.element(), day));
    }
    return given.inspectedBy(made).on(day);
  }
}
