package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.Sets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.care.CareAction;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.CareStanding;
import org.ensemblerules.care.CareStep;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
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
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedExtents;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * The route is kept: no step of any way back is barred by a care route that holds, and none comes
 * before what that route puts before it, over all combinations of exposures, with and without
 * findings.
 *
 * <p>Not every combination is judged. Gear whose rows on care and on contamination are alike but
 * for its name stands for one another. Of its combinations, those that compose one route and whose
 * exposures ask for the same, each by itself, are one class; all after which gear does not return
 * are one more. What is added takes no step away (a law of its own), so a combination asks for no
 * less than a part of it and no more than a whole that it is part of. The union of a class is in
 * the class; so where the union and each of the smallest combinations of a class have the same
 * steps, all those between have them as well. Both are judged, and held against each other.
 */
@Tag("slow")
class RouteKeptWalkTest {
  private static final MarkedDate MET = MarkedDate.of(ShippedGear.AS_OF.minusDays(3));

  /** What was found besides: each kind of contamination, and what asks for an expert or a hold. */
  private static final List<DefectKind> FOUND =
      List.of(
          DefectKind.SOILING,
          DefectKind.BODY_FLUIDS,
          DefectKind.HAZARDOUS_CHEMICALS,
          DefectKind.ASBESTOS,
          DefectKind.CBRN_AGENT,
          DefectKind.CONTAMINATION_UNKNOWN,
          DefectKind.BLEACHED,
          DefectKind.INJURY_TO_WEARER);

  /** Combinations that compose one route, and whose exposures ask for the same one by one. */
  private record Alike(List<Object> route, Set<Effect> asked) {}

  /** A class of combinations: its union, and the smallest in it. */
  private record Together(Set<Exposure> all, List<Set<Exposure>> smallest) {}

  private final List<String> wrong = new ArrayList<>();
  private long gear;
  private long judged;

  @Test
  void eachExposureByItselfKeepsItsRoute(TestReporter report) {
    for (ShippedCase fit : unlike(RouteKeptWalkTest::rowsAfterExposures)) {
      for (Exposure met : Exposure.values()) {
        found().forEach(found -> judge(fit, EnumSet.of(met), found));
      }
    }
    none();
    report.publishEntry("one exposure and a finding, judged", Long.toString(judged));
  }

  @Test
  void allCombinationsKeepTheirRoute(TestReporter report) {
    int classes = 0;
    for (ShippedCase fit : unlike(RouteKeptWalkTest::rowsOfCare)) {
      for (Together each : together(fit)) {
        found().forEach(found -> sameSteps(fit, each, found));
        classes++;
      }
    }
    none();
    int sets = (1 << Exposure.values().length) - 1;
    report.publishEntry(
        "combinations of exposures and a finding, classes, judged",
        sets * found().count() * gear + ", " + classes + ", " + judged);
  }

  /** Damage has no route of its own: each kind of row, with each route that can be composed. */
  @Test
  void whateverIsFoundKeepsEveryRoute(TestReporter report) {
    RuleSet rules = ShippedEditions.rules(ShippedEditions.EDITION_2020);
    List<Extent> extents = ShippedExtents.of(rules.tables().defects());
    Map<Kind, List<Together>> composed = new HashMap<>();
    Map<List<Object>, DefectRow> kinds = new LinkedHashMap<>();
    rules.tables().defects().rows().stream()
        .filter(row -> !row.effect().isFinal())
        .forEach(
            row -> kinds.putIfAbsent(List.of(row.effect(), row.handling(), row.afterward()), row));
    for (DefectRow row : kinds.values()) {
      Extent extent =
          extents.stream().filter(each -> row.band().holds(each)).findFirst().orElseThrow();
      Finding found = new Finding(new FindingId("F1"), row.site(), "", row.defect(), extent, MET);
      ShippedCase fit = ShippedCase.fit(rules, new Kind(row.element(), row.use()));
      composed
          .computeIfAbsent(fit.kind(), kind -> together(fit))
          .forEach(each -> judge(fit, each.all(), Optional.of(found)));
    }
    none();
    report.publishEntry("kinds of rows and routes, judged", kinds.size() + ", " + judged);
  }

  private void none() {
    assertThat(wrong.stream().limit(20)).as("%s of %s", wrong.size(), judged).isEmpty();
  }

  private static Stream<Optional<Finding>> found() {
    return Stream.concat(
        Stream.of(Optional.empty()),
        FOUND.stream()
            .map(
                defect ->
                    Optional.of(
                        new Finding(
                            new FindingId("F1"),
                            Site.of(Part.WHOLE_ELEMENT),
                            "",
                            defect,
                            new Extent.Graded(Grade.SLIGHT),
                            MET))));
  }

  /** One of all gear of all editions whose rows are alike. */
  private List<ShippedCase> unlike(BiFunction<RuleSet, Kind, List<Object>> rows) {
    Map<List<Object>, ShippedCase> unlike = new LinkedHashMap<>();
    for (OriginId edition : ShippedEditions.WITH_INSPECTION) {
      RuleSet rules = ShippedEditions.rules(edition);
      for (Kind kind : ShippedGear.kinds(rules)) {
        gear++;
        unlike.computeIfAbsent(rows.apply(rules, kind), alike -> ShippedCase.fit(rules, kind));
      }
    }
    return List.copyOf(unlike.values());
  }

