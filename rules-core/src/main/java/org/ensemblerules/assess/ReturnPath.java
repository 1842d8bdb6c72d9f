package org.ensemblerules.assess;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.WayBack;

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
    LastWord lastWord = new LastWord(file, order, reasons);
    List<Step> steps =
        Stream.concat(actions.stream(), afterRelease(file, order, actions))
            .sorted(Comparator.comparingInt(action -> order.rank(action.effect())))
            .flatMap(action -> Stream.concat(Stream.of(action), lastWord.on(action).stream()))
            .map(action -> step(file, order, action, lastWord.toldAsCheck(action)))
            .distinct()
            .collect(Collectors.toCollection(ArrayList::new));
    if (WorkQuestion.willFollow(reasons)
        && actions.stream().noneMatch(action -> order.isLast(action.effect()))) {
      Effect look = new Effect.Evaluate(Check.ROUTINE_INSPECTION, Scope.ELEMENT);
      steps.add(
          step(
              file,
              order,
              PlannedAction.of(
                  file, order, look, Site.of(Part.WHOLE_ELEMENT), Doers.of(file, look), Set.of()),
              Optional.empty()));
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
                PlannedAction.of(
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
    EnumSet<LayerKind> left = EnumSet.noneOf(LayerKind.class);
    left.addAll(file.element().layerLabels().keySet());
    // A coat is one without its winter liner as well.
    left.remove(LayerKind.WINTER_LINER);
    if (left.isEmpty()) {
      return false;
    }
    for (Action action : actions) {
      if (action.effect() instanceof Effect.Retire retire && retire.scope() == Scope.LAYER) {
        action.target().layer().ifPresent(left::remove);
      }
    }
    return left.isEmpty();
  }

  private static Step step(CaseFile file, RouteOrder order, Action action, Optional<String> told) {
    List<String> shown = new ArrayList<>();
    if (order.isLast(action.effect())) {
      AwayQuestion.first(file).ifPresent(shown::add);
    }
    order.onlyIf(action.effect()).ifPresent(shown::add);
    shown.addAll(shown(file, action.effect()));
    told.ifPresent(shown::add);
    action.afterward().forEach(check -> shown.add(file.tables().checks().row(check).shown()));
    return new Step(action.effect(), action.target(), action.by(), action.goesTo(), shown);
  }

  private static List<String> shown(CaseFile file, Effect effect) {
    if (effect instanceof Effect.Evaluate evaluate) {
      String must = file.tables().checks().row(evaluate.check()).shown();
      return evaluate.check() == Check.MEASURE_EXTENT
          ? List.of(must, "Record the finding again with what was measured.")
          : List.of(must);
    }
    return effect instanceof Effect.Retire
        ? List.of("Replaced by one of the same model and size, with a label of its own.")
        : List.of();
  }
}
