package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.Sets;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.CareAction;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.CareStanding;
import org.ensemblerules.care.CareStep;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Moment;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The route is kept: no step of any way back is barred by a care route that holds, and none comes
 * before what that route puts before it, over every two exposures with and without findings.
 */
class RouteKeptWalkTest {
  private static final MarkedDate MET = MarkedDate.of(ShippedGear.AS_OF.minusDays(3));

  /** What was found besides: nothing, each kind of contamination, and damage that asks for work. */
  private static final List<Optional<DefectKind>> FOUND =
      List.of(
          Optional.empty(),
          Optional.of(DefectKind.SOILING),
          Optional.of(DefectKind.BODY_FLUIDS),
          Optional.of(DefectKind.HAZARDOUS_CHEMICALS),
          Optional.of(DefectKind.ASBESTOS),
          Optional.of(DefectKind.CBRN_AGENT),
          Optional.of(DefectKind.CONTAMINATION_UNKNOWN),
          Optional.of(DefectKind.BLEACHED),
          Optional.of(DefectKind.INJURY_TO_WEARER));

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  @ParameterizedTest
  @Tag("slow")
  @MethodSource("editions")
  void noStepIsBarredNorOutOfTurn(OriginId edition, TestReporter report) {
    RuleSet rules = ShippedEditions.rules(edition);
    List<String> wrong = new ArrayList<>();
    long combinations = 0;
    for (Kind kind : ShippedGear.kinds(rules)) {
      ShippedCase fit = ShippedCase.fit(rules, kind);
      for (Set<Exposure> met : Sets.powerSet(EnumSet.allOf(Exposure.class))) {
        if (met.size() > together(edition)) {
          continue;
        }
        for (Optional<DefectKind> found : FOUND) {
          judge(given(fit, met, found), met, found, wrong);
          combinations++;
        }
      }
    }
    assertThat(wrong.stream().limit(20)).as("%s of %s", wrong.size(), combinations).isEmpty();
    report.publishEntry(edition + " exposures and findings together", Long.toString(combinations));
  }

  /**
   * How many exposures are walked together. Routes combine step by step, so that what two do
   * together, more do as well; a long search walks one more of each edition.
   */
  private static int together(OriginId edition) {
    BigDecimal factor = new BigDecimal(System.getProperty("tests.tries.factor", "1"));
    int more = factor.compareTo(BigDecimal.ONE) > 0 ? 1 : 0;
    return (edition.equals(ShippedEditions.EDITION_2020) ? 2 : 1) + more;
  }

  private static ShippedCase given(ShippedCase fit, Set<Exposure> met, Optional<DefectKind> found) {
    List<Event> events = new ArrayList<>(fit.events());
    met.forEach(each -> events.add(new Event.Exposed(Moment.on(MET), each)));
    ShippedCase exposed = fit.withEvents(events);
    return found
        .map(
            defect ->
                exposed.with(
                    new Finding(
                        new FindingId("F1"),
                        Site.of(Part.WHOLE_ELEMENT),
                        "",
                        defect,
                        new Extent.Graded(Grade.SLIGHT),
                        MET)))
        .orElse(exposed);
  }

  private static void judge(
      ShippedCase given, Set<Exposure> met, Optional<DefectKind> found, List<String> wrong) {
    Set<Exposure> holding = EnumSet.noneOf(Exposure.class);
    holding.addAll(met);
    found.flatMap(Exposure::of).ifPresent(holding::add);
    Verdict verdict = given.verdict();
    String what = given.kind() + " " + holding + " " + found + ": ";
    if (holding.isEmpty()) {
      return;
    }
    CareRoute.Steps route =
        (CareRoute.Steps) given.rules().careRoutes().route(given.element(), holding);
    if (!route.mayReturn()) {
      if (!(verdict.wayBack() instanceof WayBack.None)) {
        wrong.add(what + "does not return, and has a way back");
      }
      boolean onlyByEvents = found.isEmpty() && met.contains(Exposure.CBRN_AGENT);
      if (onlyByEvents
          && verdict.actions().stream().anyMatch(action -> opensOrWets(action.effect(), met))) {
        wrong.add(what + "does not return, and is asked for " + verdict.actions());
      }
      return;
    }
    List<Step> steps = ((WayBack.Steps) verdict.wayBack()).steps();
    int reached = -1;
    for (Step step : steps) {
      Optional<Integer> turn = turn(step.effect(), route);
      if (turn.isPresent() && turn.get() < reached) {
        wrong.add(what + step.effect() + " out of its turn in " + steps);
      }
      reached = Math.max(reached, turn.orElse(reached));
      if (isBarred(step.effect(), route)) {
        wrong.add(what + step.effect() + " is barred");
      }
      boolean shut = asks(route, CareAction.FIND_OUT) && reached < turn(CareAction.FIND_OUT, route);
      if (shut && opens(step.effect())) {
        wrong.add(what + step.effect() + " before it is found out what it met, in " + steps);
      }
    }
    washes(steps, holding, found, route, what, wrong);
  }

