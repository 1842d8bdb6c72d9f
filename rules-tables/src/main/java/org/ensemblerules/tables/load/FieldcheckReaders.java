package org.ensemblerules.tables.load;

import java.util.List;
import java.util.Optional;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.fieldcheck.CheckLimitRow;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.fieldcheck.Expected;
import org.ensemblerules.fieldcheck.StrongerRow;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;

/** Readers of the tables that say when hand checks count and what follows them. */
final class FieldcheckReaders {
  private enum Kind {
    YES,
    WITHIN,
    COUNT_AT_LEAST
  }

  /** The tables whose rows are read here. */
  static final List<TableType<?>> TYPES =
      List.of(
          new TableType<>(InspectionKinds.STRONGER_CHECKS, FieldcheckReaders::strongerChecks),
          new TableType<>(InspectionKinds.CONDITIONS, FieldcheckReaders::conditions),
          new TableType<>(InspectionKinds.CHECK_LIMITS, FieldcheckReaders::checkLimits));

  private FieldcheckReaders() {}

  static Optional<List<StrongerRow>> strongerChecks(FamilyHead head, ObjectCursor row) {
    Optional<Check> check = row.required("check", at -> at.enumOf(Check.class));
    Optional<Check> stronger = row.required("stronger", at -> at.enumOf(Check.class));
    return row.make(
        () ->
            List.of(
                new StrongerRow(head.provenance(), check.orElseThrow(), stronger.orElseThrow())));
  }

  static Optional<List<ConditionRow>> conditions(FamilyHead head, ObjectCursor row) {
    Optional<Check> check = row.required("check", at -> at.enumOf(Check.class));
    Optional<Condition> condition = row.required("condition", at -> at.enumOf(Condition.class));
    Optional<Expected> expected = row.required("expected", FieldcheckReaders::expected);
    Optional<Boolean> couldFailSound = row.required("couldFailSound", JsonCursor::bool);
    return row.make(
        () ->
            List.of(
                new ConditionRow(
                    head.provenance(),
                    check.orElseThrow(),
                    condition.orElseThrow(),
                    expected.orElseThrow(),
                    couldFailSound.orElseThrow())));
  }

  static Optional<List<CheckLimitRow>> checkLimits(FamilyHead head, ObjectCursor row) {
    Optional<Check> check = row.required("check", at -> at.enumOf(Check.class));
    Optional<Limit> limit = row.required("limit", LimitReader::limit);
    Optional<DefectKind> defect = row.required("defect", at -> at.enumOf(DefectKind.class));
    return row.make(
        () ->
            List.of(
                new CheckLimitRow(
                    head.provenance(),
                    check.orElseThrow(),
                    limit.orElseThrow(),
                    defect.orElseThrow())));
  }

  private static Optional<Expected> expected(JsonCursor at) {
    ObjectCursor expected = at.object();
    Optional<Kind> kind = expected.required("kind", value -> value.enumOf(Kind.class));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    return switch (kind.get()) {
      case YES -> expected.make(Expected.Yes::new);
      case WITHIN -> {
        Optional<Limit> limit = expected.required("limit", LimitReader::limit);
        yield expected.make(() -> new Expected.Within(limit.orElseThrow()));
      }
      case COUNT_AT_LEAST -> {
        Optional<Integer> count =
            expected.required("count", value -> value.integer(1, Integer.MAX_VALUE));
        yield expected.make(() -> new Expected.CountAtLeast(count.orElseThrow()));
      }
    };
  }
}
