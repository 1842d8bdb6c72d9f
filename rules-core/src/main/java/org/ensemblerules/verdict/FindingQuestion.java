package org.ensemblerules.verdict;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.OpenFinding;

/** What do the findings call for that are still open, and the checks that failed? */
final class FindingQuestion {
  private FindingQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    for (Finding finding : file.findings()) {
      for (Demand demand :
          Demand.of(finding, file.element(), file.tables().anatomy(), file.tables().defects())) {
        if (!demand.effect().keepsOut()) {
          reasons.accept(reason(finding, demand, List.of()));
        }
      }
      open(file, finding)
          .forEach(open -> reasons.accept(reason(finding, open.demand(), open.attempts())));
    }
    for (Event.Checked failed :
        file.rules().openFindings().standingFailures(file.element(), file.history(), file.asOf())) {
      failures(file, failed).forEach(reasons);
    }
  }

  static List<OpenFinding> open(CaseFile file, Finding finding) {
    return file.rules().openFindings().of(finding, file.element(), file.history(), file.asOf());
  }

  private static Reason reason(Finding finding, Demand demand, List<String> attempts) {
    ReasonKind kind =
        switch (demand.kind()) {
          case RULE -> ReasonKind.RULE;
          case MUST_MEASURE -> ReasonKind.MUST_MEASURE;
          case NO_RULE -> ReasonKind.NO_RULE;
          case NO_SUCH_PART -> ReasonKind.NO_SUCH_PART;
        };
    String seen =
        finding.text()
            + demand.mustMeasure().map(by -> "; its extent must be told by " + by).orElse("");
    return new Reason(
        kind,
        demand.row().map(row -> row),
        demand.site(),
        Optional.of(finding.id()),
        seen,
        demand.effect(),
        attempts);
  }

  /** One reason for each finding that the check was made for, all of them calling for the same. */
  private static List<Reason> failures(CaseFile file, Event.Checked failed) {
    List<Reason> reasons =
        file.findings().stream()
            .filter(finding -> failed.answers().contains(finding.id()))
            .map(finding -> failure(failed, finding.site(), Optional.of(finding.id())))
            .toList();
    return reasons.isEmpty()
        ? List.of(failure(failed, Site.of(Part.WHOLE_ELEMENT), Optional.empty()))
        : reasons;
  }

  private static Reason failure(Event.Checked failed, Site site, Optional<FindingId> finding) {
    return new Reason(
        ReasonKind.CHECK_FAILED,
        Optional.empty(),
        site,
        finding,
        failed.check() + " failed on " + failed.when() + ", by " + failed.by().name(),
        new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT),
        List.of());
  }
}
