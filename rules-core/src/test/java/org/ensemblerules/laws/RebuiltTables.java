package org.ensemblerules.laws;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.TableKinds;
import org.ensemblerules.ruleset.TableMap;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.Row;

/** Tables compiled anew from changed rows. */
final class RebuiltTables {
  private RebuiltTables() {}

  /**
   * Takes a row away.
   *
   * @param all the tables
   * @param gone the row
   * @return the tables without it
   * @throws org.ensemblerules.source.RefusedException if a table is faulty without it
   */
  static Tables without(Tables all, Row gone) {
    return changed(all, row -> row.equals(gone) ? Stream.empty() : Stream.of(row));
  }

  /**
   * Puts a row in place of the one of its key.
   *
   * @param all the tables
   * @param row the row
   * @param <R> the type of the row
   * @return the tables with it
   * @throws org.ensemblerules.source.RefusedException if its table is faulty with it
   */
  static <R extends ComparableRow<R>> Tables with(Tables all, R row) {
    return changed(
        all,
        each ->
            Stream.of(
                each.getClass() == row.getClass() && each.key().equals(row.key()) ? row : each));
  }

  /** Compiles only what changed and what is compiled by it; the rest stays as it is. */
  private static Tables changed(Tables all, Function<Row, Stream<Row>> change) {
    Set<TableKind<?, ?>> anew = new HashSet<>();
    for (TableKind<?, ?> kind : TableKinds.all()) {
      if (!all.rows(kind).stream().flatMap(change).toList().equals(all.rows(kind))) {
        anew.add(kind.home());
      }
    }
    for (int before = -1; before != anew.size(); ) {
      before = anew.size();
      TableKinds.all().stream()
          .filter(kind -> kind.base().filter(base -> anew.contains(base.home())).isPresent())
          .forEach(kind -> anew.add(kind.home()));
    }
    TableMap rest = TableMap.none();
    for (TableKind<?, ?> kind : TableKinds.all()) {
      rest = anew.contains(kind.home()) ? compiled(rest, kind, all, change) : kept(rest, kind, all);
    }
    return Tables.of(rest);
  }

  private static <T> TableMap kept(TableMap rest, TableKind<?, T> kind, Tables all) {
    return rest.with(kind, all.of(kind));
  }

  private static <R extends ComparableRow<R>, T> TableMap compiled(
      TableMap rest, TableKind<R, T> kind, Tables all, Function<Row, Stream<Row>> change) {
    List<R> rows = all.rows(kind).stream().flatMap(change).map(kind.rowType()::cast).toList();
    return rest.with(kind, kind.compile(rows, rest).orElseThrow());
  }
}
