package org.ensemblerules.assess;

import java.util.Set;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Mismatch;
import org.ensemblerules.verdict.Recompute;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.VerdictPart;

/**
 * Computes a stored verdict again, and only with the rules that it was computed with then. Rules
 * that differ are named; a verdict of theirs would be another verdict.
 */
public final class JudgedAgain {
  private JudgedAgain() {}

  /**
   * Computes a stored verdict again, for the day it was judged for.
   *
   * @param rules the rules at hand; not null
   * @param assessment what was judged then; not null
   * @param then the stored verdict; not null
   * @return whether the verdict is the same, or in what it or the rules differ; never null
   * @throws InvalidValueException if the verdict is about another element than the assessment
   */
  public static Recompute of(RuleSet rules, Assessment assessment, Verdict then) {
    InvalidValueException.require(
        assessment.element().named().equals(then.element()),
        "Recompute.assessment",
        assessment.element().named(),
        "the element of the verdict, " + then.element());
    Identity now = rules.identity();
    // The fingerprint covers the rows and the editions chosen; a revision alone changes no verdict.
    if (then.identity().form() != now.form()
        || !then.identity().fingerprint().equals(now.fingerprint())) {
      return new Recompute.RulesDiffer(Mismatch.between(then.identity(), now));
    }
    Verdict again = Assess.assess(rules, assessment, then.asOf());
    Set<VerdictPart> differing = VerdictPart.differing(then, again);
    return differing.isEmpty()
        ? new Recompute.Same(again)
        : new Recompute.OtherVerdict(then, again, differing);
  }
}
