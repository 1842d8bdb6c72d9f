package org.ensemblerules.fleet;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.verdict.LayerAge;
import org.ensemblerules.verdict.OutBecause;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.TaskDue;
import org.ensemblerules.verdict.Verdict;

/** Counts the figures of a department as elements come. */
final class FigureCounting {
  private final RuleSet rules;
  private long elements;
  private long gone;
  private final Map<ElementKind, Long> byKind = new EnumMap<>(ElementKind.class);
  private long in;
  private long inspectionsDue;
  private long inspectedInTime;
  private long overdue;
  private long overdueDays;
  private long longestOverdue;
  private long overdueSinceUnknown;
  private final Map<Integer, Long> ages = new HashMap<>();
  private long ageUnknown;
  private final Map<FindingGroup, Long> findings = new HashMap<>();
  private final Map<OutBecause, Long> because = new EnumMap<>(OutBecause.class);
  private final Map<ReasonKind, Long> why = new EnumMap<>(ReasonKind.class);
  private long noticed;

  FigureCounting(RuleSet rules) {
    this.rules = rules;
  }

  void add(JudgedElement judged) {
    findings(judged);
    if (judged.isGone()) {
      gone++;
      return;
    }
    elements++;
    byKind.merge(judged.element().kind(), 1L, Long::sum);
    in += judged.service() == Service.IN ? 1 : 0;
    noticed += judged.notices().isEmpty() ? 0 : 1;
    Verdict verdict = judged.verdict();
    due(judged, verdict);
    age(verdict);
    verdict.outBecause().forEach(cause -> because.merge(cause, 1L, Long::sum));
    verdict.reasons().stream()
        .filter(reason -> reason.effect().keepsOut())
        .map(Reason::kind)
        .distinct()
        .forEach(kind -> why.merge(kind, 1L, Long::sum));
  }

  private void due(JudgedElement judged, Verdict verdict) {
    Set<TaskKey> inspections =
        rules.tables().tasks().rows(judged.element()).stream()
            .filter(
                row ->
                    row.doneBy() instanceof Discharge.Inspected
                        || row.doneBy() instanceof Discharge.InspectedBy)
            .map(TaskRow::task)
            .collect(Collectors.toSet());
    List<TaskDue> inspected =
        verdict.due().stream().filter(due -> inspections.contains(due.task())).toList();
    if (!inspected.isEmpty()) {
      inspectionsDue++;
      inspectedInTime += Overdue.of(inspected, verdict.asOf()).isAny() ? 0 : 1;
    }
    Overdue all = Overdue.of(verdict.due(), verdict.asOf());
    overdue += all.isAny() ? 1 : 0;
    overdueDays += all.days();
    longestOverdue = Math.max(longestOverdue, all.days());
    overdueSinceUnknown += all.sinceUnknown() ? 1 : 0;
  }

  private void age(Verdict verdict) {
    List<Optional<Integer>> labels =
        verdict.ages().stream()
            .map(LayerAge::manufactured)
            .map(made -> years(made, verdict.asOf()))
            .toList();
    if (labels.isEmpty() || labels.contains(Optional.<Integer>empty())) {
      ageUnknown++;
    } else {
      ages.merge(
          labels.stream().mapToInt(Optional::orElseThrow).max().orElseThrow(), 1L, Long::sum);
    }
  }

  private void findings(JudgedElement judged) {
    Set<FindingId> once = new HashSet<>();
    Stream.concat(
            judged.kept().assessment().findings().stream(),
            judged.kept().assessment().history().events(LookEvent.Found.class).stream()
                .map(LookEvent.Found::finding))
        .filter(finding -> once.add(finding.id()))
        .forEach(finding -> findings.merge(group(judged, finding), 1L, Long::sum));
  }

  private static FindingGroup group(JudgedElement judged, Finding finding) {
    Optional<Integer> age =
        judged
            .element()
            .labelFor(finding.site())
            .flatMap(
                label ->
                    finding.seen().earliest().flatMap(seen -> years(label.manufactured(), seen)));
    return new FindingGroup(finding.site().part(), age);
  }

  private static Optional<Integer> years(MarkedDate made, LocalDate on) {
    return made.earliest()
        .map(day -> Math.max(0, Math.toIntExact(ChronoUnit.YEARS.between(day, on))));
  }

  FigureCounting with(FigureCounting other) {
    elements += other.elements;
    gone += other.gone;
    add(byKind, other.byKind);
    in += other.in;
    inspectionsDue += other.inspectionsDue;
    inspectedInTime += other.inspectedInTime;
    overdue += other.overdue;
    overdueDays += other.overdueDays;
    longestOverdue = Math.max(longestOverdue, other.longestOverdue);
    overdueSinceUnknown += other.overdueSinceUnknown;
    add(ages, other.ages);
    ageUnknown += other.ageUnknown;
    add(findings, other.findings);
    add(because, other.because);
    add(why, other.why);
    noticed += other.noticed;
    return this;
  }

  private static <K> void add(Map<K, Long> sum, Map<K, Long> more) {
    more.forEach((key, count) -> sum.merge(key, count, Long::sum));
  }

  Figures figures() {
    return new Figures(
        elements,
        gone,
        byKind,
        in,
        inspectionsDue,
        inspectedInTime,
        overdue,
        overdueDays,
        longestOverdue,
        overdueSinceUnknown,
        ages,
        ageUnknown,
        findings,
        because,
        why,
        noticed);
  }
}
