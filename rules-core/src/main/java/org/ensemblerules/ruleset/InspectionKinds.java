package org.ensemblerules.ruleset;

import java.util.List;
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
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.TaskTable;

/**
 * The kinds of tables by which an element is inspected and its verdict reached: its parts, what is
 * found, checked and due, who may do it and what it leads to.
 *
 * @since 0.1
 */
public final class InspectionKinds {
  /** Which parts exist. */
  public static final TableKind<AnatomyRow, AnatomyTable> ANATOMY =
      TableKind.named("anatomy", Subject.PRODUCT, HeldBy.TRADE)
          .rows(AnatomyRow.class, AnatomyTable::rows)
          .by(AnatomyTable::of)
          .needed()
          .readWhen((row, file) -> file.isOf(row.element(), row.use()));

  /** Who may do what. */
  public static final TableKind<PermissionRow, PermissionTable> PERMISSIONS =
      TableKind.named("permissions", Subject.INSPECTION, HeldBy.EDITIONS)
          .rows(PermissionRow.class, PermissionTable::rows)
          .by(PermissionTable::of)
          .needed()
          .readWhen((row, file) -> file.asksWho(row.task()) || file.did(row.task(), row.entity()));

  /** Who may not do what, whatever else permits it. */
  public static final TableKind<ForbidRow, PermissionTable> FORBIDDEN =
      TableKind.named("forbidden", Subject.INSPECTION, HeldBy.OVERLAYS)
          .rows(ForbidRow.class, PermissionTable::forbidden)
          .into(PERMISSIONS, (rows, tables) -> tables.of(PERMISSIONS).with(rows))
          .alwaysRead();

  /** What checks show and settle. */
  public static final TableKind<CheckRow, CheckTable> CHECKS =
      TableKind.named("checks", Subject.INSPECTION, HeldBy.EDITIONS)
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
      TableKind.named("defects", Subject.INSPECTION, HeldBy.EDITIONS)
          .rows(DefectRow.class, DefectTable::rows)
          .by(ANATOMY, DefectTable::of)
          .needed()
          .readWhen(
              (row, file) ->
                  file.isOf(row.element(), row.use()) && file.found(row.site(), row.defect()));

  /** What inspections look at. */
  public static final TableKind<CriterionRow, CriteriaTable> CRITERIA =
      TableKind.named("criteria", Subject.INSPECTION, HeldBy.EDITIONS)
          .rows(CriterionRow.class, CriteriaTable::rows)
          .by(ANATOMY, CriteriaTable::of)
          .needed()
          .readWhen(
              (row, file) -> file.isOf(row.element(), row.use()) && file.inspects(row.kinds()));

  /** How often elements are inspected. */
  public static final TableKind<IntervalRow, IntervalTable> INTERVALS =
      TableKind.named("intervals", Subject.INSPECTION, HeldBy.EDITIONS)
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
      TableKind.named("age-limits", Subject.AGE, HeldBy.EDITIONS)
          .rows(AgeLimitRow.class, AgeLimitTable::rows)
          .by(AgeLimitTable::of)
          .needed()
          .readWhen((row, file) -> file.isOf(row.element(), row.use()));

  /** What verdicts warn of. */
  public static final TableKind<CautionRow, CautionTable> CAUTIONS =
      TableKind.named("cautions", Subject.INSPECTION, HeldBy.EDITIONS)
          .rows(CautionRow.class, CautionTable::rows)
          .by(CautionTable::of)
          .needed()
          .readWhen((row, file) -> file.warns(row.key()));

  /** Which check outranks which. */
  public static final TableKind<StrongerRow, StrongerTable> STRONGER_CHECKS =
      TableKind.named("stronger-checks", Subject.INSPECTION, HeldBy.EDITIONS)
          .rows(StrongerRow.class, StrongerTable::rows)
          .by(StrongerTable::of)
          .readWhen((row, file) -> file.followsOn(row.check()));

  /** Under what conditions checks count. */
  public static final TableKind<ConditionRow, ConditionTable> CONDITIONS =
      TableKind.named("check-conditions", Subject.INSPECTION, HeldBy.EDITIONS)
          .rows(ConditionRow.class, ConditionTable::rows)
          .by(STRONGER_CHECKS, ConditionTable::of)
          .readWhen((row, file) -> file.checked(row.check()));

  /** What values measured in checks must be. */
  public static final TableKind<CheckLimitRow, CheckLimitTable> CHECK_LIMITS =
      TableKind.named("check-limits", Subject.INSPECTION, HeldBy.EDITIONS)
          .rows(CheckLimitRow.class, CheckLimitTable::rows)
          .by(CheckLimitTable::of)
          .readWhen((row, file) -> file.checked(row.check()));

  /** Which tasks are due when. */
  public static final TableKind<TaskRow, TaskTable> TASKS =
      TableKind.named("tasks", Subject.CARE, HeldBy.EDITIONS)
          .rows(TaskRow.class, (TaskTable table) -> table.rows())
          .by(TaskTable::of)
          .readWhen((row, file) -> file.isOf(row.element(), row.use()));

  /** How much a record must have of inspections. */
  public static final TableKind<GradeRow, List<GradeRow>> GRADES =
      TableKind.named("evidence-grades", Subject.INSPECTION, HeldBy.OVERLAYS)
          .listOf(GradeRow.class)
          .alwaysRead();

  private InspectionKinds() {}
}
