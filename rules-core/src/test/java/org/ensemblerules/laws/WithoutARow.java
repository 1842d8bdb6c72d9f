package org.ensemblerules.laws;

import java.util.List;
import java.util.Optional;
import org.ensemblerules.care.CareLimitTable;
import org.ensemblerules.care.CareRouteTable;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.fieldcheck.CheckLimitTable;
import org.ensemblerules.fieldcheck.ConditionTable;
import org.ensemblerules.fieldcheck.StrongerTable;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.ruleset.CautionTable;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.schedule.TaskTable;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.MethodTable;
import org.ensemblerules.strength.RequirementTable;
import org.ensemblerules.strength.SmallSampleTable;
import org.ensemblerules.strength.StrengthTables;
import org.ensemblerules.testkit.FrozenRules;

/** The frozen rules with one row taken away, where the rest is still sound. */
final class WithoutARow {
  private WithoutARow() {}

  static Optional<RuleSet> of(Row gone) {
    try {
      return Optional.of(FrozenRules.of(without(FrozenRules.tables(), gone)));
    } catch (IllegalStateException faulty) {
      // Tables that must name every check, doer or extent are faulty without the row.
      return Optional.empty();
    }
  }

  private static Tables without(Tables all, Row gone) {
    AnatomyTable anatomy = AnatomyTable.of(rest(all.anatomy().rows(), gone)).orElseThrow();
    StrengthTables strength = all.strength();
    MethodTable methods =
        MethodTable.of(
                rest(strength.methods().rows(), gone), rest(strength.methods().discardRows(), gone))
            .orElseThrow();
    return Tables.builder(anatomy, CheckTable.of(rest(all.checks().rows(), gone)).orElseThrow())
        .permissions(PermissionTable.of(rest(all.permissions().rows(), gone)).orElseThrow())
        .defects(DefectTable.of(rest(all.defects().rows(), gone), anatomy).orElseThrow())
        .criteria(CriteriaTable.of(rest(all.criteria().rows(), gone), anatomy).orElseThrow())
        .intervals(IntervalTable.of(rest(all.intervals().rows(), gone)).orElseThrow())
        .ageLimits(AgeLimitTable.of(rest(all.ageLimits().rows(), gone)).orElseThrow())
        .cautions(CautionTable.of(rest(all.cautions().rows(), gone)).orElseThrow())
        .conditions(
            ConditionTable.of(
                    rest(all.conditions().rows(), gone),
                    StrongerTable.of(rest(all.conditions().stronger().rows(), gone)).orElseThrow())
                .orElseThrow())
        .checkLimits(CheckLimitTable.of(rest(all.checkLimits().rows(), gone)).orElseThrow())
        .care(
            all.care()
                .with(CareLimitTable.of(rest(all.care().limits().rows(), gone)).orElseThrow())
                .with(CareRouteTable.of(rest(all.care().routes().rows(), gone)).orElseThrow()))
        .tasks(TaskTable.of(rest(all.tasks().rows(), gone)).orElseThrow())
        .strength(
            new StrengthTables(
                RequirementTable.of(rest(strength.requirements().rows(), gone), methods)
                    .orElseThrow(),
                methods,
                SmallSampleTable.of(rest(strength.smallSamples().rows(), gone)).orElseThrow()))
        .build();
  }

  private static <R extends Row> List<R> rest(List<R> rows, Row gone) {
    return rows.stream().filter(row -> !row.equals(gone)).toList();
  }
}
