package org.ensemblerules.assess;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.WashAnswer;
import org.ensemblerules.care.WashDeviation;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.Judgment;
import org.ensemblerules.history.LoosenedWash;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.source.Row;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/**
 * Which washes does an overlay make count, or not count, that would else be judged otherwise? It
 * only notes them: what follows from it, the other questions tell.
 */
final class WashQuestion {
  private WashQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    for (LoosenedWash wash : file.evidence().shown().loosened()) {
      reasons.accept(reason(ReasonKind.LIMIT_LOOSENED, wash.limit().by(), wash.text()));
    }
    for (WorkEvent.Cleaned done : file.history().events(WorkEvent.Cleaned.class)) {
      // A wash of which no particulars are known keeps the limits that its doer says it kept.
      boolean keptAll = done.limitsKept() && done.wash().isEmpty();
      if (!keptAll
          && file.evidence().judgment(done).flatMap(Judgment::wash).orElse(null)
              instanceof WashAnswer.OutsideLimits outside) {
        for (WashDeviation deviation : outside.deviations()) {
          if (tightened(file, outside, deviation.row())) {
            reasons.accept(
                reason(
                    ReasonKind.LIMIT_TIGHTENED,
                    row(file, deviation.row()),
                    "cleaned " + done.kind() + " on " + done.when() + ", " + deviation));
          }
        }
      }
    }
  }

  /** Whether a row is an overlay's, and not one in place of a stricter row. */
  private static boolean tightened(
      CaseFile file, WashAnswer.OutsideLimits outside, CareLimitRow row) {
    return file.rules().identity().overlays().contains(row.provenance().origin())
        && outside.loosened().stream().noneMatch(each -> each.by().limit().equals(row));
  }

  /** The row as the table has it: that of a manufacturer's instructions says for which model. */
  private static Row row(CaseFile file, CareLimitRow limit) {
    return file.tables().care().limits().modelRows().stream()
        .filter(each -> each.limit().equals(limit))
        .<Row>map(each -> each)
        .findFirst()
        .orElse(limit);
  }

  private static Reason reason(ReasonKind kind, Row row, String seen) {
    return Reasons.of(
        kind,
        Optional.of(row),
        Site.of(Part.WHOLE_ELEMENT),
        Optional.empty(),
        seen,
        new Effect.Note(),
        List.of());
  }
}
