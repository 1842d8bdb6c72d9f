package org.ensemblerules.assess;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/**
 * Is a task overdue, or does something on record call for it now? Inspections by the table of
 * intervals are asked about by {@link CurrencyQuestion}, which knows no exemption; age by {@link
 * AgeQuestion}.
 */
final class TaskQuestion {
  private TaskQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    boolean neverReturns = CareQuestion.neverReturns(file);
    for (Due due : file.due().ofTasksThemselves()) {
      if (due.row().orElse(null) instanceof TaskRow row
          && isDue(row.timing(), due, file.asOf())
          && !(neverReturns && row.timing() instanceof Timing.After)) {
        reasons.accept(
            Reasons.of(
                ReasonKind.TASK_DUE,
                Optional.of(row),
                Site.of(Part.WHOLE_ELEMENT),
                Optional.empty(),
                due.task()
                    + ": "
                    + due.reason()
                    + due.by().map(day -> "; due by " + day).orElse(""),
                effect(row.doneBy()),
                List.of()));
      }
    }
  }

  private static boolean isDue(Timing timing, Due due, LocalDate asOf) {
    if (timing instanceof Timing.ByInterval) {
      return false;
    }
    if (timing instanceof Timing.After after && after.withinDays().isEmpty()) {
      // What is due at once is done before the element is used again, the same day too; whatever
      // may have called for it has.
      return due.by().map(day -> !asOf.isBefore(day)).orElse(true);
    }
    return due.isOverdue(asOf);
  }

  private static Effect effect(Discharge doneBy) {
    if (doneBy instanceof Discharge.Cleaned cleaned) {
      return new Effect.Clean(cleaned.kind(), Scope.ELEMENT);
    }
    if (doneBy instanceof Discharge.CleanedAs cleaned) {
      return new Effect.Clean(cleaned.least(), Scope.ELEMENT);
    }
    return new Effect.Evaluate(check(doneBy), Scope.ELEMENT);
  }

  private static Check check(Discharge doneBy) {
    if (doneBy instanceof Discharge.Inspected inspected) {
      return inspected.kind().check();
    }
    return doneBy instanceof Discharge.InspectedBy inspected
        ? inspected.least().check()
        : ((Discharge.Checked) doneBy).check();
  }
}
