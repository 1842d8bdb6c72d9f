package org.ensemblerules.history;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMultiset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BinaryOperator;
import java.util.function.Supplier;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.MarkedDate;

/**
 * Which findings are still open. A finding closes only by what it calls for: done for it, not
 * before it, by somebody permitted, and followed, certainly later, by the checks that its row asks
 * for. Silence closes nothing, and neither does a look that saw nothing.
 *
 * @since 0.1
 */
public final class OpenFindings {
  private final EvidenceTables tables;
  private final Evidence evidence;
  private final Judging judging;
  private final Map<Finding, ImmutableList<OpenFinding>> byFinding = new ConcurrentHashMap<>();
  private final Map<Asked, Attempts> attempts = new ConcurrentHashMap<>();
  private final Map<Latest.Answer, Optional<Moment>> repaired = new ConcurrentHashMap<>();
  private final Supplier<ImmutableList<LookEvent.Checked>> standing =
      Suppliers.memoize(this::failures);
  private final Supplier<ImmutableMultiset<FindingId>> named = Suppliers.memoize(this::names);
  private final Supplier<Map<FindingId, Moment>> failedFor =
      Suppliers.memoize(this::failuresByFinding);

  OpenFindings(EvidenceTables tables, Evidence evidence, Judging judging) {
    this.tables = tables;
    this.evidence = evidence;
    this.judging = judging;
  }

  /**
   * Lists what is still open among the findings of the history, those that its checks and washes
   * themselves show included.
   *
   * @return the open findings in the order of the history, once for each open demand; acceptable
   *     ones are not open
   */
  public List<OpenFinding> ofHistory() {
    ImmutableList.Builder<OpenFinding> open = ImmutableList.builder();
    for (LookEvent.Found found : evidence.history().events(LookEvent.Found.class)) {
      open.addAll(of(found.finding()));
    }
    for (Finding shown : evidence.shown().all()) {
      open.addAll(of(shown));
    }
    return open.build();
  }

  /**
   * Lists what is still open of one finding.
   *
   * @param finding the finding; not null
   * @return the finding once for each open demand; empty if it is settled or acceptable
   */
  public List<OpenFinding> of(Finding finding) {
    return asGraded(asTried(finding));
  }

  /** Looked for once for each finding, whoever asks. */
  private List<OpenFinding> asGraded(Finding finding) {
    return byFinding.computeIfAbsent(finding, this::lookFor);
  }

  /**
   * Returns a finding as it stands by what was tried for it. A place that nobody had tried when it
   * was found is one that held once the strength check that its row calls for is passed for it, so
   * that it counts and no failure of it stands; what is settled as it was found stays so.
   *
   * @param finding the finding; not null
   * @return the finding, as seen at that pass with the grade that it shows; else as it was given
   */
  public Finding asTried(Finding finding) {
    return StrengthTry.of(finding, tables, evidence)
        .filter(tried -> !asGraded(finding).isEmpty())
        .orElse(finding);
  }

  /** What was tried is said once of a finding, not again for each of its layers. */
  private ImmutableList<OpenFinding> lookFor(Finding finding) {
    ImmutableList.Builder<OpenFinding> open = ImmutableList.builder();
    Set<String> said = new HashSet<>();
    for (Demand demand :
        Demand.of(finding, evidence.element(), tables.anatomy(), tables.defects())) {
      if (demand.effect().keepsOut()) {
        Attempts tried = attempts.computeIfAbsent(Asked.of(finding, demand), this::attempts);
        if (!tried.settle(finding.seen())) {
          List<String> text = tried.text(finding.seen()).stream().filter(said::add).toList();
          Optional<Attempt> waiting = tried.waiting(finding.seen());
          List<Check> missing = waiting.map(Attempt::missing).orElse(List.of());
          open.add(
              new OpenFinding(
                  finding,
                  demand,
                  waiting.map(Attempt::when),
                  missing,
                  closedBy(demand, missing),
                  text));
        }
      }
    }
    return open.build();
  }

  /**
   * Tells what settled a finding, if the element was not inspected since. Whatever settles it, an
   * inspection that counts follows: one that is certainly later, or of the same day and says that
   * the work was its occasion, or is the very check that was passed.
   *
   * @param finding the finding; not null
   * @return what was done, when and by whom, in words, once for each demand that it settles and
   *     that no inspection has followed; never null
   */
  public List<String> settledUnseen(Finding finding) {
    Finding tried = asTried(finding);
    return Demand.of(tried, evidence.element(), tables.anatomy(), tables.defects()).stream()
        .filter(demand -> demand.effect().keepsOut())
        .map(demand -> attempts.computeIfAbsent(Asked.of(tried, demand), this::attempts))
        .flatMap(attempts -> attempts.settledUnseen(tried.seen()).stream())
        .distinct()
        .toList();
  }

  private Attempts attempts(Asked asked) {
    return new Attempts(
        evidence.history().answering(asked.finding()).stream()
            .flatMap(event -> judging.hold(event, asked, evidence).stream())
            .toList());
  }

