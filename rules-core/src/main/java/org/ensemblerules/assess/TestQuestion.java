package org.ensemblerules.assess;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.MethodRow;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.strength.ReportJudge;
import org.ensemblerules.strength.SpecimenOrigin;
import org.ensemblerules.strength.TestOutcome;
import org.ensemblerules.strength.TestReport;
import org.ensemblerules.strength.UsedGearRow;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/**
 * What do test reports come to? A test that meets its requirement closes nothing: it speaks for its
 * specimens. One that does not, or has no result, keeps the element out until an expert has looked.
 */
final class TestQuestion {
  private TestQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    for (LookEvent.Tested tested : file.history().events(LookEvent.Tested.class)) {
      TestReport report = tested.report();
      if (report.element() != file.element().kind() || report.use() != file.element().use()) {
        reasons.accept(
            reason(
                ReasonKind.CONTRADICTION,
                Optional.empty(),
                tested,
                "the report is of a " + report.element() + " " + report.use(),
                new Effect.Evaluate(Check.RECORD_CORRECTION, Scope.ELEMENT)));
      } else {
        judge(file, tested, tested.purpose(), Optional.empty(), reasons);
        for (UsedGearRow policy : file.tables().usedGear()) {
          policy
              .purpose(tested.purpose())
              .ifPresent(purpose -> judge(file, tested, purpose, Optional.of(policy), reasons));
        }
        specimensCut(file, tested).ifPresent(reasons);
      }
    }
  }

  private static void judge(
      CaseFile file,
      LookEvent.Tested tested,
      Purpose purpose,
      Optional<Row> policy,
      Consumer<Reason> reasons) {
    ReportJudge.Result result =
        file.tables()
            .strength()
            .judge(purpose, tested.rule())
            .judge(tested.product(), tested.report());
    boolean evaluated = file.evidence().done().evaluatedSince(tested);
    if (result instanceof ReportJudge.Judged judged) {
      boolean met = judged.outcome() == TestOutcome.PASS;
      if (met || !evaluated) {
        reasons.accept(
            reason(
                met ? ReasonKind.TEST_MET : ReasonKind.TEST_NOT_MET,
                policy.or(() -> Optional.of(judged.requirement())),
                tested,
                text(judged) + (met ? "" : settledBy(tested)),
                met
                    ? new Effect.Note()
                    : new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT)));
      }
    } else if (result instanceof ReportJudge.NoResult none && !evaluated) {
      reasons.accept(
          reason(
              ReasonKind.TEST_WITHOUT_RESULT,
              policy.or(() -> none.requirement()),
              tested,
              "no result, " + none.reason() + ": " + none.detail() + settledBy(tested),
              new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT)));
    }
  }

  /**
   * Whatever a destructive test came to, the element that its specimens were cut from is gone.
   * While nobody says which that was, it may be this one.
   */
  private static Optional<Reason> specimensCut(CaseFile file, LookEvent.Tested tested) {
    Optional<SpecimenOrigin> origin = tested.report().origin();
    return file.tables()
        .strength()
        .methods()
        .method(tested.report().method())
        .filter(MethodRow::destructive)
        .filter(row -> origin.map(SpecimenOrigin.THIS_ELEMENT::equals).orElse(true))
        .map(
            row ->
                reason(
                    ReasonKind.SPECIMENS_CUT,
                    Optional.of(row),
                    tested,
                    origin.isPresent()
                        ? "specimens were cut from this element"
                        : "the report does not say what the specimens were cut from, which may be"
                            + " this element: state its origin",
                    origin.isPresent()
                        ? new Effect.Retire(Scope.ELEMENT)
                        : new Effect.Evaluate(Check.RECORD_CORRECTION, Scope.ELEMENT)));
  }

  private static String settledBy(LookEvent.Tested tested) {
    return "; settled by " + Check.EXPERT_EVALUATION + " passed for " + tested.failure();
  }

  private static String text(ReportJudge.Judged judged) {
    String directions =
        judged.directions().stream().map(judged::text).collect(Collectors.joining("; "));
    String remarks =
        judged.remarks().stream()
            .map(remark -> "; " + judged.text(remark))
            .collect(Collectors.joining());
    return judged.outcome()
        + " by "
        + judged.rule().text()
        + ", for "
        + judged.purpose().text()
        + ": "
        + directions
        + remarks;
  }

  private static Reason reason(
      ReasonKind kind, Optional<Row> row, LookEvent.Tested tested, String what, Effect effect) {
    TestReport report = tested.report();
    return Reasons.of(
        kind,
        row,
        report.site(),
        tested.answers().size() == 1 ? tested.answers().stream().findFirst() : Optional.empty(),
        report.property() + " tested on " + tested.when() + " by " + report.method() + ": " + what,
        effect,
        List.of());
  }
}
