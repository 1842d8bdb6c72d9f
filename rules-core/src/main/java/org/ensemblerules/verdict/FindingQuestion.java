package org.ensemblerules.verdict;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.history.OpenFinding;

/** What do the findings call for that are still open? */
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
  }

  static List<OpenFinding> open(CaseFile file, Finding finding) {
    return file.evidence().open(finding);
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
}
