package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.Element;
import org.ensemblerules.inspection.CriteriaTable;

/**
 * Which findings are still open. A finding closes only by what it calls for: done for it, not
 * before it, by somebody permitted, and followed, certainly later, by the checks that its row asks
 * for. Silence closes nothing, and neither does a look that saw nothing.
 */
public final class OpenFindings {
  private final AnatomyTable anatomy;
  private final DefectTable defects;
  private final CheckTable checks;
  private final PermissionTable permissions;
  private final CriteriaTable criteria;
  private final Validity validity;

  /**
   * Makes the function over its tables.
   *
   * @param anatomy which parts exist; not null
   * @param defects what defects call for; not null
   * @param checks what checks settle; not null
   * @param permissions who may do what; not null
   * @param criteria what inspections must look at; not null
   * @param validity whether checks and washes show anything; not null
   */
  public OpenFindings(
      AnatomyTable anatomy,
      DefectTable defects,
      CheckTable checks,
      PermissionTable permissions,
      CriteriaTable criteria,
      Validity validity) {
    this.anatomy = Objects.requireNonNull(anatomy, "anatomy");
    this.defects = Objects.requireNonNull(defects, "defects");
    this.checks = Objects.requireNonNull(checks, "checks");
    this.permissions = Objects.requireNonNull(permissions, "permissions");
    this.criteria = Objects.requireNonNull(criteria, "criteria");
    this.validity = Objects.requireNonNull(validity, "validity");
  }

