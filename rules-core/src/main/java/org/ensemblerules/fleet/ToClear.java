package org.ensemblerules.fleet;

import com.google.common.collect.ImmutableList;
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
import org.ensemblerules.gear.Element;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.WayBack;

/**
 * What brings an element back, kept for whoever asks what they may do about it. It holds no history
 * and no verdict, so that a whole department's fits in memory.
 *
 * @param element the element; not null
 * @param whereabouts where it is; not null
 * @param steps the steps of its way back; empty if nobody can do anything about it today: it is in
 *     service, away, out for good, or a notice's; not null
 * @param asOf the day it was judged for; not null
 * @since 0.1
 */
public record ToClear(Element element, Whereabouts whereabouts, List<Step> steps, LocalDate asOf) {
  /** Copies the list. */
  public ToClear {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(whereabouts, "whereabouts");
    steps = ImmutableList.copyOf(steps);
    Objects.requireNonNull(asOf, "asOf");
  }

  /**
   * Takes down what brings an element back.
   *
   * @param judged the element; not null
   * @return its steps, if something can be done about it on the day it was judged for; never null
   */
  public static ToClear of(JudgedElement judged) {
    boolean stays =
        judged.isGone()
            || !judged.notices().isEmpty()
            || judged.goesTo().map(GoesTo::destination).equals(Optional.of(Destination.AWAY));
    List<Step> steps =
        !stays && judged.verdict().wayBack() instanceof WayBack.Steps way ? way.steps() : List.of();
    return new ToClear(judged.element(), judged.whereabouts(), steps, judged.verdict().asOf());
  }

  /**
   * Tells what a person may do about it.
   *
   * @param rules the rules it was judged by; not null
   * @param doer the person; not null
   * @return what they may do; never null
   */
  public Clearing by(RuleSet rules, Doer doer) {
    if (steps.isEmpty()) {
      return new Clearing.Nothing();
    }
    int may = 0;
    for (Step step : steps) {
      Permission permission = rules.mayPerform(doer, task(rules, step.effect()), element, asOf);
      if (!permission.granted()) {
        return may == 0
            ? new Clearing.MayNot(step, permission)
            : new Clearing.May(steps.get(0), may, steps.size());
      }
      may++;
    }
    return new Clearing.May(steps.get(0), may, steps.size());
  }

  private static Task task(RuleSet rules, Effect effect) {
    return effect instanceof Effect.Evaluate evaluate
        ? rules.tables().checks().row(evaluate.check()).task()
        : effect.task().orElseThrow();
  }
}