  /** What the rows say of exposures and of what may be found of them. */
  private static List<Object> rowsOfCare(RuleSet rules, Kind kind) {
    Tables tables = rules.tables();
    return List.of(
        Arrays.stream(Exposure.values())
            .map(
                met ->
                    tables.care().routes().rows(kind.element(), kind.use(), met).stream()
                        .map(row -> List.of(row.layer(), row.steps(), row.handling()))
                        .toList())
            .toList(),
        tables.defects().rows().stream()
            .filter(row -> row.element() == kind.element() && row.use() == kind.use())
            .filter(row -> row.site().part() == Part.WHOLE_ELEMENT)
            .filter(row -> FOUND.contains(row.defect()))
            .map(
                row ->
                    List.of(
                        row.defect(), row.band(), row.effect(), row.handling(), row.afterward()))
            .toList());
  }

  /** And of the tasks that follow an exposure, each by itself. */
  private static List<Object> rowsAfterExposures(RuleSet rules, Kind kind) {
    return List.of(
        rowsOfCare(rules, kind),
        rules.tables().tasks().rows().stream()
            .filter(row -> row.element() == kind.element() && row.use() == kind.use())
            .filter(row -> row.timing() instanceof Timing.After)
            .map(row -> List.of(row.task(), row.doneBy(), row.timing()))
            .toList());
  }

  private static List<Together> together(ShippedCase fit) {
    Map<Exposure, Set<Effect>> asked = new EnumMap<>(Exposure.class);
    for (Exposure each : Exposure.values()) {
      asked.put(each, Set.copyOf(steps(given(fit, EnumSet.of(each), Optional.empty()).verdict())));
    }
    Map<Optional<Alike>, List<Set<Exposure>>> classes = new LinkedHashMap<>();
    for (Set<Exposure> met : Sets.powerSet(EnumSet.allOf(Exposure.class))) {
      if (!met.isEmpty()) {
        Optional<Alike> alike =
            Optional.of(route(fit, met))
                .filter(CareRoute.Steps::mayReturn)
                .map(route -> new Alike(inOrder(route), asked(met, asked)));
        classes.computeIfAbsent(alike, key -> new ArrayList<>()).add(met);
      }
    }
    return classes.values().stream().map(RouteKeptWalkTest::together).toList();
  }

  private static Together together(List<Set<Exposure>> alike) {
    Set<Exposure> all = EnumSet.noneOf(Exposure.class);
    alike.forEach(all::addAll);
    assertThat(alike).as("the union of a class is in it").contains(all);
    return new Together(
        all,
        alike.stream()
            .filter(
                met ->
                    alike.stream().noneMatch(other -> !other.equals(met) && met.containsAll(other)))
            .toList());
  }

  private static CareRoute.Steps route(ShippedCase given, Set<Exposure> met) {
    return (CareRoute.Steps) given.rules().careRoutes().route(given.element(), met);
  }

  /** What is done in which order, manner and standing, whichever rows ask for it. */
  private static List<Object> inOrder(CareRoute.Steps route) {
    return List.of(
        route.handling(),
        route.steps().stream()
            .map(step -> List.of(step.action(), step.standing(), step.manner(), step.layers()))
            .toList());
  }

  private static Set<Effect> asked(Set<Exposure> met, Map<Exposure, Set<Effect>> asked) {
    return met.stream().flatMap(each -> asked.get(each).stream()).collect(Collectors.toSet());
  }

  private void sameSteps(ShippedCase fit, Together alike, Optional<Finding> found) {
    List<Effect> steps = judge(fit, alike.all(), found);
    for (Set<Exposure> met : alike.smallest()) {
      if (!met.equals(alike.all()) && !judge(fit, met, found).equals(steps)) {
        wrong.add(fit.kind() + " " + met + " has other steps than " + alike.all() + ", " + found);
      }
    }
  }

  private static List<Effect> steps(Verdict verdict) {
    return verdict.wayBack() instanceof WayBack.Steps way
        ? way.steps().stream().map(Step::effect).toList()
        : List.of();
  }

  private static ShippedCase given(ShippedCase fit, Set<Exposure> met, Optional<Finding> found) {
    List<Event> events = new ArrayList<>(fit.events());
    met.forEach(each -> events.add(new ExposureEvent.Exposed(Moment.on(MET), each)));
    ShippedCase exposed = fit.withEvents(events);
    return found.map(exposed::with).orElse(exposed);
  }

  /** Holds the law for one combination, and returns its steps. */
  private List<Effect> judge(ShippedCase fit, Set<Exposure> met, Optional<Finding> finding) {
    ShippedCase given = given(fit, met, finding);
    judged++;
    Optional<DefectKind> found = finding.map(Finding::defect);
    Set<Exposure> holding = EnumSet.noneOf(Exposure.class);
    holding.addAll(met);
    found.flatMap(Exposure::of).ifPresent(holding::add);
    Verdict verdict = given.verdict();
    String what = given.kind() + " " + holding + " " + found + ": ";
    CareRoute.Steps route = route(given, holding);
    if (!route.mayReturn()) {
      if (!(verdict.wayBack() instanceof WayBack.None)) {
        wrong.add(what + "does not return, and has a way back");
      }
      boolean onlyByEvents = found.isEmpty() && met.contains(Exposure.CBRN_AGENT);
      if (onlyByEvents
          && verdict.actions().stream().anyMatch(action -> opensOrWets(action.effect(), met))) {
        wrong.add(what + "does not return, and is asked for " + verdict.actions());
      }
      return steps(verdict);
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
    washes(steps, holding, found, route, what);
    return steps(verdict);
  }

  /** An exposure with a route of its own brings no ordinary wash that the route does not have. */
  private void washes(
      List<Step> steps,
      Set<Exposure> holding,
      Optional<DefectKind> found,
      CareRoute.Steps route,
      String what) {
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
