package org.ensemblerules.ruleset;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Maps;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.CareLimitTable;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.CareRouteTable;
import org.ensemblerules.care.CleaningResultRow;
import org.ensemblerules.care.CleaningResultTable;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.care.WashBoundRow;
import org.ensemblerules.care.WashBoundTable;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.DestinationRow;
import org.ensemblerules.effect.DestinationTable;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.fieldcheck.CheckLimitRow;
import org.ensemblerules.fieldcheck.CheckLimitTable;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.fieldcheck.ConditionTable;
import org.ensemblerules.fieldcheck.StrongerRow;
import org.ensemblerules.fieldcheck.StrongerTable;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.history.ReturnRow;
import org.ensemblerules.history.ReturnTable;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.GradeRow;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.record.PfasLawRow;
import org.ensemblerules.record.PfasLawTable;
import org.ensemblerules.record.RecordItemRow;
import org.ensemblerules.record.RecordItemTable;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.repair.RepairLimitTable;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.retirement.CustodyStepRow;
import org.ensemblerules.retirement.CustodyTable;
import org.ensemblerules.retirement.DisposalRouteRow;
import org.ensemblerules.retirement.DisposalTable;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.TaskTable;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.strength.DiscardRow;
import org.ensemblerules.strength.HydrostaticRow;
import org.ensemblerules.strength.HydrostaticTable;
import org.ensemblerules.strength.MethodRow;
import org.ensemblerules.strength.MethodTable;
import org.ensemblerules.strength.RequirementRow;
import org.ensemblerules.strength.RequirementTable;
import org.ensemblerules.strength.SmallSampleRow;
import org.ensemblerules.strength.SmallSampleTable;
import org.ensemblerules.strength.UsedGearRow;

/**
 * Every kind of table, each declared here and nowhere else. A kind stands after the one that it is
 * compiled by.
 */
public final class TableKinds {
  /** Which parts exist. */
  public static final TableKind<AnatomyRow, AnatomyTable> ANATOMY =
      trade("anatomy")
          .rows(AnatomyRow.class, AnatomyTable::rows)
          .by(AnatomyTable::of)
          .needed()
          .readWhen((row, file) -> file.isOf(row.element(), row.use()));

  /** Who may do what. */
  public static final TableKind<PermissionRow, PermissionTable> PERMISSIONS =
      editions("permissions", Subject.INSPECTION)
          .rows(PermissionRow.class, PermissionTable::rows)
          .by(PermissionTable::of)
          .needed()
          .readWhen((row, file) -> file.asksWho(row.task()) || file.did(row.task(), row.entity()));

  /** Who may not do what, whatever else permits it. */
  public static final TableKind<ForbidRow, PermissionTable> FORBIDDEN =
      overlays("forbidden", Subject.INSPECTION)
          .rows(ForbidRow.class, PermissionTable::forbidden)
          .into(PERMISSIONS, (rows, tables) -> tables.of(PERMISSIONS).with(rows))
          .alwaysRead();

  /** What checks show and settle. */
  public static final TableKind<CheckRow, CheckTable> CHECKS =
      editions("checks", Subject.INSPECTION)
          .rows(CheckRow.class, CheckTable::rows)
          .by(CheckTable::of)
          .needed()
          .readWhen((row, file) -> file.names(row.check()));

  /** Where gear goes for what must be done. */
  public static final TableKind<DestinationRow, DestinationTable> DESTINATIONS =
      TableKind.named("destinations", Subject.CARE, HeldBy.TRADE)
          .rows(DestinationRow.class, DestinationTable::rows)
          .by(DestinationTable::of)
          .readWhen((row, file) -> file.asksWho(row.task()));

  /** What defects call for. */
  public static final TableKind<DefectRow, DefectTable> DEFECTS =
      editions("defects", Subject.INSPECTION)
          .rows(DefectRow.class, DefectTable::rows)
          .by(ANATOMY, DefectTable::of)
          .needed()
          .readWhen(
              (row, file) ->
                  file.isOf(row.element(), row.use()) && file.found(row.site(), row.defect()));

