package org.ensemblerules.ruleset;

import java.util.List;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.CareLimitTable;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.CareRouteTable;
import org.ensemblerules.care.CleaningResultRow;
import org.ensemblerules.care.CleaningResultTable;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.care.WashBoundRow;
import org.ensemblerules.care.WashBoundTable;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.repair.RepairLimitTable;

/**
 * The kinds of tables by which gear is cleaned and repaired.
 *
 * @since 0.1
 */
public final class CareKinds {
  /** Within what a wash must stay. */
  public static final TableKind<CareLimitRow, CareLimitTable> CARE_LIMITS =
      TableKind.named("care-limits", Subject.CARE, HeldBy.EDITIONS)
          .rows(CareLimitRow.class, CareLimitTable::rows)
          .by(CareLimitTable::of)
          .readWhen((row, file) -> file.isOf(row.element(), row.use()) && file.washed());

  /** Within what a wash of one model must stay, as its manufacturer says. */
  public static final TableKind<ModelCareLimitRow, CareLimitTable> MODEL_CARE_LIMITS =
      TableKind.named("model-care-limits", Subject.CARE, HeldBy.OVERLAYS)
          .rows(ModelCareLimitRow.class, CareLimitTable::modelRows)
          .into(
              CARE_LIMITS,
              (rows, tables) ->
                  tables.of(CARE_LIMITS).with(List.of(), rows, tables.of(InspectionKinds.ANATOMY)))
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
      TableKind.named("cleaning-results", Subject.CARE, HeldBy.EDITIONS)
          .rows(CleaningResultRow.class, CleaningResultTable::rows)
          .by(CleaningResultTable::of)
          .notForVerdicts();

  /** What is done to gear after what it met. */
  public static final TableKind<CareRouteRow, CareRouteTable> CARE_ROUTES =
      TableKind.named("care-routes", Subject.CARE, HeldBy.EDITIONS)
          .rows(CareRouteRow.class, (CareRouteTable table) -> table.rows())
          .by(CareRouteTable::of)
          .readWhen((row, file) -> file.isOf(row.element(), row.use()) && file.met(row.exposure()));

  /** How lightly repairs may be taken at the most. */
  public static final TableKind<RepairLimitRow, RepairLimitTable> REPAIR_LIMITS =
      TableKind.named("repair-limits", Subject.CARE, HeldBy.EDITIONS)
          .rows(RepairLimitRow.class, RepairLimitTable::rows)
          .by(InspectionKinds.ANATOMY, RepairLimitTable::of)
          .notForVerdicts();

  private CareKinds() {}
}
