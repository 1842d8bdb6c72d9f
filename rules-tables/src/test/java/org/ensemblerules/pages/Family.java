package org.ensemblerules.pages;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.set.EditionTables;
import org.ensemblerules.tables.set.LoadedTables;

/**
 * The rows that stand in a table file as one family, in the editions that it is in force in.
 *
 * @param key its key
 * @param editions the editions in which it says this
 * @param rows its rows, one for each combination
 * @param <R> the rows
 */
record Family<R extends Row>(String key, List<OriginId> editions, List<R> rows) {
  R first() {
    return rows.get(0);
  }

  /** What all rows have of something, each once, in order. */
  <T extends Comparable<? super T>> List<T> all(Function<R, T> part) {
    return rows.stream().map(part).distinct().sorted().toList();
  }

  /** Lists the families of a table by key, as each first occurs; a changed one again. */
  static <R extends ComparableRow<R>> List<Family<R>> of(
      LoadedTables tables, TableKind<R, ?> kind) {
    Map<String, Map<OriginId, Family<R>>> families = new LinkedHashMap<>();
    for (EditionTables edition : inOrder(tables)) {
      Map<String, List<R>> byKey = new LinkedHashMap<>();
      for (R row : rows(edition, kind).orElse(List.of())) {
        byKey.computeIfAbsent(family(row), key -> new ArrayList<>()).add(row);
      }
      byKey.forEach(
          (key, rows) ->
              families
                  .computeIfAbsent(key, each -> new LinkedHashMap<>())
                  .computeIfAbsent(
                      rows.get(0).provenance().origin(),
                      origin -> new Family<>(key, new ArrayList<>(), rows))
                  .editions()
                  .add(edition.edition()));
    }
    return families.values().stream().map(Map::values).flatMap(Collection::stream).toList();
  }

  /** The rows that an edition has of a kind of table; empty if it has no such table. */
  static <R extends ComparableRow<R>, T> Optional<List<R>> rows(
      EditionTables edition, TableKind<R, T> kind) {
    return edition.find(kind).map(kind::rows);
  }

  static String family(Row row) {
    return row.key().value().split("/", 2)[0];
  }

  /** The trade's own tables, then those of the editions in the order of publication. */
  static List<EditionTables> inOrder(LoadedTables tables) {
    return tables.tables().values().stream()
        .sorted(
            Comparator.comparing(
                each -> tables.edition(each.edition()).map(edition -> edition.order()).orElse(0)))
        .toList();
  }
}
