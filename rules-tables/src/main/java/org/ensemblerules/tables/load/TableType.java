package org.ensemblerules.tables.load;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Row;

/**
 * A table that editions have: its name in files, the subject it belongs to and how its rows are
 * read.
 *
 * @param <R> its rows
 */
record TableType<R extends Row>(String name, Subject subject, FamilyReader<R> reader) {
  static final TableType<AnatomyRow> ANATOMY =
      new TableType<>("anatomy", Subject.PRODUCT, GearReaders::anatomy);
  static final TableType<CriterionRow> CRITERIA =
      new TableType<>("criteria", Subject.INSPECTION, InspectionReaders::criteria);
  static final TableType<IntervalRow> INTERVALS =
      new TableType<>("intervals", Subject.INSPECTION, InspectionReaders::intervals);
  static final TableType<DefectRow> DEFECTS =
      new TableType<>("defects", Subject.INSPECTION, DefectReaders::defects);
  static final TableType<CheckRow> CHECKS =
      new TableType<>("checks", Subject.INSPECTION, EffectReaders::checks);
  static final TableType<PermissionRow> PERMISSIONS =
      new TableType<>("permissions", Subject.INSPECTION, EffectReaders::permissions);
  static final TableType<CautionRow> CAUTIONS =
      new TableType<>("cautions", Subject.INSPECTION, EffectReaders::cautions);
  static final TableType<AgeLimitRow> AGE_LIMITS =
      new TableType<>("age-limits", Subject.AGE, GearReaders::ageLimits);

  private static final Map<String, TableType<?>> BY_NAME = byName();

  private static Map<String, TableType<?>> byName() {
    Map<String, TableType<?>> types = new LinkedHashMap<>();
    List.of(ANATOMY, CRITERIA, INTERVALS, DEFECTS, CHECKS, PERMISSIONS, CAUTIONS, AGE_LIMITS)
        .forEach(type -> types.put(type.name(), type));
    return Collections.unmodifiableMap(types);
  }

  /** Returns the types by their names in files. */
  static Map<String, TableType<?>> named() {
    return BY_NAME;
  }

  @Override
  public String toString() {
    return name;
  }
}
