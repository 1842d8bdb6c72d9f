package org.ensemblerules.assess;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.gear.Site;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/**
 * Who has the last word on what an action asks of findings: nobody, if what it asks settles them,
 * and else whoever the check hands on to once it is passed.
 */
final class LastWord {
  private final CaseFile file;
  private final RouteOrder order;
  private final List<Reason> reasons;

  LastWord(CaseFile file, RouteOrder order, List<Reason> reasons) {
    this.file = file;
    this.order = order;
    this.reasons = reasons;
  }

  /** What is still to be done once the check is passed; empty if that settles the findings. */
  List<Action> on(Action action) {
    if (!(action.effect() instanceof Effect.Evaluate evaluate)
        || evaluate.check() == Check.MEASURE_EXTENT
        || order.isLast(evaluate)) {
      return List.of();
    }
    CheckRow row = file.tables().checks().row(evaluate.check());
    if (row.passCloses()) {
      return List.of();
    }
    Effect last = new Effect.Evaluate(row.lastWord(), evaluate.scope());
    return about(action)
        .flatMap(
            finding ->
                called(finding, action).anyMatch(demand -> demand.isOfUntried(finding))
                    ? onceTried(finding, action)
                    : Stream.of(next(last, action.target(), Set.of())))
        .distinct()
        .toList();
  }

  /** Of a place that nobody tried, the row of one that held says what comes next. */
  private Stream<Action> onceTried(Finding finding, Action action) {
    return finding.oncePassed(finding.seen()).stream()
        .flatMap(held -> called(held, action))
        .filter(demand -> demand.effect().keepsOut())
        .map(
            demand ->
                next(
                    demand.effect(),
                    Conclusion.target(file.element(), demand.effect(), demand.site()),
                    demand.row().map(DefectRow::afterward).orElse(Set.of())));
  }

  private Stream<Demand> called(Finding finding, Action action) {
    return Demand.of(finding, file.element(), file.tables().anatomy(), file.tables().defects())
        .stream()
        .filter(demand -> isTarget(action, demand.site()));
  }

  /** An inspection speaks of no finding: what it says of one is told by the check as well. */
  Optional<String> toldAsCheck(Action action) {
    List<String> ids = about(action).map(finding -> finding.id().value()).distinct().toList();
    return order.isLast(action.effect()) && !ids.isEmpty()
        ? Optional.of(
            "Record its result as a check as well, made for " + String.join(", ", ids) + ".")
        : Optional.empty();
  }

  private Action next(Effect effect, Site target, Set<Check> afterward) {
    return PlannedAction.of(file, order, effect, target, Doers.of(file, effect), afterward);
  }

  private boolean isTarget(Action action, Site site) {
    return Conclusion.target(file.element(), action.effect(), site).equals(action.target());
  }

  /** The findings of which a row asks for an action. */
  private Stream<Finding> about(Action action) {
    return reasons.stream()
        .filter(reason -> reason.kind() == ReasonKind.RULE)
        .filter(reason -> reason.effect().equals(action.effect()))
        .filter(reason -> isTarget(action, reason.site()))
        .flatMap(reason -> reason.finding().stream())
        .distinct()
        .flatMap(id -> file.findings().stream().filter(each -> each.id().equals(id)));
  }
}
