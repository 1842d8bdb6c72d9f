package org.ensemblerules.tables.load;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.effect.Task;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.inspection.GradeRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.record.RetentionPolicy;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.record.RetentionStart;
import org.ensemblerules.strength.UsedGearRow;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;

/** Readers of the rows that only overlays have. */
final class PolicyReaders {
  private enum UsedGear {
    NEW_REQUIREMENT,
    SHARE_OF_NEW_VALUE
  }

  private PolicyReaders() {}

  static Optional<List<ForbidRow>> forbidden(
      FamilyHead head, ObjectCursor row, Optional<LocalDate> from) {
    Optional<Task> task = row.required("task", at -> at.enumOf(Task.class));
    Optional<Set<EntityKind>> entities = row.required("entities", at -> at.setOf(EntityKind.class));
    return row.make(
        () ->
            entities.orElseThrow().stream()
                .map(
                    entity ->
                        new ForbidRow(head.provenance(entity), task.orElseThrow(), entity, from))
                .toList());
  }

  static Optional<List<UsedGearRow>> usedGear(FamilyHead head, ObjectCursor row) {
    Optional<UsedGear> policy = row.required("policy", at -> at.enumOf(UsedGear.class));
    // Which fields there are depends on the policy.
    Optional<BigDecimal> percent =
        policy.filter(UsedGear.SHARE_OF_NEW_VALUE::equals).isPresent()
            ? row.required("percent", JsonCursor::decimalOrText)
            : Optional.empty();
    return policy.flatMap(
        known -> row.make(() -> List.of(new UsedGearRow(head.provenance(), percent))));
  }

  static Optional<List<GradeRow>> evidence(
      FamilyHead head, ObjectCursor row, Optional<LocalDate> from) {
    Optional<Set<InspectionKind>> kinds =
        row.required("inspections", at -> at.setOf(InspectionKind.class));
    Optional<EvidenceGrade> least =
        row.required(
            "least", at -> at.named(Map.of(EvidenceGrade.ITEMIZED.name(), EvidenceGrade.ITEMIZED)));
    return row.make(
        () ->
            kinds.orElseThrow().stream()
                .map(kind -> new GradeRow(head.provenance(kind), kind, least.orElseThrow(), from))
                .toList());
  }

  static Optional<List<RetentionRow>> retention(FamilyHead head, ObjectCursor row) {
    Optional<Integer> years = row.required("years", at -> at.integer(1, Integer.MAX_VALUE));
    Optional<RetentionStart> start = row.required("start", at -> at.enumOf(RetentionStart.class));
    return row.make(
        () ->
            List.of(
                new RetentionRow(
                    head.provenance(),
                    new RetentionPolicy(years.orElseThrow(), start.orElseThrow()))));
  }
}
