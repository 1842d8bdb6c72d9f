package org.ensemblerules.history;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;

/**
 * What a pass shows of a place that nobody had tried when it was found: once the strength check
 * that its row calls for is passed for the finding, the place is one that held, and the row for
 * that says what comes next.
 */
final class StrengthTry {
  private StrengthTry() {}

  /** The finding as it stands after the try; empty if nobody needs to try, or has. */
  static Optional<Finding> of(Finding finding, EvidenceTables tables, Evidence evidence) {
    if (finding.oncePassed(finding.seen()).isEmpty()) {
      return Optional.empty();
    }
    Set<Check> asked = new HashSet<>();
    for (Demand demand :
        Demand.of(finding, evidence.element(), tables.anatomy(), tables.defects())) {
      if (demand.effect().keepsOut()) {
        if (!demand.isOfUntried(finding)
            || !(demand.effect() instanceof Effect.Evaluate evaluate)) {
          // Whatever else is asked for as long as nobody tried it, a try does not undo.
          return Optional.empty();
        }
        asked.add(evaluate.check());
      }
    }
    if (asked.size() != 1) {
      return Optional.empty();
    }
    return firstPass(finding, asked.iterator().next(), evidence)
        .flatMap(passed -> finding.oncePassed(passed.date()));
  }

  private static Optional<Moment> firstPass(Finding finding, Check check, Evidence evidence) {
    return evidence.history().answering(finding.id()).stream()
        .filter(LookEvent.Checked.class::isInstance)
        .map(LookEvent.Checked.class::cast)
        .filter(done -> done.check() == check && done.result() == CheckResult.PASSED)
        .filter(evidence::counts)
        .map(LookEvent.Checked::when)
        .filter(when -> when.date().certainlyNotBefore(finding.seen()))
        .filter(when -> !evidence.findings().failedSince(when, finding.id()))
        .min(Moment.FIRST_CERTAIN);
  }
}
