package org.ensemblerules.assess;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Task;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;

/** What a verdict names that rows speak of: checks, tasks that somebody must do, cautions. */
final class TracedAnswer {
  private final CaseFile file;
  // Whether an alteration was looked at is asked of every record.
  private final Set<Check> checks = EnumSet.of(Check.EXPERT_EVALUATION);
  private final Set<Task> tasks = EnumSet.noneOf(Task.class);
  private final Set<RowKey> cautions = new HashSet<>();

  TracedAnswer(CaseFile file, Verdict verdict, TracedRecord record) {
    this.file = file;
    checks.addAll(record.checks());
    for (Finding found : file.findings()) {
      // Before and after it was tried.
      called(found);
      found.oncePassed(found.seen()).ifPresent(this::called);
    }
    for (TaskRow row : file.tables().tasks().rows(file.element())) {
      if (row.doneBy() instanceof Discharge.Checked checked) {
        checks.add(checked.check());
      }
    }
    for (Action action : verdict.actions()) {
      checks.addAll(action.afterward());
      asked(action.effect());
    }
    if (verdict.wayBack() instanceof WayBack.Steps way) {
      way.steps().forEach(step -> asked(step.effect()));
    }
    verdict.cautions().forEach(caution -> cautions.add(caution.row()));
  }

  private void called(Finding finding) {
    for (Demand demand :
        Demand.of(finding, file.element(), file.tables().anatomy(), file.tables().defects())) {
      check(demand.effect());
      demand.row().ifPresent(row -> checks.addAll(row.afterward()));
    }
  }

  private void asked(Effect effect) {
    check(effect);
    Doers.task(file, effect).ifPresent(tasks::add);
  }

  private void check(Effect effect) {
    if (effect instanceof Effect.Evaluate evaluate) {
      checks.add(evaluate.check());
      checks.add(file.tables().checks().row(evaluate.check()).lastWord());
    }
  }

  boolean names(Check check) {
    return checks.contains(check);
  }

  boolean asksWho(Task task) {
    return tasks.contains(task);
  }

  boolean warns(RowKey key) {
    return cautions.contains(key);
  }
}
