package org.ensemblerules.verdict;

import java.util.List;
import java.util.Optional;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.effect.Task;

/** Who may carry out an effect. */
final class Doers {
  private Doers() {}

  static List<PermittedDoer> of(CaseFile file, Effect effect) {
    return task(file, effect).map(file.tables().permissions()::permitted).orElse(List.of()).stream()
        .map(PermissionRow::doer)
        .toList();
  }

  static Optional<Task> task(CaseFile file, Effect effect) {
    return effect
        .task()
        .or(
            () ->
                effect instanceof Effect.Evaluate evaluate
                    ? Optional.of(file.tables().checks().row(evaluate.check()).task())
                    : Optional.empty());
  }
}
