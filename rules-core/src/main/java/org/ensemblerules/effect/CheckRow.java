package org.ensemblerules.effect;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * Says of a check who does it, what must be shown, and what passing it settles.
 *
 * @param provenance where the row comes from; not null
 * @param check the check; not null
 * @param task the task that its doer must be permitted to do; not null
 * @param passCloses whether passing it settles the finding it was asked for; if not, only the check
 *     itself is passed and the finding stays open
 * @param shown what must be shown, in words; not null
 */
public record CheckRow(
    Provenance provenance, Check check, Task task, boolean passCloses, String shown)
    implements ComparableRow<CheckRow> {
  /**
   * Checks the text.
   *
   * @throws InvalidValueException if the text is blank or longer than 400 characters
   */
  public CheckRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(check, "check");
    Objects.requireNonNull(task, "task");
    InvalidValueException.requireText("CheckRow.shown", shown, 400);
  }

  @Override
  public List<String> canonical() {
    return List.of(check.name(), task.name(), Boolean.toString(passCloses), shown);
  }

  @Override
  public List<String> topic() {
    return List.of(check.name());
  }

  @Override
  public List<String> words() {
    return List.of(shown);
  }

  @Override
  public ComparedFields compareFields(CheckRow other) {
    return ComparedFields.on(check == other.check && task == other.task)
        .with("passCloses", Comparison.lessIsStricter(passCloses, other.passCloses));
  }
}