  /**
   * Lists what is still open among the findings of a history, those that its checks and washes
   * themselves show included.
   *
   * @param element the element; not null
   * @param history what happened to it; not null
   * @param asOf the day asked about; what happened later does not count; not null
   * @return the open findings in the order of the history, once for each open demand; acceptable
   *     ones are not open
   */
  public List<OpenFinding> in(Element element, History history, LocalDate asOf) {
    return Stream.concat(
            history.events(Event.Found.class).stream().map(Event.Found::finding),
            validity.findings(element, history).stream())
        .flatMap(finding -> of(finding, element, history, asOf).stream())
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * Lists what is still open of one finding.
   *
   * @param finding the finding; not null
   * @param element the element; not null
   * @param history what happened to it; not null
   * @param asOf the day asked about; what happened later does not count; not null
   * @return the finding once for each open demand; empty if it is settled or acceptable
   */
  public List<OpenFinding> of(Finding finding, Element element, History history, LocalDate asOf) {
    Dealings dealings = dealings(element, history, asOf);
    ImmutableList.Builder<OpenFinding> open = ImmutableList.builder();
    for (Demand demand : Demand.of(finding, element, anatomy, defects)) {
      if (demand.effect().keepsOut()) {
        open(finding, demand, dealings).ifPresent(open::add);
      }
    }
    return open.build();
  }

  /**
   * Lists the failed checks of a history that nothing has settled since. A check that failed stands
   * until, certainly later, an expert's evaluation or a check that outranks it is passed, or a
   * repair is followed by a pass of the same check. A mere repeat settles nothing, and a failed
   * check that names no finding stands.
   *
   * @param element the element; not null
   * @param history what happened to it; not null
   * @param asOf the day asked about; not null
   * @return the failed checks in the order of the history; never null
   */
  public List<Event.Checked> standingFailures(Element element, History history, LocalDate asOf) {
    Dealings dealings = dealings(element, history, asOf);
    return history.events(Event.Checked.class).stream()
        .filter(done -> done.result() == CheckResult.FAILED)
        .filter(
            failed ->
                failed.answers().isEmpty()
                    || !failed.answers().stream().allMatch(id -> settled(failed, id, dealings)))
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * Tells whether an expert's evaluation was passed, certainly later than something, for every
   * finding that it names. What names no finding is never settled so.
   *
   * @param event what is to be settled; not null
   * @param element the element; not null
   * @param history what happened to it; not null
   * @param asOf the day asked about; not null
   * @return true if it was evaluated for all of them
   */
  public boolean evaluatedSince(Event event, Element element, History history, LocalDate asOf) {
    Dealings dealings = dealings(element, history, asOf);
    return !event.answers().isEmpty()
        && event.answers().stream()
            .allMatch(id -> dealings.passedAfter(Check.EXPERT_EVALUATION, id, event.when()));
  }

  private Dealings dealings(Element element, History history, LocalDate asOf) {
    return new Dealings(element, history, asOf, checks, permissions, criteria, validity);
  }

  private Optional<OpenFinding> open(Finding finding, Demand demand, Dealings dealings) {
    List<String> attempts = new ArrayList<>();
    for (Event event : dealings.history().answering(finding.id())) {
      Optional<Attempt> attempt = attempt(event, finding, demand, dealings);
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
  private Optional<Attempt> attempt(
      Event event, Finding finding, Demand demand, Dealings dealings) {
    Effect effect = demand.effect();
    if (event instanceof Event.Cleaned done && done.answers().contains(finding.id())) {
      boolean asked = effect instanceof Effect.Clean clean && clean.kind() == done.kind();
      Said said = new Said("cleaned " + done.kind(), done.by(), Task.of(done.kind()));
      return Optional.of(attempt(event, said, asked, finding, demand, dealings));
    }
    if (event instanceof Event.Repaired done && done.answers().contains(finding.id())) {
      String what = (done.replaced() ? "replaced " : "repaired ") + done.repairClass();
      Said said = new Said(what, done.by(), Task.of(done.repairClass()));
      return Optional.of(attempt(event, said, repairs(done, effect), finding, demand, dealings));
    }
    if (event instanceof Event.Checked done
        && done.answers().contains(finding.id())
        && done.result() == CheckResult.PASSED) {
      return attempt(done, finding, demand, dealings);
    }
    return Optional.empty();
  }

  /** A check that only follows the repair is no attempt of its own. */
  private Optional<Attempt> attempt(
      Event.Checked done, Finding finding, Demand demand, Dealings dealings) {
    CheckRow row = checks.row(done.check());
    boolean asked =
        demand.effect() instanceof Effect.Evaluate evaluate && evaluate.check() == done.check();
    if (!asked && afterwards(demand).contains(done.check())) {
      return Optional.empty();
    }
    Said said = new Said("passed " + done.check(), done.by(), row.task());
    if (asked && !row.passCloses()) {
      return Optional.of(
          Attempt.failing(said.prefix(done) + "passing it settles only the check itself"));
    }
    return Optional.of(
        attempt(done, said, settles(row, demand.effect()), finding, demand, dealings));
  }

  /** What an event says was done, by whom, as what task. */
  private record Said(String what, Doer by, Task task) {
    String prefix(Event event) {
      return what + " on " + event.when() + " by " + by.name() + ": ";
    }
  }

  private Attempt attempt(
      Event event, Said said, boolean asked, Finding finding, Demand demand, Dealings dealings) {
    String prefix = said.prefix(event);
    if (!asked) {
      return Attempt.failing(prefix + "not what the finding calls for");
    }
    if (!dealings.happened(event)) {
      return Attempt.failing(prefix + "not certainly by " + dealings.asOf());
    }
    if (!event.when().date().certainlyNotBefore(finding.seen())) {
      return Attempt.failing(prefix + "not certainly after the finding of " + finding.seen());
    }
    Permission permission = dealings.permission(said.by(), said.task(), event);
    if (!permission.granted()) {
      return Attempt.failing(prefix + permission.text());
    }
    Optional<String> why = showsNothing(event, dealings.element());
    if (why.isPresent()) {
      return Attempt.failing(prefix + "does not count: " + why.get());
    }
    if (failedSince(event, finding.id(), dealings)) {
      return Attempt.failing(prefix + "a check failed since, or may have");
    }
    for (Check check : afterwards(demand)) {
      if (!dealings.passedAfter(check, finding.id(), event.when())
          && !dealings.inspectedAfter(check, event.when())) {
        return Attempt.failing(prefix + "no " + check + " passed certainly later");
      }
    }
    return Attempt.settling();
  }

  private Optional<String> showsNothing(Event event, Element element) {
    if (event instanceof Event.Cleaned done) {
      return validity.whyNoCleaning(done, element);
    }
    return event instanceof Event.Checked done ? validity.whyVoid(done, element) : Optional.empty();
  }

  private static boolean failedSince(Event settling, FindingId finding, Dealings dealings) {
    return dealings.checked(finding, CheckResult.FAILED).stream()
        .anyMatch(failed -> !settling.when().certainlyAfter(failed.when()));
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
    Task asked = checks.row(evaluate.check()).task();
    return passed.check() == Check.EXPERT_EVALUATION
        && (asked == Task.ADVANCED_INSPECTION || asked == Task.LINER_INSPECTION);
  }

  private boolean settled(Event.Checked failed, FindingId finding, Dealings dealings) {
    for (Check later : Check.values()) {
      boolean stronger =
          later == Check.EXPERT_EVALUATION || validity.stronger().outranks(later, failed.check());
      if (stronger && dealings.passedAfter(later, finding, failed.when())) {
        return true;
      }
    }
    return dealings.history().answering(finding).stream()
        .filter(Event.Repaired.class::isInstance)
        .map(Event.Repaired.class::cast)
        .filter(dealings::happened)
        .filter(done -> done.when().certainlyAfter(failed.when()))
        .filter(done -> dealings.permission(done.by(), Task.of(done.repairClass()), done).granted())
        .anyMatch(done -> dealings.passedAfter(failed.check(), finding, done.when()));
  }
}
