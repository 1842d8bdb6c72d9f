package org.ensemblerules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.VerdictContent;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Caution;
import org.ensemblerules.verdict.LayerAge;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.TaskDue;
import org.ensemblerules.verdict.Verdict;

/** The trace of a verdict holds every row that it rests on, and no other matters. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 250, edgeCases = EdgeCasesMode.NONE)
class TraceProperties {
  private static final List<Row> ALL = FrozenRules.rules().tables().rows();

  /** Compiled once for each row that can be taken away. */
  private static final Map<Row, Optional<RuleSet>> WITHOUT = new HashMap<>();

  private static Optional<RuleSet> without(Row row) {
    return WITHOUT.computeIfAbsent(row, WithoutARow::of);
  }

  @Property
  void whatTheVerdictNamesIsInIt(@ForAll GearCase given) {
    Verdict verdict = given.verdict();
    List<Row> trace = given.trace();
    assertThat(trace).doesNotHaveDuplicates().isSubsetOf(ALL);
    assertThat(trace)
        .extracting(Row::cited)
        .containsAll(verdict.reasons().stream().map(Reason::row).flatMap(Optional::stream).toList())
        .containsAll(verdict.due().stream().map(TaskDue::row).flatMap(Optional::stream).toList());
    assertThat(trace.stream().flatMap(TraceProperties::doer).toList())
        .containsAll(verdict.actions().stream().map(Action::by).flatMap(List::stream).toList());
    Set<RowKey> keys = new HashSet<>(trace.stream().map(Row::key).toList());
    assertThat(keys)
        .containsAll(verdict.cautions().stream().map(Caution::row).toList())
        .containsAll(verdict.checksNotDone());
    for (LayerAge age : verdict.ages()) {
      assertThat(trace.stream().map(row -> row.getClass().getSimpleName()))
          .as("%s", age)
          .contains("AgeLimitRow");
    }
  }

  private static Stream<PermittedDoer> doer(Row row) {
    return row instanceof PermissionRow permission ? Stream.of(permission.doer()) : Stream.of();
  }

  @Property
  void aRowThatIsNotInItCouldBeTakenAway(@ForAll GearCase given, @ForAll int choice) {
    Verdict verdict = given.verdict();
    List<Row> others = new ArrayList<>(ALL);
    others.removeAll(given.trace());
    for (int i = 0; i < 8; i++) {
      Row gone = others.get(Math.floorMod(choice + i * 31, others.size()));
      without(gone).ifPresent(rules -> same(rules, given, verdict, gone));
    }
  }

  @Example
  @Tag("slow")
  void noOtherRowMattersToFitGear() {
    int taken = 0;
    for (ElementKind kind : FrozenRules.KINDS) {
      GearCase given = FitGear.fit(kind);
      Verdict verdict = given.verdict();
      List<Row> others = new ArrayList<>(ALL);
      others.removeAll(given.trace());
      assertThat(others).hasSizeGreaterThan(ALL.size() / 2);
      for (Row gone : others) {
        Optional<RuleSet> rules = without(gone);
        rules.ifPresent(rest -> same(rest, given, verdict, gone));
        taken += rules.isPresent() ? 1 : 0;
      }
    }
    assertThat(taken).isGreaterThan(150);
  }

  /** The law can fail: the rows that a verdict rests on do matter. */
  @Example
  void aRowThatIsInItCanMatter() {
    GearCase given = FitGear.fit(ElementKind.HELMET);
    Verdict verdict = given.verdict();
    Stream<Row> matter =
        given.trace().stream()
            .filter(
                row ->
                    without(row)
                        .map(rules -> !content(rules, given).equals(content(verdict)))
                        .orElse(false));
    assertThat(matter.map(row -> row.getClass().getSimpleName()).distinct())
        .contains("IntervalRow", "AgeLimitRow", "CautionRow", "CriterionRow", "TaskRow");
  }

  private static void same(RuleSet rules, GearCase given, Verdict verdict, Row gone) {
    assertThat(content(rules, given)).as("without %s", gone).isEqualTo(content(verdict));
  }

  private static List<Object> content(RuleSet rules, GearCase given) {
    return content(GearRules.of(rules).assess(given.assessment(), given.asOf()));
  }

  /** All but the identity, which every row belongs to. */
  private static List<Object> content(Verdict verdict) {
    List<Object> content = new ArrayList<>(VerdictContent.of(verdict));
    content.remove(verdict.identity());
    return content;
  }
}
