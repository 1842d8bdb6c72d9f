package org.ensemblerules.effect;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Provenance;

/**
 * Says that an entity may not do a task, whatever other rows permit.
 *
 * @param provenance where the row comes from; not null
 * @param task the task; not null
 * @param entity who may not do it; not null
 * @param from from which day on; what was done before counts as it did; empty if ever
 * @since 0.1
 */
public record ForbidRow(
    Provenance provenance, Task task, EntityKind entity, Optional<LocalDate> from)
    implements ComparableRow<ForbidRow> {
  /** Checks for nulls. */
  public ForbidRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(task, "task");
    Objects.requireNonNull(entity, "entity");
    Objects.requireNonNull(from, "from");
  }

  @Override
  public List<String> canonical() {
    return List.of(
        "forbidden", task.name(), entity.name(), from.map(LocalDate::toString).orElse(""));
  }

  @Override
  public List<String> topic() {
    return List.of(task.name(), entity.name());
  }

  @Override
  public ComparedFields compareFields(ForbidRow other) {
    return ComparedFields.on(task == other.task && entity == other.entity)
        .with(
            "from",
            Comparison.lessIsStricter(
                from.orElse(LocalDate.MIN), other.from.orElse(LocalDate.MIN)));
  }

  @Override
  public Comparison asOneMore() {
    return Comparison.STRICTER;
  }
}