  /** What inspections look at. */
  public static final TableKind<CriterionRow, CriteriaTable> CRITERIA =
      editions("criteria", Subject.INSPECTION)
          .rows(CriterionRow.class, CriteriaTable::rows)
          .by(ANATOMY, CriteriaTable::of)
          .needed()
          .readWhen(
              (row, file) -> file.isOf(row.element(), row.use()) && file.inspects(row.kinds()));

  /** How often elements are inspected. */
  public static final TableKind<IntervalRow, IntervalTable> INTERVALS =
      editions("intervals", Subject.INSPECTION)
          .rows(IntervalRow.class, (IntervalTable table) -> table.rows())
          .by(IntervalTable::of)
          .needed()
          .readWhen((row, file) -> file.isOf(row.element(), row.use()));

  /** How elements are inspected once they are back from others' hands. */
  public static final TableKind<ReturnRow, ReturnTable> RETURNS =
      TableKind.named("returns", Subject.INSPECTION, HeldBy.TRADE)
          .rows(ReturnRow.class, (ReturnTable table) -> table.rows())
          .by(ReturnTable::of)
          .needed()
          .readWhen((row, file) -> file.comesBack(row.back()));

  /** How old elements may become. */
  public static final TableKind<AgeLimitRow, AgeLimitTable> AGE_LIMITS =
      editions("age-limits", Subject.AGE)
          .rows(AgeLimitRow.class, AgeLimitTable::rows)
          .by(AgeLimitTable::of)
          .needed()
          .readWhen((row, file) -> file.isOf(row.element(), row.use()));

  /** What verdicts warn of. */
  public static final TableKind<CautionRow, CautionTable> CAUTIONS =
      editions("cautions", Subject.INSPECTION)
          .rows(CautionRow.class, CautionTable::rows)
          .by(CautionTable::of)
          .needed()
          .readWhen((row, file) -> file.warns(row.key()));

  /** Which check outranks which. */
  public static final TableKind<StrongerRow, StrongerTable> STRONGER_CHECKS =
      editions("stronger-checks", Subject.INSPECTION)
          .rows(StrongerRow.class, StrongerTable::rows)
          .by(StrongerTable::of)
          .readWhen((row, file) -> file.followsOn(row.check()));

  /** Under what conditions checks count. */
  public static final TableKind<ConditionRow, ConditionTable> CONDITIONS =
      editions("check-conditions", Subject.INSPECTION)
          .rows(ConditionRow.class, ConditionTable::rows)
          .by(STRONGER_CHECKS, ConditionTable::of)
          .readWhen((row, file) -> file.checked(row.check()));

  /** What values measured in checks must be. */
  public static final TableKind<CheckLimitRow, CheckLimitTable> CHECK_LIMITS =
      editions("check-limits", Subject.INSPECTION)
          .rows(CheckLimitRow.class, CheckLimitTable::rows)
          .by(CheckLimitTable::of)
          .readWhen((row, file) -> file.checked(row.check()));

  /** What test methods need. */
  public static final TableKind<MethodRow, MethodTable> METHODS =
      trade("strength-methods")
          .rows(MethodRow.class, MethodTable::rows)
          .by(rows -> MethodTable.of(rows, List.of()))
          .readWhen((row, file) -> file.testedBy(row.method()));

  /** Which specimens test methods let be discarded. */
  public static final TableKind<DiscardRow, MethodTable> DISCARDS =
      trade("strength-discards")
          .rows(DiscardRow.class, MethodTable::discardRows)
          .into(METHODS, (rows, tables) -> MethodTable.of(tables.of(METHODS).rows(), rows))
          .readWhen((row, file) -> file.testedBy(row.method()));

  /** What product editions require of new material. */
  public static final TableKind<RequirementRow, RequirementTable> REQUIREMENTS =
      TableKind.named("strength-requirements", Subject.PRODUCT, HeldBy.PRODUCTS)
          .rows(RequirementRow.class, RequirementTable::rows)
          .by(METHODS, RequirementTable::of)
          .readWhen((row, file) -> file.tested(row.property()));

