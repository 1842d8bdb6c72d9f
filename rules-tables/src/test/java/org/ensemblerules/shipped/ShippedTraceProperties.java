package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.TableKinds;
import org.ensemblerules.ruleset.TableMap;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.Row;
import org.ensemblerules.testkit.ShippedArbitraries;
import org.ensemblerules.testkit.ShippedCase;
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
    Set<Row> trace =
        new HashSet<>(GearRules.of(given.rules()).trace(given.assessment(), given.asOf()));
    Verdict again =
        GearRules.of(only(given.rules(), trace)).assess(given.assessment(), given.asOf());
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

  private static final Set<TableKind<?, ?>> WHOLE =
      Set.of(
          InspectionKinds.ANATOMY,
          InspectionKinds.PERMISSIONS,
          InspectionKinds.CHECKS,
          CareKinds.CARE_ROUTES,
          InspectionKinds.DESTINATIONS);

  /** Only what must name every part, check, doer, exposure and task is left whole. */
  private static RuleSet only(RuleSet rules, Set<Row> trace) {
    TableMap some = TableMap.none();
    for (TableKind<?, ?> kind : TableKinds.all()) {
      some = with(some, kind, rules.tables(), row -> WHOLE.contains(kind) || trace.contains(row));
    }
    return RuleSet.of(
        rules.editions(), rules.evidenceTables().editions(), Tables.of(some), Map.of());
  }

  private static <R extends ComparableRow<R>, T> TableMap with(
      TableMap some, TableKind<R, T> kind, Tables all, Predicate<Row> taken) {
    List<R> rows = all.rows(kind).stream().filter(taken).toList();
    return some.with(kind, kind.compile(rows, some).orElseThrow());
  }
}
