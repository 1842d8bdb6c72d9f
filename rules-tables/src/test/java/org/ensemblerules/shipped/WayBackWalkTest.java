package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.GearRules;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedExtents;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.testkit.ShippedWork;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The way back ends: for every row of the default edition and every family of the others, its
 * steps, done in order by those named, bring the element back into service, and while any one of
 * them is withheld it stays out.
 */
class WayBackWalkTest {
  private static final FindingId ID = new FindingId("F1");

  /** One thing done: an event, or the look made now. */
  private record Act(String what, Optional<Event> event, Optional<Inspection> look) {
    static Act of(Event event) {
      return new Act(event.toString(), Optional.of(event), Optional.empty());
    }

    static Act of(Inspection look) {
      return new Act("the last look", Optional.empty(), Optional.of(look));
    }
  }

  private record Way(Element element, List<Act> acts, LocalDate day) {}

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  @ParameterizedTest
  @Tag("slow")
  @MethodSource("editions")
  void theWayBackEnds(OriginId edition, TestReporter report) {
    RuleSet rules = ShippedEditions.rules(edition);
    List<Extent> extents = ShippedExtents.of(rules.tables().defects());
    List<String> wrong = new ArrayList<>();
    long ways = 0;
    long verdicts = 0;
    for (DefectRow row : walked(edition, rules)) {
      ShippedCase given = given(rules, row, extents);
      Verdict verdict = given.verdict();
      verdicts++;
      if (verdict.wayBack() instanceof WayBack.Steps steps) {
        Way way = carriedOut(given, row, verdict, steps.steps());
        ways++;
        verdicts += way.acts().size() + 1;
        hold(row, given, verdict, way, wrong);
      } else if (verdict.wayBack() instanceof WayBack.None != row.effect().isFinal()) {
        wrong.add(row.key() + ": " + verdict.wayBack());
      }
    }
    assertThat(wrong.stream().limit(20)).as("%s of %s ways", wrong.size(), ways).isEmpty();
    report.publishEntry(edition + " ways back, verdicts", ways + ", " + verdicts);
  }

  /** What makes the ways of two rows alike but for place and defect. */
  private record Alike(
      ElementKind element, Use use, Effect effect, Set<Check> afterward, String wording) {}

  /** Every row of the default edition; of the others, one of those that say the same. */
  private static Collection<DefectRow> walked(OriginId edition, RuleSet rules) {
    List<DefectRow> rows = rules.tables().defects().rows();
    if (edition.equals(ShippedEditions.EDITION_2020)) {
      return rows;
    }
    Map<Alike, DefectRow> first = new LinkedHashMap<>();
    for (DefectRow row : rows) {
      first.putIfAbsent(
          new Alike(row.element(), row.use(), row.effect(), row.afterward(), row.wording()), row);
    }
    return first.values();
  }

  private static ShippedCase given(RuleSet rules, DefectRow row, List<Extent> extents) {
    Extent extent =
        extents.stream().filter(each -> row.band().holds(each)).findFirst().orElseThrow();
    MarkedDate seen = MarkedDate.of(ShippedGear.AS_OF);
    ShippedCase fit = ShippedCase.fit(rules, new Kind(row.element(), row.use()));
    return fitted(fit, row.site())
        .with(new Finding(ID, row.site(), "", row.defect(), extent, seen));
  }

  /** A layer that something is found on is in the element, and every inspection saw it. */
  private static ShippedCase fitted(ShippedCase given, Site site) {
    Optional<LayerKind> layer =
        site.layer()
            .filter(each -> !given.element().layerLabels().isEmpty())
            .filter(each -> given.element().labeledLayer(each).isEmpty());
    if (layer.isEmpty()) {
      return given;
    }
    ElementBuilder element = ShippedGear.element(given.rules(), given.kind());
    element.layer(layer.orElseThrow(), ShippedGear.label().build());
    return given
        .with(element.build())
        .inspections(made -> Optional.of(seen(given, layer.orElseThrow(), made)));
  }

  private static Inspection seen(ShippedCase given, LayerKind layer, Inspection made) {
    InspectionBuilder seen =
        Inspection.builder(made.kind(), made.occasion(), made.on(), made.by())
            .gearClean(made.gearClean())
            .atHand(made.atHand());
    for (CriterionRow row :
        given
            .rules()
            .tables()
            .criteria()
            .required(made.kind(), given.kind().element(), given.kind().use())) {
      boolean ofTheLayer =
          row.sites().stream().anyMatch(site -> site.layer().equals(Optional.of(layer)));
      made.outcomes().stream()
          .filter(outcome -> outcome.criterion().equals(row.key()))
          .forEach(
              outcome -> seen.outcome(row.key(), ofTheLayer ? Outcome.CLEAR : outcome.outcome()));
    }
    return seen.build();
  }