  /** Ranks and exponents of the small-sample bound. */
  public static final TableKind<SmallSampleRow, SmallSampleTable> SMALL_SAMPLES =
      trade("small-sample-factors")
          .rows(SmallSampleRow.class, SmallSampleTable::rows)
          .by(SmallSampleTable::of)
          .readWhen((row, file) -> file.tested());

  /** What moisture barriers must hold at fixed pressure. */
  public static final TableKind<HydrostaticRow, HydrostaticTable> HYDROSTATIC =
      trade("hydrostatic")
          .rows(HydrostaticRow.class, HydrostaticTable::rows)
          .by(HydrostaticTable::of)
          .notForVerdicts();

  /** Within what a wash must stay. */
  public static final TableKind<CareLimitRow, CareLimitTable> CARE_LIMITS =
      editions("care-limits", Subject.CARE)
          .rows(CareLimitRow.class, CareLimitTable::rows)
          .by(CareLimitTable::of)
          .readWhen((row, file) -> file.isOf(row.element(), row.use()) && file.washed());

  /** Within what a wash of one model must stay, as its manufacturer says. */
  public static final TableKind<ModelCareLimitRow, CareLimitTable> MODEL_CARE_LIMITS =
      overlays("model-care-limits", Subject.CARE)
          .rows(ModelCareLimitRow.class, CareLimitTable::modelRows)
          .into(
              CARE_LIMITS,
              (rows, tables) -> tables.of(CARE_LIMITS).with(List.of(), rows, tables.of(ANATOMY)))
          .readWhen(
              (row, file) -> file.isOf(row.limit().element(), row.limit().use()) && file.washed());

  /** How far limits of washes can go, whoever sets them. */
  public static final TableKind<WashBoundRow, WashBoundTable> WASH_BOUNDS =
      TableKind.named("wash-bounds", Subject.CARE, HeldBy.TRADE)
          .rows(WashBoundRow.class, WashBoundTable::rows)
          .by(WashBoundTable::of)
          .notForVerdicts();

  /** What a cleaning must achieve. */
  public static final TableKind<CleaningResultRow, CleaningResultTable> CLEANING_RESULTS =
      editions("cleaning-results", Subject.CARE)
          .rows(CleaningResultRow.class, CleaningResultTable::rows)
          .by(CleaningResultTable::of)
          .notForVerdicts();

  /** What is done to gear after what it met. */
  public static final TableKind<CareRouteRow, CareRouteTable> CARE_ROUTES =
      editions("care-routes", Subject.CARE)
          .rows(CareRouteRow.class, (CareRouteTable table) -> table.rows())
          .by(CareRouteTable::of)
          .readWhen((row, file) -> file.isOf(row.element(), row.use()) && file.met(row.exposure()));

  /** How lightly repairs may be taken at the most. */
  public static final TableKind<RepairLimitRow, RepairLimitTable> REPAIR_LIMITS =
      editions("repair-limits", Subject.CARE)
          .rows(RepairLimitRow.class, RepairLimitTable::rows)
          .by(ANATOMY, RepairLimitTable::of)
          .notForVerdicts();

  /** Which tasks are due when. */
  public static final TableKind<TaskRow, TaskTable> TASKS =
      editions("tasks", Subject.CARE)
          .rows(TaskRow.class, (TaskTable table) -> table.rows())
          .by(TaskTable::of)
          .readWhen((row, file) -> file.isOf(row.element(), row.use()));

  /** What is recorded of elements. */
  public static final TableKind<RecordItemRow, RecordItemTable> RECORD_ITEMS =
      editions("record-items", Subject.RECORD)
          .rows(RecordItemRow.class, RecordItemTable::rows)
          .by(RecordItemTable::of)
          .notForVerdicts();

  /** What may become of retired elements. */
  public static final TableKind<DisposalRouteRow, DisposalTable> DISPOSAL_ROUTES =
      editions("disposal-routes", Subject.RECORD)
          .rows(DisposalRouteRow.class, DisposalTable::rows)
          .by(DisposalTable::of)
          .notForVerdicts();

