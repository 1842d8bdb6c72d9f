package org.ensemblerules.verdict;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.HandlingDuty;

/** Where an element goes next by all that is to be done together. */
final class NextPlace {
  private NextPlace() {}

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