  /** An exposure with a route of its own brings no ordinary wash that the route does not have. */
  private static void washes(
      List<Step> steps,
      Set<Exposure> holding,
      Optional<DefectKind> found,
      CareRoute.Steps route,
      String what,
      List<String> wrong) {
    boolean washed =
        steps.stream()
            .anyMatch(
                step ->
                    step.effect() instanceof Effect.Clean clean
                        && clean.kind() == CleaningKind.ADVANCED);
    if (washed && !asks(route, CareAction.ADVANCED_CLEANING)) {
      wrong.add(what + "an ordinary wash, which no route of " + holding + " has, " + found);
    }
  }

  /** For gear that never returns, asked by events alone, nothing is asked that touches it. */
  private static boolean opensOrWets(Effect effect, Set<Exposure> met) {
    // What else was met asks for its own care by its own row; those rows stay reasons.
    return met.size() == 1 && (opens(effect) || effect instanceof Effect.Clean);
  }

  private static boolean opens(Effect effect) {
    if (effect instanceof Effect.Evaluate evaluate) {
      return switch (evaluate.check()) {
        case INCIDENT_RELEASE, RECORD_CORRECTION, RETURN_TO_SERVICE -> false;
        case EXPERT_EVALUATION -> evaluate.scope() != Scope.ELEMENT;
        default -> true;
      };
    }
    return effect instanceof Effect.Clean
        || effect instanceof Effect.Repair
        || effect instanceof Effect.ReplacePart;
  }

  private static boolean isBarred(Effect effect, CareRoute.Steps route) {
    return action(effect).stream()
        .flatMap(action -> route.steps().stream().filter(step -> step.action() == action))
        .anyMatch(step -> step.standing() == CareStanding.BARRED);
  }

  private static boolean asks(CareRoute.Steps route, CareAction action) {
    return route.steps().stream().anyMatch(step -> step.action() == action);
  }

  private static Optional<Integer> turn(Effect effect, CareRoute.Steps route) {
    return action(effect).filter(action -> asks(route, action)).map(action -> turn(action, route));
  }

  /** The place in the route itself, as whoever asks for the route is given it. */
  private static int turn(CareAction action, CareRoute.Steps route) {
    return route.steps().stream().map(CareStep::action).toList().indexOf(action);
  }

  private static Optional<CareAction> action(Effect effect) {
    if (effect instanceof Effect.Clean clean) {
      return Optional.of(
          switch (clean.kind()) {
            case EXPOSURE_REDUCTION -> CareAction.EXPOSURE_REDUCTION;
            case SPECIALIZED -> CareAction.SPECIALIZED_CLEANING;
            case SANITIZING -> CareAction.SANITIZE;
            case ADVANCED -> CareAction.ADVANCED_CLEANING;
          });
    }
    if (effect instanceof Effect.Evaluate evaluate && evaluate.scope() == Scope.ELEMENT) {
      Check check = evaluate.check();
      return check == Check.EXPERT_EVALUATION
          ? Optional.of(CareAction.FIND_OUT)
          : check == Check.CONTAMINATION_CLEARANCE
              ? Optional.of(CareAction.SHOW_FREE)
              : Optional.empty();
    }
    return Optional.empty();
  }
}
