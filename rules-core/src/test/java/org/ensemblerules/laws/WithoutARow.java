package org.ensemblerules.laws;

import java.util.List;
import java.util.Optional;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.TableKinds;
import org.ensemblerules.ruleset.TableMap;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.Row;
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
    TableMap rest = TableMap.none();
    for (TableKind<?, ?> kind : TableKinds.all()) {
      rest = with(rest, kind, all, gone);
    }
    return Tables.builder(rest).build();
  }

  private static <R extends ComparableRow<R>, T> TableMap with(
      TableMap rest, TableKind<R, T> kind, Tables all, Row gone) {
    List<R> rows = all.rows(kind).stream().filter(row -> !row.equals(gone)).toList();
    return rest.with(kind, kind.compile(rows, rest).orElseThrow());
  }
}