  /**
   * Lists the decisions of inspectors that still bind: for which what was decided is not done
   * since, by somebody who may, and named as done for them.
   *
   * @return the decisions in the order of the history; never null
   */
  public List<OpenDecision> decisions() {
    ImmutableList.Builder<OpenDecision> open = ImmutableList.builder();
    for (DecisionEvent.InspectorDecided decided :
        evidence.history().events(DecisionEvent.InspectorDecided.class)) {
      if (decided.when().date().possiblyBy(evidence.asOf()) && !isWithdrawn(decided)) {
        open(decided).ifPresent(open::add);
      }
    }
    return open.build();
  }

  /** Only by whoever made it; of several of one name only what is certainly later is meant. */
  private boolean isWithdrawn(DecisionEvent.InspectorDecided decided) {
    boolean alone =
        evidence.history().events(DecisionEvent.InspectorDecided.class).stream()
                .filter(other -> other.id().equals(decided.id()))
                .count()
            == 1;
    return !decided.effect().isFinal()
        && evidence.counting(DecisionEvent.DecisionWithdrawn.class).stream()
            .filter(done -> done.decision().equals(decided.id()))
            .filter(done -> done.by().name().equals(decided.by().name()))
            .anyMatch(done -> done.when().follows(decided.when(), alone));
  }

  /** No row says what must follow, so that nothing is asked of the defect. */
  private Optional<OpenDecision> open(DecisionEvent.InspectorDecided decided) {
    Asked asked =
        new Asked(
            decided.id(),
            decided.site(),
            DefectKind.DAMAGED,
            decided.effect(),
            false,
            false,
            false,
            Set.of());
    Attempts tried = attempts.computeIfAbsent(asked, this::attempts);
    MarkedDate since = decided.when().date();
    return tried.settle(since)
        ? Optional.empty()
        : Optional.of(new OpenDecision(decided, tried.text(since)));
  }

  /**
   * Lists the failed checks that nothing has settled since. A check that failed stands until,
   * certainly later, an expert's evaluation or a check that outranks it is passed for it, or a
   * repair made for it is followed by a pass of the same check for it: each names the failure
   * itself, as {@link LookEvent.Checked#failure} has it. A mere repeat settles nothing. Findings
   * that a failed check names don't tell that it was made for no others.
   *
   * @return the failed checks in the order of the history; never null
   */
  public List<LookEvent.Checked> standingFailures() {
    return standing.get();
  }

  private ImmutableList<LookEvent.Checked> failures() {
    ImmutableList.Builder<LookEvent.Checked> standing = ImmutableList.builder();
    for (LookEvent.Checked done : evidence.history().events(LookEvent.Checked.class)) {
      if (done.result() == CheckResult.FAILED && !settled(done)) {
        standing.add(done);
      }
    }
    return standing.build();
  }

  /** The names of what failed; one that several bear says of none that it came after it. */
  private ImmutableMultiset<FindingId> names() {
    return evidence.history().events(LookEvent.Checked.class).stream()
        .filter(done -> done.result() == CheckResult.FAILED)
        .map(LookEvent.Checked::failure)
        .collect(ImmutableMultiset.toImmutableMultiset());
  }

  /** Of the failures for a finding that nothing has settled, what is certainly after all others. */
  private Map<FindingId, Moment> failuresByFinding() {
    Map<FindingId, Moment> last = new HashMap<>();
    for (LookEvent.Checked failed : standing.get()) {
      failed
          .answers()
          .forEach(id -> last.merge(id, failed.when(), BinaryOperator.maxBy(Moment.FIRST_CERTAIN)));
    }
    return last;
  }

  /** Whether a check that nothing has settled failed for a finding, unless certainly before. */
  boolean failedSince(Moment moment, FindingId finding) {
    return Optional.ofNullable(failedFor.get().get(finding))
        .map(failed -> !moment.certainlyAfter(failed))
        .orElse(false);
  }

  private static List<String> closedBy(Demand demand, List<Check> missing) {
    if (!missing.isEmpty()) {
      return missing.stream().map(check -> check + " passed certainly later").toList();
    }
    if (demand.effect().isFinal()) {
      return List.of();
    }
    List<String> steps = new ArrayList<>();
    steps.add(demand.effect().text());
    Asked.afterward(demand).forEach(check -> steps.add(check + " passed certainly later"));
    return steps;
  }

  private boolean settled(LookEvent.Checked failed) {
    FindingId failure = failed.failure();
    boolean alone = named.get().count(failure) == 1;
    for (Check later : Check.values()) {
      boolean stronger =
          later == Check.EXPERT_EVALUATION
              || tables.validity().stronger().outranks(later, failed.check());
      if (stronger && evidence.done().followsNamed(later, failure, failed.when(), alone)) {
        return true;
      }
    }
    return repaired
        .computeIfAbsent(new Latest.Answer(failure, failed.check()), this::lastRepaired)
        .map(when -> when.follows(failed.when(), alone))
        .orElse(false);
  }

  /** The last repair for a finding that counts and that a pass of the check followed. */
  private Optional<Moment> lastRepaired(Latest.Answer answer) {
    return evidence.history().answering(answer.finding()).stream()
        .filter(WorkEvent.Repaired.class::isInstance)
        .filter(evidence::counts)
        .map(Event::when)
        .filter(when -> evidence.done().passedAfterWork(answer.check(), answer.finding(), when))
        .max(Moment.LAST_CERTAIN);
  }
}
