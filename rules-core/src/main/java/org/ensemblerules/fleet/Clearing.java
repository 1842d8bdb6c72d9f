package org.ensemblerules.fleet;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.Task;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.WayBack;

/** What a person may do today about an element that is out. */
public sealed interface Clearing {
  /**
   * They may do the first steps of its way back, or all.
   *
   * @param first the first step; not null
   * @param may how many of the steps they may do before somebody else must, 1 or more
   * @param all how many steps there are, not fewer
   */
  record May(Step first, int may, int all) implements Clearing {
    /**
     * Checks the numbers.
     *
     * @throws InvalidValueException if they may do none, or more than there are
     */
    public May {
      Objects.requireNonNull(first, "first");
      InvalidValueException.require(
          may >= 1 && may <= all, "Clearing.may", may, "1 to the number of steps, " + all);
    }

    /**
     * Tells whether they may bring it back into service by themselves.
     *
     * @return true if they may do each step
     */
    public boolean allTheWay() {
      return may == all;
    }
  }

  /**
   * They may not do the first step.
   *
   * @param first the first step; not null
   * @param why why not; not null
   */
  record MayNot(Step first, Permission why) implements Clearing {
    /** Checks for nulls. */
    public MayNot {
      Objects.requireNonNull(first, "first");
      Objects.requireNonNull(why, "why");
    }
  }

  /** Nobody can do anything about it today: it is in service, away, out for good, or a notice's. */
  record Nothing() implements Clearing {}

  /**
   * Tells what a person may do about an element on the day it was judged for.
   *
   * @param rules the rules it was judged by; not null
   * @param doer the person; not null
   * @param judged the element; not null
   * @return what they may do; never null
   */
  static Clearing of(RuleSet rules, Doer doer, JudgedElement judged) {
    Optional<Destination> goesTo = judged.goesTo().map(GoesTo::destination);
    if (judged.isGone()
        || !judged.notices().isEmpty()
        || goesTo.equals(Optional.of(Destination.AWAY))
        || !(judged.verdict().wayBack() instanceof WayBack.Steps way)) {
      return new Nothing();
    }
    List<Step> steps = way.steps();
    int may = 0;
    for (Step step : steps) {
      Permission permission = permission(rules, doer, judged, step);
      if (!permission.granted()) {
        return may == 0 ? new MayNot(step, permission) : new May(steps.get(0), may, steps.size());
      }
      may++;
    }
    return new May(steps.get(0), may, steps.size());
  }

  private static Permission permission(RuleSet rules, Doer doer, JudgedElement judged, Step step) {
    LocalDate asOf = judged.verdict().asOf();
    Effect effect = step.effect();
    Task task =
        effect instanceof Effect.Evaluate evaluate
            ? rules.tables().checks().row(evaluate.check()).task()
            : effect.task().orElseThrow();
    return rules.mayPerform(doer, task, judged.element(), asOf);
  }
}