  private static void hold(
      DefectRow row, ShippedCase given, Verdict verdict, Way way, List<String> wrong) {
    if (verdict.service() != Service.OUT) {
      wrong.add(row.key() + ": in, with steps");
    }
    ShippedCase all = after(given, way, way.acts());
    if (service(all) != Service.IN) {
      wrong.add(row.key() + ": all done, and still " + seen(all.verdict()));
    }
    for (Act withheld : way.acts()) {
      List<Act> fewer = way.acts().stream().filter(act -> act != withheld).toList();
      if (service(after(given, way, fewer)) != Service.OUT) {
        wrong.add(row.key() + ": back without " + withheld.what());
      }
    }
  }

  private static List<String> seen(Verdict verdict) {
    return verdict.reasons().stream().map(Reason::seen).toList();
  }

  private static Service service(ShippedCase given) {
    return GearRules.of(given.rules()).service(given.assessment(), given.asOf());
  }

  private static ShippedCase after(ShippedCase given, Way way, List<Act> acts) {
    // What was looked over when it was found stays on record.
    List<Event> events = new ArrayList<>(given.happened());
    acts.forEach(act -> act.event().ifPresent(events::add));
    return given
        .with(way.element())
        .withEvents(events)
        .inspectedBy(acts.stream().flatMap(act -> act.look().stream()).toList())
        .on(way.day());
  }

  /** Does each step by the last of those who may, and what must be shown after it. */
  private static Way carriedOut(
      ShippedCase given, DefectRow row, Verdict verdict, List<Step> steps) {
    List<Act> acts = new ArrayList<>();
    Element element = given.element();
    LocalDate day = ShippedGear.AS_OF;
    for (Step step : steps) {
      day = day.plusDays(1);
      Doer by = ShippedGear.trained(step.by().get(step.by().size() - 1).entity());
      Optional<InspectionKind> looked =
          step.effect() instanceof Effect.Evaluate evaluate
              ? kind(evaluate.check())
              : Optional.empty();
      boolean last = looked.isPresent() && step == steps.get(steps.size() - 1);
      if (last) {
        acts.add(Act.of(inspection(given, looked.orElseThrow(), day)));
      }
      boolean asked =
          verdict.actions().stream()
              .anyMatch(
                  action ->
                      action.effect().equals(step.effect())
                          && action.target().equals(step.target()));
      if (!last || asked) {
        acts.add(Act.of(ShippedWork.done(given.rules(), on(day), step.effect(), by, Set.of(ID))));
      }
      if (step.effect() instanceof Effect.Retire retire && retire.scope() == Scope.LAYER) {
        element = relabeled(given, step, day);
      }
      for (Action action : verdict.actions()) {
        if (action.effect().equals(step.effect()) && action.target().equals(step.target())) {
          for (Check check : action.afterward()) {
            if (!isSeenByTheLastLook(given, row, check, steps)) {
              day = day.plusDays(1);
              acts.add(Act.of(followUp(given, check, day)));
            }
          }
        }
      }
    }
    return new Way(element, acts, day);
  }

  /** Neither the look that ends the way nor what it finds clear is asked for before it as well. */
  private static boolean isSeenByTheLastLook(
      ShippedCase given, DefectRow row, Check check, List<Step> steps) {
    Optional<InspectionKind> last =
        steps.get(steps.size() - 1).effect() instanceof Effect.Evaluate evaluate
            ? kind(evaluate.check())
            : Optional.empty();
    if (last.isPresent() && last.equals(kind(check))) {
      return true;
    }
    return last.isPresent()
        && given.rules().tables().checks().row(check).byLook()
        && given
            .rules()
            .tables()
            .criteria()
            .required(last.orElseThrow(), row.element(), row.use())
            .stream()
            .anyMatch(
                criterion ->
                    criterion.check().contains(check)
                        && criterion.sites().contains(row.site())
                        && criterion.lookFor().contains(row.defect()));
  }

  /** An inspection asked for afterward is made; any other check is passed for the finding. */
  private static Event followUp(ShippedCase given, Check check, LocalDate day) {
    return kind(check)
        .<Event>map(kind -> new LookEvent.Inspected(inspection(given, kind, day), 0))
        .orElseGet(() -> pass(given, check, day));
  }

  private static Event pass(ShippedCase given, Check check, LocalDate day) {
    return ShippedWork.passed(given.rules(), on(day), check, Set.of(ID));
  }

  private static Optional<InspectionKind> kind(Check check) {
    return EnumSet.allOf(InspectionKind.class).stream()
        .filter(kind -> kind.check() == check)
        .findFirst();
  }

  private static Inspection inspection(ShippedCase given, InspectionKind kind, LocalDate day) {
    Inspection made =
        ShippedGear.inspection(given.rules(), kind, given.kind(), MarkedDate.of(day)).build();
    return given.element().layerLabels().keySet().stream()
        .reduce(made, (looked, layer) -> seen(given, layer, looked), (one, other) -> other);
  }

  private static Moment on(LocalDate day) {
    return Moment.on(MarkedDate.of(day));
  }

  private static Element relabeled(ShippedCase given, Step step, LocalDate made) {
    ElementBuilder builder = ShippedGear.element(given.rules(), given.kind());
    step.target()
        .layer()
        .ifPresent(
            layer ->
                builder.layer(
                    layer, ShippedGear.label().manufactured(MarkedDate.of(made)).build()));
    return builder.build();
  }
}
