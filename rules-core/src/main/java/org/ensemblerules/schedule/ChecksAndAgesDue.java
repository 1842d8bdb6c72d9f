package org.ensemblerules.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Judgment;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.OpenFinding;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.source.Row;

/** What is due by other tables than that of tasks: age limits, and checks that repairs wait for. */
final class ChecksAndAgesDue {
  private static final String NO_LABEL = "no label is known";

  private final RecordOnDay facts;

  ChecksAndAgesDue(RecordOnDay facts) {
    this.facts = facts;
  }

  List<Due> all() {
    List<Due> due = ages();
    due.addAll(checks());
    return due;
  }

  List<Due> ages() {
    List<Due> due = new ArrayList<>();
    for (Optional<LayerKind> layer : facts.evidence().labeledLayers()) {
      Optional<Label> label = facts.element().label(layer);
      if (label.isPresent()) {
        age(layer, label.get(), due);
      } else {
        due.add(age(layer, Optional.empty(), Optional.empty(), NO_LABEL));
      }
    }
    if (facts.evidence().labeledLayers().isEmpty()) {
      due.add(age(Optional.empty(), Optional.empty(), Optional.empty(), NO_LABEL));
    }
    return due;
  }

  private void age(Optional<LayerKind> layer, Label label, List<Due> due) {
    for (AgeAnswer answer :
        facts
            .tables()
            .ageLimits()
            .answers(facts.element().kind(), facts.element().use(), layer, label.manufactured())) {
      age(layer, label, answer).ifPresent(due::add);
    }
  }

  private static Optional<Due> age(Optional<LayerKind> layer, Label label, AgeAnswer answer) {
    String why = "made " + label.manufactured() + "; " + answer.text();
    if (answer instanceof AgeAnswer.LeavesOn leaves) {
      return Optional.of(age(layer, Optional.of(leaves.row()), Optional.of(leaves.lastDay()), why));
    }
    if (answer instanceof AgeAnswer.NoLimitSet) {
      return Optional.empty();
    }
    Optional<Row> row = Optional.empty();
    if (answer instanceof AgeAnswer.DateUnknown unknown) {
      row = Optional.of(unknown.row());
    } else if (answer instanceof AgeAnswer.LimitNotSeen notSeen) {
      row = Optional.of(notSeen.row());
    }
    return Optional.of(age(layer, row, Optional.empty(), why));
  }

  private static Due age(
      Optional<LayerKind> layer, Optional<Row> row, Optional<LocalDate> by, String why) {
    return new Due(TaskKey.LEAVE_SERVICE, row, layer, by, why);
  }

  private List<Due> checks() {
    List<OpenFinding> openFindings = facts.evidence().findings().ofHistory();
    if (openFindings.isEmpty()) {
      return List.of();
    }
    List<Due> due = new ArrayList<>();
    Map<List<Object>, String> since = new HashMap<>();
    for (OpenFinding open : openFindings) {
      FindingId finding = open.finding().id();
      Optional<Moment> done = facts.evidence().done().workedOn(finding);
      Set<Check> afterward =
          open.demand()
              .row()
              .filter(row -> open.demand().kind() == Demand.Kind.RULE)
              .map(DefectRow::afterward)
              .orElse(Set.of());
      for (Check check : afterward) {
        done.filter(when -> !facts.evidence().done().passedAfterWork(check, finding, when))
            .ifPresent(
                when ->
                    due.add(
                        check(
                            open,
                            check,
                            when,
                            since.computeIfAbsent(
                                List.of(finding, check),
                                key -> notCounting(finding, check, when)))));
      }
    }
    return due.size() < 2 ? due : due.stream().distinct().toList();
  }

  private static Due check(OpenFinding open, Check check, Moment done, String since) {
    return new Due(
        TaskKey.CHECK_AFTERWARD,
        open.demand().row().map(row -> row),
        open.finding().site().layer(),
        done.date().earliest(),
        check + " for finding " + open.finding().id() + ", repaired or cleaned " + done + since);
  }

  /** Of the checks made for the finding since, those that failed stand among what is open. */
  private String notCounting(FindingId finding, Check check, Moment done) {
    return Judgment.text(
            facts.history().answering(finding).stream()
                .filter(
                    event ->
                        event instanceof LookEvent.Checked made
                            && made.check() == check
                            && made.result() != CheckResult.FAILED)
                .filter(event -> !done.certainlyAfter(event.when()))
                .flatMap(event -> facts.evidence().judgment(event).stream())
                .filter(each -> !each.counts())
                .toList())
        .map(text -> "; " + text)
        .orElse("");
  }
}
