package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Task;

/**
 * Which findings are still open. A finding closes only by what it calls for: done for it, not
 * before it, by somebody permitted, and followed, certainly later, by the checks that its row asks
 * for. Silence closes nothing, and neither does a look that saw nothing.
 */
final class OpenFindings {
  private final EvidenceTables tables;
  private final Evidence evidence;
  private final Map<Finding, ImmutableList<OpenFinding>> byFinding = new ConcurrentHashMap<>();

  OpenFindings(EvidenceTables tables, Evidence evidence) {
    this.tables = tables;
    this.evidence = evidence;
  }

  List<OpenFinding> ofHistory() {
    return Stream.concat(
            evidence.history().events(Event.Found.class).stream().map(Event.Found::finding),
            evidence.shown().stream())
        .flatMap(finding -> of(finding).stream())
        .collect(ImmutableList.toImmutableList());
  }

  /** Looked for once for each finding, whoever asks. */
  List<OpenFinding> of(Finding finding) {
    return byFinding.computeIfAbsent(finding, this::lookFor);
  }

  private ImmutableList<OpenFinding> lookFor(Finding finding) {
    ImmutableList.Builder<OpenFinding> open = ImmutableList.builder();
    for (Demand demand :
        Demand.of(finding, evidence.element(), tables.anatomy(), tables.defects())) {
      if (demand.effect().keepsOut()) {
        open(finding, demand).ifPresent(open::add);
      }
    }
    return open.build();
  }

  List<Event.Checked> standingFailures() {
    return evidence.history().events(Event.Checked.class).stream()
        .filter(done -> done.result() == CheckResult.FAILED)
        .filter(
            failed ->
                failed.answers().isEmpty()
                    || !failed.answers().stream().allMatch(id -> settled(failed, id)))
        .collect(ImmutableList.toImmutableList());
  }

  private Optional<OpenFinding> open(Finding finding, Demand demand) {
    List<String> attempts = new ArrayList<>();
    for (Event event : evidence.history().answering(finding.id())) {
      Optional<Attempt> attempt = attempt(event, finding, demand);
      if (attempt.map(Attempt::settles).orElse(false)) {
        return Optional.empty();
      }
      attempt.flatMap(Attempt::whyNot).ifPresent(attempts::add);
    }
    return Optional.of(new OpenFinding(finding, demand, closedBy(demand), attempts));
  }

  private static List<String> closedBy(Demand demand) {
    if (demand.effect().isFinal()) {
      return List.of();
    }
    List<String> steps = new ArrayList<>();
    steps.add(demand.effect().text());
    afterwards(demand).forEach(check -> steps.add(check + " passed certainly later"));
    return steps;
  }

  private static Set<Check> afterwards(Demand demand) {
    return demand
        .row()
        .filter(row -> demand.kind() == Demand.Kind.RULE)
        .map(DefectRow::afterwards)
        .orElse(Set.of());
  }

  /** Holds an event against a demand; empty if it was not meant to settle the finding. */
  private Optional<Attempt> attempt(Event event, Finding finding, Demand demand) {
    Effect effect = demand.effect();
    if (event instanceof Event.Cleaned done) {
      boolean asked = effect instanceof Effect.Clean clean && clean.kind() == done.kind();
      String prefix = prefix("cleaned " + done.kind(), done, done.by());
      return Optional.of(attempt(done, prefix, asked, finding, demand));
    }
    if (event instanceof Event.Repaired done) {
      String what = (done.replaced() ? "replaced " : "repaired ") + done.repairClass();
      String prefix = prefix(what, done, done.by());
      return Optional.of(attempt(done, prefix, repairs(done, effect), finding, demand));
    }
    return event instanceof Event.Checked done && done.result() == CheckResult.PASSED
        ? attempt(done, finding, demand)
        : Optional.empty();
  }