  /** The steps of custody after a special incident. */
  public static final TableKind<CustodyStepRow, CustodyTable> CUSTODY_STEPS =
      editions("custody-steps", Subject.RECORD)
          .rows(CustodyStepRow.class, CustodyTable::rows)
          .by(CustodyTable::of)
          .notForVerdicts();

  /** What the laws of places ask where gear contains added PFAS. */
  public static final TableKind<PfasLawRow, PfasLawTable> PFAS_LAWS =
      TableKind.named("pfas-laws", Subject.RECORD, HeldBy.LAW)
          .rows(PfasLawRow.class, PfasLawTable::rows)
          .by(PfasLawTable::of)
          .notForVerdicts();

  /** What the laws of places ask to go by, which each set of rules names beside its editions. */
  public static final TableKind<AdoptionRow, AdoptionTable> ADOPTIONS =
      TableKind.named("adoptions", Subject.RECORD, HeldBy.LAW)
          .rows(AdoptionRow.class, AdoptionTable::rows)
          .by(AdoptionTable::of)
          .notForVerdicts();

  /** Policies on the strength of used gear; each applies. */
  public static final TableKind<UsedGearRow, List<UsedGearRow>> USED_GEAR =
      overlays("used-gear", Subject.PRODUCT)
          .rows(UsedGearRow.class, (List<UsedGearRow> rows) -> rows)
          .by(TableKinds::beside)
          .alwaysRead();

  /** How much a record must have of inspections. */
  public static final TableKind<GradeRow, List<GradeRow>> GRADES =
      overlays("evidence-grades", Subject.INSPECTION)
          .rows(GradeRow.class, (List<GradeRow> rows) -> rows)
          .by(TableKinds::beside)
          .alwaysRead();

  /** How long files are kept; each applies. */
  public static final TableKind<RetentionRow, List<RetentionRow>> RETENTION =
      overlays("retention", Subject.RECORD)
          .rows(RetentionRow.class, (List<RetentionRow> rows) -> rows)
          .by(TableKinds::beside)
          .alwaysRead();

  private static final ImmutableList<TableKind<?, ?>> ALL =
      ImmutableList.of(
          ANATOMY,
          PERMISSIONS,
          FORBIDDEN,
          CHECKS,
          DESTINATIONS,
          CRITERIA,
          DEFECTS,
          INTERVALS,
          RETURNS,
          AGE_LIMITS,
          CAUTIONS,
          STRONGER_CHECKS,
          CONDITIONS,
          CHECK_LIMITS,
          CARE_LIMITS,
          MODEL_CARE_LIMITS,
          WASH_BOUNDS,
          CLEANING_RESULTS,
          CARE_ROUTES,
          REPAIR_LIMITS,
          TASKS,
          METHODS,
          DISCARDS,
          HYDROSTATIC,
          SMALL_SAMPLES,
          REQUIREMENTS,
          RECORD_ITEMS,
          DISPOSAL_ROUTES,
          CUSTODY_STEPS,
          PFAS_LAWS,
          ADOPTIONS,
          USED_GEAR,
          RETENTION,
          GRADES);
  private static final Map<Class<? extends Row>, TableKind<?, ?>> BY_ROW =
      Maps.uniqueIndex(ALL, TableKind::rowType);
  private static final Map<String, TableKind<?, ?>> BY_NAME =
      Maps.uniqueIndex(ALL, TableKind::name);

  private TableKinds() {}

  private static TableKind.Named editions(String name, Subject subject) {
    return TableKind.named(name, subject, HeldBy.EDITIONS);
  }

  private static TableKind.Named trade(String name) {
    return TableKind.named(name, Subject.PRODUCT, HeldBy.TRADE);
  }

  private static TableKind.Named overlays(String name, Subject subject) {
    return TableKind.named(name, subject, HeldBy.OVERLAYS);
  }

  // Each such row stands for itself, so that no two of them can be at odds.
  private static <R> Checked<List<R>, TableFault> beside(List<R> rows) {
    return Checked.of(List.of(), () -> ImmutableList.copyOf(rows));
  }

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
