package org.ensemblerules.effect;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Provenance;

/**
 * Says that an entity may do a task, and what credential it needs.
 *
 * @param provenance where the row comes from; not null
 * @param task the task; not null
 * @param entity who may do it; not null
 * @param needs the credential needed; empty if none
 * @since 0.1
 */
public record PermissionRow(
    Provenance provenance, Task task, EntityKind entity, Optional<CredentialScope> needs)
    implements ComparableRow<PermissionRow> {
  /** Checks for nulls. */
  public PermissionRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(task, "task");
    Objects.requireNonNull(entity, "entity");
    Objects.requireNonNull(needs, "needs");
  }

  /**
   * Returns whom the row permits.
   *
   * @return the kind of doer with the credential needed; never null
   */
  public PermittedDoer doer() {
    return new PermittedDoer(entity, needs);
  }

  @Override
  public List<String> canonical() {
    return List.of(task.name(), entity.name(), needs.map(Enum::name).orElse(""));
  }

  @Override
  public List<String> topic() {
    return List.of(task.name(), entity.name());
  }

  @Override
  public ComparedFields compareFields(PermissionRow other) {
    return ComparedFields.on(task == other.task && entity == other.entity)
        .with("needs", Comparison.anyIsStricter(needs, other.needs));
  }

  @Override
  public Comparison asOneMore() {
    return Comparison.MILDER;
  }
}
