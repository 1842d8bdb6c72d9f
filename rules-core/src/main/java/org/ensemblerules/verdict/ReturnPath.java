package org.ensemblerules.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;

/** Puts the actions of a verdict in the order in which they bring an element back. */
final class ReturnPath {
  private ReturnPath() {}

  static WayBack of(CaseFile file, RouteOrder order, List<Action> actions, List<Reason> reasons) {
    if (actions.isEmpty()) {
      return new WayBack.NotNeeded();
    }
    if (actions.stream().anyMatch(action -> action.effect().isFinal())) {
      return new WayBack.None("the whole element leaves service for good" + first(actions));
    }
    if (everyLayerRetires(file, actions)) {
      return new WayBack.None("every labeled layer leaves service for good" + first(actions));
    }
    List<Step> steps =
        Stream.concat(actions.stream(), afterRelease(file, order, actions))
            .sorted(Comparator.comparingInt(action -> order.rank(action.effect())))
            .flatMap(
                action -> {
                  boolean followsUp = followsUp(action, reasons);
                  return Stream.concat(
                      Stream.of(step(file, order, action, followsUp)),
                      followsUp ? Stream.empty() : lastWord(file, order, action).stream());
                })
            .distinct()
            .collect(Collectors.toCollection(ArrayList::new));
    if (WorkQuestion.willFollow(reasons)
        && actions.stream().noneMatch(action -> order.isLast(action.effect()))) {
      Effect look = new Effect.Evaluate(Check.ROUTINE_INSPECTION, Scope.ELEMENT);
      steps.add(
          step(
              file,
              order,
              NextPlace.action(
                  file, order, look, Site.of(Part.WHOLE_ELEMENT), Doers.of(file, look), Set.of()),
              false));
    }
    return new WayBack.Steps(steps);
  }

  /** What is released is as dirty as it was found: it is cleaned, and inspected after that. */
  private static Stream<Action> afterRelease(
      CaseFile file, RouteOrder order, List<Action> actions) {
    return actions.stream()
        .filter(action -> isRelease(action.effect()))
        .flatMap(
            release ->
                Stream.concat(
                    order.hasWash()
                        ? Stream.of(new Effect.Clean(CleaningKind.ADVANCED, Scope.ELEMENT))
                        : Stream.empty(),
                    release.afterward().stream()
                        .map(check -> new Effect.Evaluate(check, Scope.ELEMENT))))
        .filter(effect -> actions.stream().noneMatch(action -> action.effect().equals(effect)))
        .map(
            effect ->
                NextPlace.action(
                    file,
                    order,
                    effect,
                    Site.of(Part.WHOLE_ELEMENT),
                    Doers.of(file, effect),
                    Set.of()));
  }

  private static boolean isRelease(Effect effect) {
    return effect instanceof Effect.Evaluate evaluate && evaluate.check() == Check.INCIDENT_RELEASE;
  }

  /** What is kept as it was found leaves only once it is released. */
  private static String first(List<Action> actions) {
    return actions.stream().anyMatch(action -> isRelease(action.effect()))
        ? ", after " + Check.INCIDENT_RELEASE
        : "";
  }

  private static boolean everyLayerRetires(CaseFile file, List<Action> actions) {
    Set<LayerKind> retired =
        actions.stream()
            .filter(
                action ->
                    action.effect() instanceof Effect.Retire retire
                        && retire.scope() == Scope.LAYER)
            .flatMap(action -> action.target().layer().stream())
            .collect(Collectors.toSet());
    // A coat is one without its winter liner as well.
    Set<LayerKind> layers =
        file.element().layerLabels().keySet().stream()
            .filter(layer -> layer != LayerKind.WINTER_LINER)
            .collect(Collectors.toSet());
    return !layers.isEmpty() && retired.containsAll(layers);
  }

  /** Whether a step is asked for only because what had to come before it is done. */
  private static boolean followsUp(Action action, List<Reason> reasons) {
    return reasons.stream()
        .filter(reason -> reason.effect().equals(action.effect()))
        .allMatch(reason -> reason.kind() == ReasonKind.FOLLOW_UP_MISSING);
  }

  /** An inspector's own evaluation that has the last word on a check is a step after it. */
  private static Optional<Step> lastWord(CaseFile file, RouteOrder order, Action action) {
    if (!(action.effect() instanceof Effect.Evaluate evaluate)) {
      return Optional.empty();
    }
    CheckRow row = file.tables().checks().row(evaluate.check());
    if (row.passCloses() || row.lastWord() != Check.INSPECTOR_EVALUATION) {
      return Optional.empty();
    }
    Effect last = new Effect.Evaluate(row.lastWord(), evaluate.scope());
    return Optional.of(
        step(
            file,
            order,
            NextPlace.action(file, order, last, action.target(), Doers.of(file, last), Set.of()),
            false));
  }

  private static Step step(CaseFile file, RouteOrder order, Action action, boolean followsUp) {
    List<String> shown = new ArrayList<>();
    if (order.isLast(action.effect())) {
      AwayQuestion.first(file).ifPresent(shown::add);
    }
    order.onlyIf(action.effect()).ifPresent(shown::add);
    if (action.effect() instanceof Effect.Evaluate evaluate) {
      CheckRow row = file.tables().checks().row(evaluate.check());
      shown.add(row.shown());
      if (row.lastWord() == Check.EXPERT_EVALUATION
          && evaluate.check() != Check.EXPERT_EVALUATION
          && !followsUp
          && !order.isLast(action.effect())) {
        shown.add(
            evaluate.check() == Check.MEASURE_EXTENT
                ? "Record the finding again with what was measured, or pass "
                    + Check.EXPERT_EVALUATION
                    + "."
                : "Once it is passed, or instead of it, pass " + Check.EXPERT_EVALUATION + ".");
      }
    }
    if (action.effect() instanceof Effect.Retire) {
      shown.add("Replaced by one of the same model and size, with a label of its own.");
    }
    action.afterward().forEach(check -> shown.add(file.tables().checks().row(check).shown()));
    return new Step(action.effect(), action.target(), action.by(), action.goesTo(), shown);
  }
}
