package org.ensemblerules.ruleset;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Maps;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.source.Row;

/**
 * Every kind of table. Each is declared once, in {@link InspectionKinds}, {@link CareKinds}, {@link
 * StrengthKinds} or {@link RecordKinds}, and stands here after the one that it is compiled by.
 *
 * @since 0.1
 */
public final class TableKinds {
  private static final ImmutableList<TableKind<?, ?>> ALL =
      ImmutableList.of(
          InspectionKinds.ANATOMY,
          InspectionKinds.PERMISSIONS,
          InspectionKinds.FORBIDDEN,
          InspectionKinds.CHECKS,
          InspectionKinds.DESTINATIONS,
          InspectionKinds.CRITERIA,
          InspectionKinds.DEFECTS,
          InspectionKinds.INTERVALS,
          InspectionKinds.RETURNS,
          InspectionKinds.AGE_LIMITS,
          InspectionKinds.CAUTIONS,
          InspectionKinds.STRONGER_CHECKS,
          InspectionKinds.CONDITIONS,
          InspectionKinds.CHECK_LIMITS,
          CareKinds.CARE_LIMITS,
          CareKinds.MODEL_CARE_LIMITS,
          CareKinds.WASH_BOUNDS,
          CareKinds.CLEANING_RESULTS,
          CareKinds.CARE_ROUTES,
          CareKinds.REPAIR_LIMITS,
          InspectionKinds.TASKS,
          StrengthKinds.METHODS,
          StrengthKinds.DISCARDS,
          StrengthKinds.HYDROSTATIC,
          StrengthKinds.SMALL_SAMPLES,
          StrengthKinds.REQUIREMENTS,
          RecordKinds.RECORD_ITEMS,
          RecordKinds.DISPOSAL_ROUTES,
          RecordKinds.CUSTODY_STEPS,
          RecordKinds.PFAS_LAWS,
          RecordKinds.ADOPTIONS,
          StrengthKinds.USED_GEAR,
          RecordKinds.RETENTION,
          InspectionKinds.GRADES);
  private static final Map<Class<? extends Row>, TableKind<?, ?>> BY_ROW =
      Maps.uniqueIndex(ALL, TableKind::rowType);
  private static final Map<String, TableKind<?, ?>> BY_NAME =
      Maps.uniqueIndex(ALL, TableKind::name);

  private TableKinds() {}

  /**
   * Lists every kind of table.
   *
   * @return the kinds, each after the one that it is compiled by; never null
   */
  public static List<TableKind<?, ?>> all() {
    return ALL;
  }

  /**
   * Finds a kind by its name.
   *
   * @param name its name, as in {@code age-limits}; not null
   * @return the kind; empty if there is none
   */
  public static Optional<TableKind<?, ?>> named(String name) {
    return Optional.ofNullable(BY_NAME.get(name));
  }

  /**
   * Finds the kind of table that a row belongs to.
   *
   * @param row the row; not null
   * @return the kind; empty for what is in no table, as an edition
   */
  public static Optional<TableKind<?, ?>> of(Row row) {
    return Optional.ofNullable(BY_ROW.get(row.getClass()));
  }
}
