package org.ensemblerules.assess;

import java.util.List;
import java.util.Set;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.gear.Site;
import org.ensemblerules.verdict.Action;

/** A thing to be done, with where the element goes for it. */
final class PlannedAction {
  private PlannedAction() {}

  static Action of(
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
}
