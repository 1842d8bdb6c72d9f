package org.ensemblerules.assess;

import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Multimaps;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.fieldcheck.Applicability;
import org.ensemblerules.fieldcheck.CheckAnswer;
import org.ensemblerules.fieldcheck.StrongerRow;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Objection;
import org.ensemblerules.history.Validity;
import org.ensemblerules.source.Row;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/** What do the checks made by hand say, and were their conditions kept? */
final class CheckQuestion {
  private static final Site ELEMENT = Site.of(Part.WHOLE_ELEMENT);
  private static final Set<Objection.Code> VOID =
      EnumSet.of(Objection.Code.CONDITIONS_NOT_KEPT, Objection.Code.OUTSIDE_LIMIT);

  private CheckQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    Validity validity = file.rules().validity();
    for (LookEvent.Checked done : file.history().events(LookEvent.Checked.class)) {
      if (validity.applicability(done.check(), file.element())
          instanceof Applicability.NotApplicable) {
        reasons.accept(doesNotApply(file, done));
      } else if (done.result() == CheckResult.PASSED) {
        file.evidence()
            .judgment(done)
            .flatMap(judgment -> judgment.objection(VOID))
            .ifPresent(why -> reasons.accept(voided(done, why.text())));
      }
    }
    List<LookEvent.Checked> standing = file.evidence().findings().standingFailures();
    if (standing.isEmpty()) {
      return;
    }
    ImmutableListMultimap<FindingId, Finding> findings =
        Multimaps.index(file.findings(), Finding::id);
    for (LookEvent.Checked failed : standing) {
      failures(file, failed, findings).forEach(reasons);
    }
  }

  private static Reason doesNotApply(CaseFile file, LookEvent.Checked done) {
    return Reasons.of(
        ReasonKind.CHECK_DOES_NOT_APPLY,
        Optional.empty(),
        ELEMENT,
        Optional.empty(),
        made(done)
            + ", which looks at nothing that a "
            + file.element().kind()
            + " "
            + file.element().use()
            + " has",
        new Effect.Evaluate(Check.RECORD_CORRECTION, Scope.ELEMENT),
        List.of());
  }

  private static Reason voided(LookEvent.Checked done, String why) {
    return Reasons.of(
        ReasonKind.CHECK_VOID,
        Optional.empty(),
        ELEMENT,
        Optional.empty(),
        made(done) + ", which counts as not made: " + why,
        new Effect.Note(),
        List.of());
  }

  /** One reason for each finding that the check was made for, all of them calling for the same. */
  private static List<Reason> failures(
      CaseFile file, LookEvent.Checked failed, ImmutableListMultimap<FindingId, Finding> findings) {
    CheckAnswer answer = file.rules().validity().answer(failed);
    List<Reason> reasons =
        failed.answers().stream()
            .flatMap(id -> findings.get(id).stream())
            .map(finding -> failure(failed, answer, finding.site(), Optional.of(finding.id())))
            .toList();
    return reasons.isEmpty()
        ? List.of(failure(failed, answer, ELEMENT, Optional.empty()))
        : reasons;
  }

  private static Reason failure(
      LookEvent.Checked failed, CheckAnswer answer, Site site, Optional<FindingId> finding) {
    Optional<StrongerRow> next =
        answer instanceof CheckAnswer.FailureStands stands
            ? stands.next()
            : answer instanceof CheckAnswer.FailureDoubtful doubtful
                ? doubtful.next()
                : Optional.empty();
    boolean doubtful = answer instanceof CheckAnswer.FailureDoubtful;
    String notKept =
        answer.deviations().stream().map(Object::toString).collect(Collectors.joining("; "));
    return Reasons.of(
        doubtful ? ReasonKind.CHECK_IN_DOUBT : ReasonKind.CHECK_FAILED,
        next.<Row>map(row -> row),
        site,
        finding,
        made(failed)
            + (notKept.isEmpty() ? "" : "; not kept: " + notKept)
            + (doubtful ? "; so a sound item could have failed as well" : "")
            + "; settled by what names "
            + failed.failure(),
        new Effect.Evaluate(
            next.map(StrongerRow::stronger).orElse(Check.EXPERT_EVALUATION), Scope.ELEMENT),
        List.of());
  }

  private static String made(LookEvent.Checked done) {
    String result =
        switch (done.result()) {
          case PASSED -> " passed on ";
          case FAILED -> " failed on ";
          case VOID -> " made without result on ";
        };
    return done.check() + result + done.when() + ", by " + done.by().name();
  }
}
