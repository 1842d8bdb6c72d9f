package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import org.ensemblerules.care.CareLimitTable;
import org.ensemblerules.care.CareRouteTable;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.fieldcheck.CheckLimitTable;
import org.ensemblerules.fieldcheck.ConditionTable;
import org.ensemblerules.fieldcheck.StrongerTable;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.ruleset.CautionTable;
import org.ensemblerules.ruleset.RecordTables;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.schedule.TaskTable;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.MethodTable;
import org.ensemblerules.strength.RequirementTable;
import org.ensemblerules.strength.SmallSampleTable;
import org.ensemblerules.strength.StrengthTables;
import org.ensemblerules.testkit.ShippedArbitraries;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.verdict.Assess;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.Verdict;

/** A verdict is the same by the rows of its trace alone, whichever edition judges. */
@PropertyDefaults(tries = 250, edgeCases = EdgeCasesMode.NONE)
class ShippedTraceProperties {
  @Provide
  Arbitrary<ShippedCase> cases() {
    return ShippedArbitraries.cases();
  }

  @Property
  void theRowsOfTheTraceAreEnough(@ForAll("cases") ShippedCase given) {
    Verdict verdict = given.verdict();
    Set<Row> trace = new HashSet<>(Assess.trace(given.rules(), given.assessment(), given.asOf()));
    Verdict again = Assess.assess(only(given.rules(), trace), given.assessment(), given.asOf());
    assertThat(again.reasons()).isEqualTo(verdict.reasons());
    assertThat(again.actions()).isEqualTo(verdict.actions());
    assertThat(again.openFindings()).isEqualTo(verdict.openFindings());
    assertThat(again.ages()).isEqualTo(verdict.ages());
    assertThat(again.due()).isEqualTo(verdict.due());
    assertThat(again.cautions()).isEqualTo(verdict.cautions());
    assertThat(again.wayBack()).isEqualTo(verdict.wayBack());
    assertThat(trace.stream().map(Row::cited).collect(Collectors.toSet()))
        .containsAll(verdict.reasons().stream().flatMap(each -> row(each).stream()).toList());
    assertThat(trace).hasSizeLessThan(given.rules().tables().rows().size() / 4);
  }

  private static List<CitedRow> row(Reason reason) {
    return reason.row().stream().toList();
  }

  /** Only what must name every part, check and doer is left whole. */
  private static RuleSet only(RuleSet rules, Set<Row> trace) {
    Tables all = rules.tables();
    StrengthTables strength = all.strength();
    MethodTable methods =
        MethodTable.of(
                in(strength.methods().rows(), trace), in(strength.methods().discardRows(), trace))
            .orElseThrow();
    Tables some =
        all.toBuilder()
            .defects(DefectTable.of(in(all.defects().rows(), trace), all.anatomy()).orElseThrow())
            .criteria(
                CriteriaTable.of(in(all.criteria().rows(), trace), all.anatomy()).orElseThrow())
            .intervals(IntervalTable.of(in(all.intervals().rows(), trace)).orElseThrow())
            .ageLimits(AgeLimitTable.of(in(all.ageLimits().rows(), trace)).orElseThrow())
            .cautions(CautionTable.of(in(all.cautions().rows(), trace)).orElseThrow())
            .conditions(
                ConditionTable.of(
                        in(all.conditions().rows(), trace),
                        StrongerTable.of(in(all.conditions().stronger().rows(), trace))
                            .orElseThrow())
                    .orElseThrow())
            .checkLimits(CheckLimitTable.of(in(all.checkLimits().rows(), trace)).orElseThrow())
            .care(
                all.care()
                    .with(CareLimitTable.of(in(all.care().limits().rows(), trace)).orElseThrow())
                    .with(CareRouteTable.of(in(all.care().routes().rows(), trace)).orElseThrow()))
            .tasks(TaskTable.of(in(all.tasks().rows(), trace)).orElseThrow())
            .strength(
                new StrengthTables(
                    RequirementTable.of(in(strength.requirements().rows(), trace), methods)
                        .orElseThrow(),
                    methods,
                    SmallSampleTable.of(in(strength.smallSamples().rows(), trace)).orElseThrow()))
            .records(RecordTables.none())
            .build();
    return RuleSet.of(rules.editions(), some, Map.of());
  }

  private static <R extends Row> List<R> in(List<R> rows, Set<Row> trace) {
    return rows.stream().filter(trace::contains).toList();
  }
}
