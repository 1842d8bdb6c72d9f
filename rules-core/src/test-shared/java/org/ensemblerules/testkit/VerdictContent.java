package org.ensemblerules.testkit;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.gear.Site;
import org.ensemblerules.verdict.Verdict;

/** All that a verdict says, for comparing two of them. */
public final class VerdictContent {
  /**
   * What must be done to what, without who may do it.
   *
   * @param effect what
   * @param target to what
   */
  public record Demanded(Effect effect, Site target) {}

  private VerdictContent() {}

  /**
   * Returns all that a verdict says, in the order in which it says it.
   *
   * @param verdict the verdict
   * @return its parts
   */
  public static List<Object> of(Verdict verdict) {
    return List.of(
        verdict.element(),
        verdict.asOf(),
        verdict.service(),
        verdict.headline(),
        verdict.goesTo(),
        verdict.outBecause(),
        verdict.reasons(),
        verdict.actions(),
        verdict.handling(),
        verdict.checksNotDone(),
        verdict.openFindings(),
        verdict.ages(),
        verdict.wayBack(),
        verdict.inspections(),
        verdict.due(),
        verdict.authority(),
        verdict.cautions(),
        verdict.identity());
  }

  /**
   * Returns what a verdict demands.
   *
   * @param verdict the verdict
   * @return each effect with its target
   */
  public static Set<Demanded> demanded(Verdict verdict) {
    return verdict.actions().stream()
        .map(action -> new Demanded(action.effect(), action.target()))
        .collect(Collectors.toUnmodifiableSet());
  }
}
