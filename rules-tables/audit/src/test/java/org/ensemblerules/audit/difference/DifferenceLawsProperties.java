package org.ensemblerules.audit.difference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ensemblerules.source.Row;
import org.ensemblerules.testkit.FrozenRules;

class DifferenceLawsProperties {
  private static final List<Row> ROWS = FrozenRules.tables().rows();
  private static final Map<ChangeKind, ChangeKind> MIRROR =
      Map.of(
          ChangeKind.ADDED, ChangeKind.REMOVED,
          ChangeKind.REMOVED, ChangeKind.ADDED,
          ChangeKind.TIGHTENED, ChangeKind.LOOSENED,
          ChangeKind.LOOSENED, ChangeKind.TIGHTENED,
          ChangeKind.CHANGED, ChangeKind.CHANGED,
          ChangeKind.REWORDED, ChangeKind.REWORDED);

  @Provide
  Arbitrary<List<Row>> some() {
    return Arbitraries.of(ROWS).list().uniqueElements().ofMaxSize(40);
  }

  @Property(tries = 300)
  void backIsTheMirrorOfThere(@ForAll("some") List<Row> one, @ForAll("some") List<Row> two) {
    List<String> there = told(RuleSetDifference.changes(one, two), false);
    List<String> back = told(RuleSetDifference.changes(two, one), true);
    assertThat(back).containsExactlyInAnyOrderElementsOf(there);
  }

  private static List<String> told(List<RowChange> changes, boolean mirrored) {
    return changes.stream()
        .map(
            change ->
                mirrored
                    ? MIRROR.get(change.kind()) + " " + change.after() + change.before()
                    : change.kind() + " " + change.before() + change.after())
        .collect(Collectors.toList());
  }

  @Property(tries = 300)
  void eachRowIsInBothOrIsTold(@ForAll("some") List<Row> one, @ForAll("some") List<Row> two) {
    List<RowChange> changes = RuleSetDifference.changes(one, two);
    List<Row> gone = changes.stream().flatMap(change -> change.before().stream()).toList();
    List<Row> come = changes.stream().flatMap(change -> change.after().stream()).toList();
    assertThat(one.stream().filter(row -> !gone.contains(row)).toList())
        .containsExactlyInAnyOrderElementsOf(
            two.stream().filter(row -> !come.contains(row)).toList());
  }
}
