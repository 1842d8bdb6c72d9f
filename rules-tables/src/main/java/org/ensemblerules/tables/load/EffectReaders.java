package org.ensemblerules.tables.load;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.DestinationRow;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;

/** Readers of the tables that say who carries effects out and with what caution. */
final class EffectReaders {
  /** The tables whose rows are read here. */
  static final List<TableType<?>> TYPES =
      List.of(
          new TableType<>(InspectionKinds.CHECKS, EffectReaders::checks),
          new TableType<>(InspectionKinds.DESTINATIONS, EffectReaders::destinations),
          new TableType<>(InspectionKinds.PERMISSIONS, EffectReaders::permissions),
          new TableType<>(InspectionKinds.CAUTIONS, EffectReaders::cautions));

  private EffectReaders() {}

  static Optional<List<CheckRow>> checks(FamilyHead head, ObjectCursor row) {
    Optional<Check> check = row.required("check", at -> at.enumOf(Check.class));
    Optional<Task> task = row.required("task", at -> at.enumOf(Task.class));
    Optional<Boolean> passCloses = row.required("passCloses", JsonCursor::bool);
    Optional<Check> handsOnTo = row.optional("handsOnTo", at -> at.enumOf(Check.class));
    Optional<Boolean> byLook = row.optional("byLook", JsonCursor::bool);
    Optional<String> shown = row.required("shown", JsonCursor::text);
    return row.make(
        () ->
            List.of(
                new CheckRow(
                    head.provenance(),
                    check.orElseThrow(),
                    task.orElseThrow(),
                    passCloses.orElseThrow(),
                    handsOnTo,
                    byLook.orElse(false),
                    shown.orElseThrow())));
  }

  static Optional<List<PermissionRow>> permissions(FamilyHead head, ObjectCursor row) {
    Optional<Task> task = row.required("task", at -> at.enumOf(Task.class));
    Optional<Set<EntityKind>> entities = row.required("entities", at -> at.setOf(EntityKind.class));
    Optional<CredentialScope> needs = row.optional("needs", at -> at.enumOf(CredentialScope.class));
    return row.make(
        () ->
            entities.orElseThrow().stream()
                .map(
                    entity ->
                        new PermissionRow(
                            head.provenance(entity), task.orElseThrow(), entity, needs))
                .toList());
  }

  static Optional<List<DestinationRow>> destinations(FamilyHead head, ObjectCursor row) {
    Optional<Set<Task>> tasks = row.required("tasks", at -> at.setOf(Task.class));
    Optional<Set<EntityKind>> entities = row.required("entities", at -> at.setOf(EntityKind.class));
    Optional<Destination> destination =
        row.required("destination", at -> at.enumOf(Destination.class));
    return row.make(
        () ->
            tasks.orElseThrow().stream()
                .flatMap(
                    task ->
                        entities.orElseThrow().stream()
                            .map(
                                entity ->
                                    new DestinationRow(
                                        head.provenance(task, entity),
                                        task,
                                        entity,
                                        destination.orElseThrow())))
                .toList());
  }

  static Optional<List<CautionRow>> cautions(FamilyHead head, ObjectCursor row) {
    Optional<Set<ElementKind>> elements =
        row.optional("elements", at -> at.setOf(ElementKind.class));
    Optional<Set<Use>> uses = row.optional("uses", at -> at.setOf(Use.class));
    Optional<Set<EffectKind>> effects = row.optional("effects", at -> at.setOf(EffectKind.class));
    Optional<String> text = row.required("text", JsonCursor::text);
    return row.make(
        () ->
            List.of(
                new CautionRow(
                    head.provenance(),
                    elements.orElse(Set.of()),
                    uses.orElse(Set.of()),
                    effects.orElse(Set.of()),
                    text.orElseThrow())));
  }
}
