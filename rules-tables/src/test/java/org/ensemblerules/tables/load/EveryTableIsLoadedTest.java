package org.ensemblerules.tables.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.ruleset.HeldBy;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.TableKinds;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.testkit.ShippedLoad;
import org.junit.jupiter.api.Test;

/** What is declared can be read from files, and what is read is in the rules. */
class EveryTableIsLoadedTest {
  @Test
  void filesHaveEveryTableButThoseOfOverlays() {
    assertThat(TableTypes.all().stream().map(TableType::kind).toList())
        .isEqualTo(
            TableKinds.all().stream().filter(kind -> kind.heldBy() != HeldBy.OVERLAYS).toList());
    assertThat(TableTypes.named().keySet())
        .containsExactlyInAnyOrderElementsOf(
            TableTypes.all().stream().map(TableType::name).toList());
  }

  @Test
  void whatIsLoadedForAnEditionIsInItsRules() {
    LoadedTables loaded = ShippedLoad.tables();
    List<RuleSet> sets =
        ShippedRules.editions().stream()
            .map(Edition::id)
            .map(id -> ShippedRules.of(id).orElseThrow().rules())
            .toList();
    Set<OriginId> origins = new HashSet<>();
    sets.forEach(rules -> rules.editions().values().forEach(each -> origins.add(each.id())));
    for (TableType<?> type : TableTypes.all()) {
      Set<Row> composed = new HashSet<>();
      sets.forEach(rules -> composed.addAll(rules.tables().rows(type.kind())));
      List<? extends Row> own =
          loaded.tables().values().stream()
              .flatMap(edition -> rows(edition.find(type.kind()).stream(), type.kind()))
              .filter(row -> origins.contains(row.provenance().origin()))
              .toList();
      assertThat(composed).as("%s", type).isNotEmpty();
      // Not by the matcher for lists, which looks at each pair of thousands of rows.
      assertThat(composed.containsAll(own)).as("%s", type).isTrue();
    }
  }

  private static <R extends ComparableRow<R>> Stream<R> rows(
      Stream<?> tables, TableKind<R, ?> kind) {
    return tables.flatMap(table -> held(table, kind));
  }

  @SuppressWarnings("unchecked") // found under this kind
  private static <R extends ComparableRow<R>, T> Stream<R> held(
      Object table, TableKind<R, T> kind) {
    return kind.rows((T) table).stream();
  }
}
