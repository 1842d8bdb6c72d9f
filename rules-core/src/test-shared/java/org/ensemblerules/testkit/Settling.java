package org.ensemblerules.testkit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.WorkEvent;

/** Does for a finding what it calls for, by permitted people, one thing a day. */
public final class Settling {
  private final Set<FindingId> answers;
  private final List<Event> events = new ArrayList<>();
  private LocalDate day;

  private Settling(FindingId finding, LocalDate from) {
    this.answers = Set.of(finding);
    this.day = from;
  }

  /**
   * Returns the events that settle a finding.
   *
   * @param finding the finding's name
   * @param effect what it calls for; not a note, and not final
   * @param afterward the checks that must be passed afterward
   * @param from the day of the first event
   * @return the events, each on the day after the one before
   */
  public static List<Event> of(
      FindingId finding, Effect effect, Set<Check> afterward, LocalDate from) {
    Settling settling = new Settling(finding, from);
    settling.carryOut(effect);
    new TreeSet<>(afterward).forEach(settling::pass);
    return settling.events;
  }

  private void carryOut(Effect effect) {
    if (effect instanceof Effect.Clean clean) {
      Task task = Task.of(clean.kind());
      events.add(WorkEvent.Cleaned.whole(next(), clean.kind(), People.permitted(task), answers));
    } else if (effect instanceof Effect.Repair repair) {
      repair(repair.repairClass(), false);
    } else if (effect instanceof Effect.ReplacePart replace) {
      repair(replace.repairClass(), true);
    } else if (effect instanceof Effect.Retire) {
      repair(RepairClass.ADVANCED, true);
    } else if (effect instanceof Effect.Evaluate evaluate) {
      pass(evaluate.check());
      if (!FrozenRules.rules().tables().checks().row(evaluate.check()).passCloses()) {
        pass(Check.EXPERT_EVALUATION);
      }
      if (evaluate.check() == Check.INCIDENT_RELEASE) {
        // What was kept as it was found is cleaned before it is inspected.
        events.add(
            WorkEvent.Cleaned.whole(
                next(), CleaningKind.ADVANCED, People.permitted(Task.ADVANCED_CLEANING), Set.of()));
      }
    }
  }

  private void repair(RepairClass repairClass, boolean replaced) {
    Task task = Task.of(repairClass);
    events.add(
        new WorkEvent.Repaired(next(), repairClass, replaced, People.permitted(task), answers));
  }

  private void pass(Check check) {
    Task task = FrozenRules.rules().tables().checks().row(check).task();
    events.add(
        new LookEvent.Checked(next(), check, CheckResult.PASSED, People.permitted(task), answers));
  }

  private Moment next() {
    Moment when = Moment.on(MarkedDate.of(day));
    day = day.plusDays(1);
    return when;
  }
}
