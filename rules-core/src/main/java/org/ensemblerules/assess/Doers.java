package org.ensemblerules.assess;

import com.google.common.collect.Lists;
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
    Optional<Task> task = task(file, effect);
    return task.isEmpty()
        ? List.of()
        : Lists.transform(file.tables().permissions().permitted(task.get()), PermissionRow::doer);
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
