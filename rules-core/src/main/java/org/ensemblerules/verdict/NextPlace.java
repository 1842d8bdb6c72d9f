package org.ensemblerules.verdict;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.gear.Site;

/** Where an element goes next: for each thing to be done, and by all of them together. */
final class NextPlace {
  private NextPlace() {}

  static Action action(
      CaseFile file,
      RouteOrder order,
      Effect effect,
      Site target,
      List<PermittedDoer> by,
      Set<Check> afterward) {
    return new Action(effect, target, by, goesTo(file, order, effect, by), afterward);
  }

  private static GoesTo goesTo(
      CaseFile file, RouteOrder order, Effect effect, List<PermittedDoer> by) {
    if (effect.isFinal()) {
      return GoesTo.of(Destination.DISPOSAL);
    }
    if (order.findsOut(effect)) {
      return GoesTo.of(Destination.ISOLATE);
    }
    return Doers.task(file, effect)
        .map(task -> file.tables().destinations().nearest(task, by))
        .orElseThrow();
  }

  /**
   * One for all: held, away, sealed or on its way out as a whole, and else where the earliest step
   * is done.
   */
  static Optional<GoesTo> of(
      List<Action> actions, Set<HandlingDuty> handling, List<Reason> reasons, WayBack wayBack) {
    if (actions.isEmpty()) {
      return Optional.empty();
    }
    if (handling.contains(HandlingDuty.PRESERVE_AS_FOUND)) {
      return Optional.of(GoesTo.of(Destination.EVIDENCE_HOLD));
    }
    if (reasons.stream().anyMatch(reason -> reason.kind() == ReasonKind.AWAY)) {
      return Optional.of(GoesTo.of(Destination.AWAY));
    }
    if (actions.stream().anyMatch(action -> action.goesTo().destination() == Destination.ISOLATE)) {
      return Optional.of(GoesTo.of(Destination.ISOLATE));
    }
    return Optional.of(
        wayBack instanceof WayBack.Steps way
            ? way.steps().get(0).goesTo()
            : GoesTo.of(Destination.DISPOSAL));
  }
}
