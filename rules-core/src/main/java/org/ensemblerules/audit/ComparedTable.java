package org.ensemblerules.audit;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.CleaningResultRow;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.fieldcheck.CheckLimitRow;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.fieldcheck.StrongerRow;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.record.PfasLawRow;
import org.ensemblerules.record.RecordItemRow;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.retirement.CustodyStepRow;
import org.ensemblerules.retirement.DisposalRouteRow;
import org.ensemblerules.ruleset.AdoptionRow;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.DiscardRow;
import org.ensemblerules.strength.HydrostaticRow;
import org.ensemblerules.strength.MethodRow;
import org.ensemblerules.strength.RequirementRow;
import org.ensemblerules.strength.SmallSampleRow;
import org.ensemblerules.strength.UsedGearRow;

/**
 * A table whose rows are compared between two sets of rules. How rows compare, they say themselves.
 *
 * @param type the type of its rows; not null
 * @param name its name, as files have it; not null
 * @param <R> the type of its rows
 */
record ComparedTable<R extends ComparableRow<R>>(Class<R> type, String name) {
  /** All tables, in the order in which differences are told. */
  static final List<ComparedTable<?>> ALL =
      ImmutableList.of(
          new ComparedTable<>(Edition.class, "editions"),
          new ComparedTable<>(AnatomyRow.class, "anatomy"),
          new ComparedTable<>(PermissionRow.class, "permissions"),
          new ComparedTable<>(CheckRow.class, "checks"),
          new ComparedTable<>(DefectRow.class, "defects"),
          new ComparedTable<>(CriterionRow.class, "criteria"),
          new ComparedTable<>(IntervalRow.class, "intervals"),
          new ComparedTable<>(AgeLimitRow.class, "age-limits"),
          new ComparedTable<>(CautionRow.class, "cautions"),
          new ComparedTable<>(ConditionRow.class, "check-conditions"),
          new ComparedTable<>(StrongerRow.class, "stronger-checks"),
          new ComparedTable<>(CheckLimitRow.class, "check-limits"),
          new ComparedTable<>(RequirementRow.class, "strength-requirements"),
          new ComparedTable<>(MethodRow.class, "strength-methods"),
          new ComparedTable<>(DiscardRow.class, "strength-discards"),
          new ComparedTable<>(SmallSampleRow.class, "small-sample-factors"),
          new ComparedTable<>(HydrostaticRow.class, "hydrostatic"),
          new ComparedTable<>(CareLimitRow.class, "care-limits"),
          new ComparedTable<>(CleaningResultRow.class, "cleaning-results"),
          new ComparedTable<>(CareRouteRow.class, "care-routes"),
          new ComparedTable<>(RepairLimitRow.class, "repair-limits"),
          new ComparedTable<>(TaskRow.class, "tasks"),
          new ComparedTable<>(RecordItemRow.class, "record-items"),
          new ComparedTable<>(DisposalRouteRow.class, "disposal-routes"),
          new ComparedTable<>(CustodyStepRow.class, "custody-steps"),
          new ComparedTable<>(PfasLawRow.class, "pfas-laws"),
          new ComparedTable<>(ForbidRow.class, "forbidden"),
          new ComparedTable<>(UsedGearRow.class, "used-gear"),
          new ComparedTable<>(RetentionRow.class, "retention"),
          new ComparedTable<>(ModelCareLimitRow.class, "model-care-limits"),
          new ComparedTable<>(AdoptionRow.class, "adoptions"));

  /** The table that has rows of the type of this one. */
  static ComparedTable<?> of(Row row) {
    return ALL.stream()
        .filter(table -> table.type.isInstance(row))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no table of rows of " + row.getClass()));
  }

  List<String> topic(Row row) {
    return type.cast(row).topic();
  }

  /** The topic with what narrows it. */
  List<String> narrowly(Row row) {
    List<String> all = new ArrayList<>(topic(row));
    all.addAll(type.cast(row).narrowedTo());
    return all;
  }

  List<String> meaning(Row row) {
    return type.cast(row).meaning();
  }

  Comparison asOneMore(Row row) {
    return type.cast(row).asOneMore();
  }

  /** How strict the later row is, set against the earlier; other words ask for the same. */
  Comparison compare(Row earlier, Row later) {
    return meaning(earlier).equals(meaning(later))
        ? Comparison.SAME
        : type.cast(later).compareStrictness(type.cast(earlier));
  }
}