  /** A check that only follows the repair is no attempt of its own. */
  private Optional<Attempt> attempt(Event.Checked done, Finding finding, Demand demand) {
    CheckRow row = tables.checks().row(done.check());
    boolean asked =
        demand.effect() instanceof Effect.Evaluate evaluate && evaluate.check() == done.check();
    if (!asked && afterwards(demand).contains(done.check())) {
      return Optional.empty();
    }
    String prefix = prefix("passed " + done.check(), done, done.by());
    if (asked && !row.passCloses()) {
      return Optional.of(Attempt.failing(prefix + "passing it settles only the check itself"));
    }
    return Optional.of(attempt(done, prefix, settles(row, demand.effect()), finding, demand));
  }

  private static String prefix(String what, Event event, Doer by) {
    return what + " on " + event.when() + " by " + by.name() + ": ";
  }

  private Attempt attempt(
      Event event, String prefix, boolean asked, Finding finding, Demand demand) {
    if (!asked) {
      return Attempt.failing(prefix + "not what the finding calls for");
    }
    List<Objection> objections =
        evidence.judgement(event).map(Judgement::objections).orElse(List.of());
    Optional<String> before = text(objections, Objection.Code.NOT_BY_THEN::equals);
    if (before.isPresent()) {
      return Attempt.failing(prefix + before.get());
    }
    if (!event.when().date().certainlyNotBefore(finding.seen())) {
      return Attempt.failing(prefix + "not certainly after the finding of " + finding.seen());
    }
    Optional<String> forbidden = text(objections, Objection.Code.NOT_PERMITTED::equals);
    if (forbidden.isPresent()) {
      return Attempt.failing(prefix + forbidden.get());
    }
    // Where a row calls for no more than reducing the exposure, that is what settles it.
    Optional<String> why = text(objections, code -> code != Objection.Code.EXPOSURE_REDUCED_ONLY);
    if (why.isPresent()) {
      return Attempt.failing(prefix + "does not count: " + why.get());
    }
    if (evidence.latest().failedSince(event.when(), finding.id())) {
      return Attempt.failing(prefix + "a check failed since, or may have");
    }
    for (Check check : afterwards(demand)) {
      if (!evidence.latest().passedAfter(check, finding.id(), event.when())
          && !evidence.latest().inspectedAfter(check, event.when())) {
        return Attempt.failing(prefix + "no " + check + " passed certainly later");
      }
    }
    return Attempt.settling();
  }

  private static Optional<String> text(
      List<Objection> objections, Predicate<Objection.Code> codes) {
    return objections.stream()
        .filter(each -> codes.test(each.code()))
        .map(Objection::text)
        .findFirst();
  }

  private static boolean repairs(Event.Repaired done, Effect effect) {
    boolean advanced = done.repairClass() == RepairClass.ADVANCED;
    if (effect instanceof Effect.Repair repair) {
      return advanced || repair.repairClass() == RepairClass.BASIC;
    }
    if (effect instanceof Effect.ReplacePart replace) {
      return done.replaced() && (advanced || replace.repairClass() == RepairClass.BASIC);
    }
    return effect instanceof Effect.Retire && !effect.isFinal() && done.replaced() && advanced;
  }

  private boolean settles(CheckRow passed, Effect effect) {
    if (!(effect instanceof Effect.Evaluate evaluate) || !passed.passCloses()) {
      return false;
    }
    if (evaluate.check() == passed.check()) {
      return true;
    }
    // What an inspector's own check was asked for, an expert's evaluation settles as well.
    Task asked = tables.checks().row(evaluate.check()).task();
    return passed.check() == Check.EXPERT_EVALUATION
        && (asked == Task.ADVANCED_INSPECTION || asked == Task.LINER_INSPECTION);
  }

  private boolean settled(Event.Checked failed, FindingId finding) {
    for (Check later : Check.values()) {
      boolean stronger =
          later == Check.EXPERT_EVALUATION
              || tables.validity().stronger().outranks(later, failed.check());
      if (stronger && evidence.passedAfter(later, finding, failed.when())) {
        return true;
      }
    }
    return evidence.history().answering(finding).stream()
        .filter(Event.Repaired.class::isInstance)
        .filter(evidence::counts)
        .filter(done -> done.when().certainlyAfter(failed.when()))
        .anyMatch(done -> evidence.passedAfter(failed.check(), finding, done.when()));
  }
}
