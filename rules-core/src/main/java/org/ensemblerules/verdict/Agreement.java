package org.ensemblerules.verdict;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.source.InvalidValueException;

/**
 * Sees that the parts of a verdict agree, so that one that was stored and spoiled cannot pass for
 * milder than its reasons.
 */
final class Agreement {
  private Agreement() {}

  static void require(List<Reason> reasons, List<Action> actions, WayBack wayBack) {
    List<Reason> keepingOut = new ArrayList<>();
    for (Reason reason : reasons) {
      if (reason.effect().keepsOut()) {
        keepingOut.add(reason);
      }
    }
    if (!keepingOut.isEmpty() || !actions.isEmpty()) {
      requireActions(keepingOut, actions);
    }
    InvalidValueException.require(
        leadsBack(actions, wayBack),
        "Verdict.wayBack",
        wayBack,
        "a step for each action, that goes where it goes; none back only where something retires;"
            + " not needed only without an action");
  }

  private static void requireActions(List<Reason> keepingOut, List<Action> actions) {
    Map<Effect, Set<Check>> asked = new HashMap<>();
    keepingOut.forEach(reason -> follows(asked, reason.effect(), reason.afterward()));
    Map<Effect, Set<Check>> told = new HashMap<>();
    actions.forEach(action -> follows(told, action.effect(), action.afterward()));
    if (!told.keySet().equals(asked.keySet())) {
      throw new InvalidValueException(
          "Verdict.actions",
          told.keySet().stream().map(Effect::text).sorted().toList(),
          "an action for each effect of a reason that keeps it out, and no other");
    }
    if (!told.equals(asked)) {
      throw new InvalidValueException(
          "Verdict.actions",
          told.entrySet().stream()
              .filter(each -> !each.getValue().equals(asked.get(each.getKey())))
              .map(each -> each.getKey().text())
              .sorted()
              .findFirst()
              .orElseThrow(),
          "followed by the checks that the reasons for it ask for afterward, and no other");
    }
    if (actions.stream()
        .filter(action -> action.effect().isFinal())
        .anyMatch(action -> action.goesTo().destination() != Destination.DISPOSAL)) {
      throw new InvalidValueException(
          "Verdict.actions",
          actions.stream().map(action -> action.goesTo().text()).toList(),
          Destination.DISPOSAL + " for whatever ends the service of the whole element");
    }
  }

  private static void follows(Map<Effect, Set<Check>> all, Effect effect, Set<Check> afterward) {
    all.computeIfAbsent(effect, key -> EnumSet.noneOf(Check.class)).addAll(afterward);
  }

  private static boolean leadsBack(List<Action> actions, WayBack wayBack) {
    if (wayBack instanceof WayBack.Steps way) {
      return !actions.isEmpty()
          && actions.stream()
              .allMatch(action -> way.steps().stream().anyMatch(step -> does(step, action)));
    }
    return wayBack instanceof WayBack.None
        ? actions.stream().anyMatch(action -> action.effect() instanceof Effect.Retire)
        : actions.isEmpty();
  }

  private static boolean does(Step step, Action action) {
    return step.effect().equals(action.effect())
        && step.target().equals(action.target())
        && step.goesTo().equals(action.goesTo());
  }
}
