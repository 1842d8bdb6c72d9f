package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.DefectTable;
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
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.Element;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.Standing;

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

  /**
   * Makes the function over its tables.
   *
   * @param anatomy which parts exist; not null
   * @param defects what defects call for; not null
   * @param checks what checks settle; not null
   * @param permissions who may do what; not null
   * @param criteria what inspections must look at; not null
   */
  public OpenFindings(
      AnatomyTable anatomy,
      DefectTable defects,
      CheckTable checks,
      PermissionTable permissions,
      CriteriaTable criteria) {
    this.anatomy = Objects.requireNonNull(anatomy, "anatomy");
    this.defects = Objects.requireNonNull(defects, "defects");
    this.checks = Objects.requireNonNull(checks, "checks");
    this.permissions = Objects.requireNonNull(permissions, "permissions");
    this.criteria = Objects.requireNonNull(criteria, "criteria");
  }

  /**
   * Lists what is still open among the findings of a history.
   *
   * @param element the element; not null
   * @param history what happened to it; not null
   * @param asOf the day asked about; what happened later does not count; not null
   * @return the open findings in the order of the history, once for each open demand; acceptable
   *     ones are not open
   */
  public List<OpenFinding> in(Element element, History history, LocalDate asOf) {
    ImmutableList.Builder<OpenFinding> open = ImmutableList.builder();
    for (Event.Found found : history.events(Event.Found.class)) {
      open.addAll(of(found.finding(), element, history, asOf));
    }
    return open.build();
  }

  /**
   * Lists what is still open of one finding.
   *
   * @param finding the finding; not null
   * @param element the element; not null
   * @param history what happened to it; not null
   * @param asOf the day asked about; not null
   * @return the finding once for each open demand; empty if it is settled or acceptable
   */
  public List<OpenFinding> of(Finding finding, Element element, History history, LocalDate asOf) {
    List<OpenFinding> open = new ArrayList<>();
    for (Demand demand : Demand.of(finding, element, anatomy, defects)) {
      if (!demand.effect().keepsOut()) {
        continue;
      }
      Tried tried = new Tried(finding, demand, element, history, asOf);
      if (!tried.settled()) {
        open.add(new OpenFinding(finding, demand, closedBy(demand), tried.attempts));
      }
    }
    return open;
  }

  private List<String> closedBy(Demand demand) {
    if (demand.effect().isFinal()) {
      return List.of();
    }
    List<String> steps = new ArrayList<>();
    steps.add(demand.effect().text());
    afterwards(demand).forEach(check -> steps.add(check + " passed certainly later"));
    return steps;
  }

  private static Set<Check> afterwards(Demand demand) {
    return demand.row().map(DefectRow::afterwards).orElse(Set.of());
  }

  /** One demand held against what was done for its finding. */
  private final class Tried {
    private final Finding finding;
    private final Demand demand;
    private final Element element;
    private final History history;
    private final LocalDate asOf;
    private final List<String> attempts = new ArrayList<>();

    Tried(Finding finding, Demand demand, Element element, History history, LocalDate asOf) {
      this.finding = finding;
      this.demand = demand;
      this.element = element;
      this.history = history;
      this.asOf = asOf;
    }

    boolean settled() {
      for (Event event : history.events()) {
        Optional<String> whyNot = whyNot(event);
        if (whyNot == null) {
          continue;
        }
        if (whyNot.isEmpty()) {
          return true;
        }
        attempts.add(whyNot.get());
      }
      return false;
    }

    /** Null if the event was not meant to settle the demand; empty if it does. */
    @org.jspecify.annotations.Nullable
    private Optional<String> whyNot(Event event) {
      Effect effect = demand.effect();
      if (event instanceof Event.Cleaned cleaned && cleaned.answers().contains(finding.id())) {
        boolean asked = effect instanceof Effect.Clean clean && clean.kind() == cleaned.kind();
        Task task = new Effect.Clean(cleaned.kind(), Scope.ELEMENT).tasks().get(0);
        return whyNot(event, "cleaned " + cleaned.kind(), asked, cleaned.by(), task);
      }
      if (event instanceof Event.Repaired done && done.answers().contains(finding.id())) {
        Task task =
            done.repairClass() == RepairClass.BASIC ? Task.BASIC_REPAIR : Task.ADVANCED_REPAIR;
        String what = (done.replaced() ? "replaced " : "repaired ") + done.repairClass();
        return whyNot(event, what, repairs(effect, done), done.by(), task);
      }
      if (event instanceof Event.Checked done
          && done.answers().contains(finding.id())
          && done.result() == CheckResult.PASSED) {
        CheckRow row = checks.row(done.check());
        return whyNot(
            event, "passed " + done.check(), settles(effect, row), done.by(), row.task());
      }
      return null;
    }

    private boolean settles(Effect effect, CheckRow passed) {
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

    private Optional<String> whyNot(Event event, String what, boolean asked, Doer by, Task task) {
      String prefix = what + " on " + event.when() + " by " + by.name() + ": ";
      if (!asked) {
        return Optional.of(prefix + "not what the finding calls for");
      }
      if (happensAfter(event, asOf)) {
        return Optional.of(prefix + "not certainly by " + asOf);
      }
      if (!event.when().date().certainlyNotBefore(finding.seen())) {
        return Optional.of(prefix + "not certainly after the finding of " + finding.seen());
      }
      Permission permission = permissions.mayPerform(by, task, element, event.when().date());
      if (!permission.granted()) {
        return Optional.of(prefix + permission.text());
      }
      if (failedSince(event)) {
        return Optional.of(prefix + "a check failed since, or may have");
      }
      for (Check check : afterwards(demand)) {
        if (!passedAfter(check, event)) {
          return Optional.of(prefix + "no " + check + " passed certainly later");
        }
      }
      return Optional.empty();
    }

    private boolean failedSince(Event settling) {
      return history.events(Event.Checked.class).stream()
          .filter(done -> done.answers().contains(finding.id()))
          .filter(done -> done.result() == CheckResult.FAILED)
          .anyMatch(done -> !settling.when().certainlyAfter(done.when()));
    }

    private boolean passedAfter(Check check, Event settling) {
      boolean checked =
          history.events(Event.Checked.class).stream()
              .filter(done -> done.check() == check && done.result() == CheckResult.PASSED)
              .filter(done -> done.answers().contains(finding.id()))
              .filter(done -> done.when().certainlyAfter(settling.when()))
              .filter(done -> !happensAfter(done, asOf))
              .anyMatch(
                  done ->
                      permissions
                          .mayPerform(
                              done.by(), checks.row(check).task(), element, done.when().date())
                          .granted());
      return checked
          || history.events(Event.Inspected.class).stream()
              .filter(done -> done.inspection().kind().check() == check)
              .filter(done -> done.when().certainlyAfter(settling.when()))
              .filter(done -> !happensAfter(done, asOf))
              .anyMatch(
                  done ->
                      Standing.of(done.inspection(), element, criteria, permissions).counts());
    }
  }

  private static boolean repairs(Effect effect, Event.Repaired done) {
    boolean advanced = done.repairClass() == RepairClass.ADVANCED;
    if (effect instanceof Effect.Repair repair) {
      return advanced || repair.repairClass() == RepairClass.BASIC;
    }
    if (effect instanceof Effect.ReplacePart replace) {
      return done.replaced() && (advanced || replace.repairClass() == RepairClass.BASIC);
    }
    return effect instanceof Effect.Retire && !effect.isFinal() && done.replaced() && advanced;
  }

  private static boolean happensAfter(Event event, LocalDate asOf) {
    return event.when().date().latest().map(day -> day.isAfter(asOf)).orElse(true);
  }

  /**
   * Lists the failed checks of a history that nothing has settled since: a check that failed stands
   * until, certainly later, an expert's evaluation is passed or a repair is followed by a pass of
   * the same check. A mere repeat settles nothing.
   *
   * @param element the element; not null
   * @param history what happened to it; not null
   * @param asOf the day asked about; not null
   * @return the failed checks in the order of the history; never null
   */
  public List<Event.Checked> standingFailures(Element element, History history, LocalDate asOf) {
    return history.events(Event.Checked.class).stream()
        .filter(done -> done.result() == CheckResult.FAILED)
        .filter(failed -> !failureSettled(failed, element, history, asOf))
        .collect(ImmutableList.toImmutableList());
  }

  private boolean failureSettled(
      Event.Checked failed, Element element, History history, LocalDate asOf) {
    return !failed.answers().isEmpty()
        && failed.answers().stream()
            .allMatch(id -> failureSettled(id, failed, element, history, asOf));
  }

  private boolean failureSettled(
      FindingId id, Event.Checked failed, Element element, History history, LocalDate asOf) {
    if (passed(Check.EXPERT_EVALUATION, id, failed.when(), element, history, asOf)) {
      return true;
    }
    return history.events(Event.Repaired.class).stream()
        .filter(done -> done.answers().contains(id) && done.when().certainlyAfter(failed.when()))
        .filter(done -> !happensAfter(done, asOf))
        .filter(
            done ->
                permissions
                    .mayPerform(
                        done.by(),
                        done.repairClass() == RepairClass.BASIC
                            ? Task.BASIC_REPAIR
                            : Task.ADVANCED_REPAIR,
                        element,
                        done.when().date())
                    .granted())
        .anyMatch(done -> passed(failed.check(), id, done.when(), element, history, asOf));
  }

  private boolean passed(
      Check check, FindingId id, When after, Element element, History history, LocalDate asOf) {
    return history.events(Event.Checked.class).stream()
        .filter(done -> done.check() == check && done.result() == CheckResult.PASSED)
        .filter(done -> done.answers().contains(id) && done.when().certainlyAfter(after))
        .filter(done -> !happensAfter(done, asOf))
        .anyMatch(
            done ->
                permissions
                    .mayPerform(done.by(), checks.row(check).task(), element, done.when().date())
                    .granted());
  }
}
