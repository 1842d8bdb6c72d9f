package org.ensemblerules.tables.load;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.CleaningResultRow;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.fieldcheck.CheckLimitRow;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.fieldcheck.StrongerRow;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.record.PfasLawRow;
import org.ensemblerules.record.RecordItemRow;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.retirement.CustodyStepRow;
import org.ensemblerules.retirement.DisposalRouteRow;
import org.ensemblerules.ruleset.AdoptionRow;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.EditionId;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.DiscardRow;
import org.ensemblerules.strength.HydrostaticRow;
import org.ensemblerules.strength.MethodRow;
import org.ensemblerules.strength.RequirementRow;
import org.ensemblerules.strength.SmallSampleRow;
import org.ensemblerules.tables.LoadedTables;

/**
 * A table that editions have: its name in files, the subject it belongs to, the one body of rules
 * that may have it if not every edition may, and how its rows are read.
 *
 * @param <R> its rows
 */
record TableType<R extends Row>(
    String name, Subject subject, Optional<EditionId> ofOnly, FamilyReader<R> reader) {
  static final TableType<AnatomyRow> ANATOMY = ofTrade("anatomy", GearReaders::anatomy);
  static final TableType<MethodRow> METHODS =
      ofTrade("strength-methods", LaboratoryReaders::methods);
  static final TableType<DiscardRow> DISCARDS =
      ofTrade("strength-discards", LaboratoryReaders::discards);
  static final TableType<HydrostaticRow> HYDROSTATIC =
      ofTrade("hydrostatic", LaboratoryReaders::hydrostatic);
  static final TableType<SmallSampleRow> SMALL_SAMPLES =
      ofTrade("small-sample-factors", LaboratoryReaders::smallSamples);
  static final TableType<RequirementRow> REQUIREMENTS =
      of("strength-requirements", Subject.PRODUCT, RequirementReader::requirements);
  static final TableType<CareLimitRow> CARE_LIMITS =
      of("care-limits", Subject.CARE, CareReaders::careLimits);
  static final TableType<CleaningResultRow> CLEANING_RESULTS =
      of("cleaning-results", Subject.CARE, CareReaders::cleaningResults);
  static final TableType<CareRouteRow> CARE_ROUTES =
      of("care-routes", Subject.CARE, RouteReaders::careRoutes);
  static final TableType<RepairLimitRow> REPAIR_LIMITS =
      of("repair-limits", Subject.CARE, RepairReaders::repairLimits);
  static final TableType<TaskRow> TASKS = of("tasks", Subject.CARE, ScheduleReaders::tasks);
  static final TableType<CriterionRow> CRITERIA =
      of("criteria", Subject.INSPECTION, InspectionReaders::criteria);
  static final TableType<IntervalRow> INTERVALS =
      of("intervals", Subject.INSPECTION, InspectionReaders::intervals);
  static final TableType<DefectRow> DEFECTS =
      of("defects", Subject.INSPECTION, DefectReaders::defects);
  static final TableType<CheckRow> CHECKS = of("checks", Subject.INSPECTION, EffectReaders::checks);
  static final TableType<StrongerRow> STRONGER_CHECKS =
      of("stronger-checks", Subject.INSPECTION, FieldcheckReaders::strongerChecks);
  static final TableType<ConditionRow> CONDITIONS =
      of("check-conditions", Subject.INSPECTION, FieldcheckReaders::conditions);
  static final TableType<CheckLimitRow> CHECK_LIMITS =
      of("check-limits", Subject.INSPECTION, FieldcheckReaders::checkLimits);
  static final TableType<PermissionRow> PERMISSIONS =
      of("permissions", Subject.INSPECTION, EffectReaders::permissions);
  static final TableType<CautionRow> CAUTIONS =
      of("cautions", Subject.INSPECTION, EffectReaders::cautions);
  static final TableType<AgeLimitRow> AGE_LIMITS =
      of("age-limits", Subject.AGE, GearReaders::ageLimits);
  static final TableType<RecordItemRow> RECORD_ITEMS =
      of("record-items", Subject.RECORD, RecordReaders::recordItems);
  static final TableType<DisposalRouteRow> DISPOSAL_ROUTES =
      of("disposal-routes", Subject.RECORD, RecordReaders::disposalRoutes);
  static final TableType<CustodyStepRow> CUSTODY_STEPS =
      of("custody-steps", Subject.RECORD, RecordReaders::custodySteps);
  static final TableType<AdoptionRow> ADOPTIONS =
      new TableType<>(
          "adoptions", Subject.RECORD, Optional.of(LoadedTables.LAW), LawReaders::adoptions);
  static final TableType<PfasLawRow> PFAS_LAWS =
      new TableType<>(
          "pfas-laws", Subject.RECORD, Optional.of(LoadedTables.LAW), LawReaders::pfasLaws);

  private static final Map<String, TableType<?>> BY_NAME = byName();

  private static <R extends Row> TableType<R> of(
      String name, Subject subject, FamilyReader<R> reader) {
    return new TableType<>(name, subject, Optional.empty(), reader);
  }

  private static <R extends Row> TableType<R> ofTrade(String name, FamilyReader<R> reader) {
    return new TableType<>(name, Subject.PRODUCT, Optional.of(LoadedTables.TRADE), reader);
  }

  private static Map<String, TableType<?>> byName() {
    Map<String, TableType<?>> types = new LinkedHashMap<>();
    List.of(
            ANATOMY,
            METHODS,
            DISCARDS,
            HYDROSTATIC,
            SMALL_SAMPLES,
            REQUIREMENTS,
            CARE_LIMITS,
            CLEANING_RESULTS,
            CARE_ROUTES,
            REPAIR_LIMITS,
            TASKS,
            CRITERIA,
            INTERVALS,
            DEFECTS,
            CHECKS,
            STRONGER_CHECKS,
            CONDITIONS,
            CHECK_LIMITS,
            PERMISSIONS,
            CAUTIONS,
            AGE_LIMITS,
            RECORD_ITEMS,
            DISPOSAL_ROUTES,
            CUSTODY_STEPS,
            PFAS_LAWS,
            ADOPTIONS)
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
