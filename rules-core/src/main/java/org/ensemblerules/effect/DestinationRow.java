package org.ensemblerules.effect;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Provenance;

/**
 * Says where an element goes for a task, if a kind of doer is to do it.
 *
 * @param provenance where the row comes from; not null
 * @param task the task; not null
 * @param entity who does it; not null
 * @param destination where the element goes for it; not null
 * @since 0.1
 */
public record DestinationRow(
    Provenance provenance, Task task, EntityKind entity, Destination destination)
    implements ComparableRow<DestinationRow> {
  /** Checks for nulls. */
  public DestinationRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(task, "task");
    Objects.requireNonNull(entity, "entity");
    Objects.requireNonNull(destination, "destination");
  }

  @Override
  public List<String> canonical() {
    return List.of(task.name(), entity.name(), destination.name());
  }

  @Override
  public List<String> topic() {
    return List.of(task.name(), entity.name());
  }

  @Override
  public ComparedFields compareFields(DestinationRow other) {
    return ComparedFields.on(canonical().equals(other.canonical()));
  }
}
