package org.ensemblerules.audit.difference;

import com.google.common.collect.ListMultimap;
import com.google.common.collect.MultimapBuilder;
import com.google.common.collect.Sets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Row;

/**
 * Pairs the rows of one kind of two sets of rules: first those that say the same, then those that
 * mean the same, then those that speak of the same, then those of one key whose topic is the same
 * but not what narrows it. What finds no partner was added or removed. The same pairs come of it
 * whichever set is the earlier.
 */
final class Matching {
  private static final Comparator<Row> ORDER =
      Comparator.<Row, String>comparing(row -> row.key().value())
          .thenComparing(row -> row.provenance().origin().value())
          .thenComparing(row -> String.join("\n", said(row)));

  private final ComparedTable<?> table;
  private final List<RowChange> changes = new ArrayList<>();
  private List<Row> before;
  private List<Row> after;

  private Matching(ComparedTable<?> table, List<? extends Row> before, List<? extends Row> after) {
    this.table = table;
    this.before = before.stream().<Row>map(row -> row).sorted(ORDER).toList();
    this.after = after.stream().<Row>map(row -> row).sorted(ORDER).toList();
  }

  /** Lists the changes, those of pairs that say the same left out. */
  static List<RowChange> of(
      ComparedTable<?> table, List<? extends Row> before, List<? extends Row> after) {
    Matching matching = new Matching(table, before, after);
    matching.pairAlike(row -> List.of(table.narrowly(row), said(row)));
    matching.pairAlike(row -> List.of(table.narrowly(row), table.meaning(row)));
    matching.pairAlike(row -> List.of(table.narrowly(row), key(row)));
    matching.pairAlike(row -> List.of(table.narrowly(row)));
    matching.pairAlike(row -> List.of(table.topic(row), key(row)));
    matching.before.forEach(matching::removed);
    matching.after.forEach(matching::added);
    return matching.changes;
  }

  private static List<String> key(Row row) {
    return List.of(row.key().value());
  }

  /** Everything a reader is told by the row but its key, its origin and the day of its review. */
  private static List<String> said(Row row) {
    List<String> said = new ArrayList<>(row.canonical());
    said.add(row.provenance().basis().text());
    said.add(row.provenance().note().orElse(""));
    return said;
  }

  private void pairAlike(Function<Row, List<List<String>>> alike) {
    ListMultimap<List<List<String>>, Row> partners =
        MultimapBuilder.hashKeys().arrayListValues().build();
    after.forEach(row -> partners.put(alike.apply(row), row));
    List<Row> alone = new ArrayList<>();
    Set<Row> taken = Sets.newIdentityHashSet();
    for (Row row : before) {
      List<Row> those = partners.get(alike.apply(row));
      if (those.isEmpty()) {
        alone.add(row);
      } else {
        Row partner = those.remove(0);
        taken.add(partner);
        pair(row, partner);
      }
    }
    before = alone;
    after = after.stream().filter(row -> !taken.contains(row)).toList();
  }

  private void pair(Row row, Row partner) {
    if (said(row).equals(said(partner))) {
      return;
    }
    Comparison strictness = table.compare(row, partner);
    ChangeKind kind =
        switch (strictness) {
          case SAME -> ChangeKind.REWORDED;
          case STRICTER -> ChangeKind.TIGHTENED;
          case MILDER -> ChangeKind.LOOSENED;
          case UNDECIDED -> ChangeKind.CHANGED;
        };
    List<String> one = table.narrowly(row);
    List<String> other = table.narrowly(partner);
    changes.add(
        new RowChange(
            kind,
            table.name(),
            one.equals(other) ? one : table.topic(row),
            Optional.of(row),
            Optional.of(partner),
            strictness));
  }

  private void removed(Row row) {
    changes.add(
        new RowChange(
            ChangeKind.REMOVED,
            table.name(),
            table.narrowly(row),
            Optional.of(row),
            Optional.empty(),
            table.asOneMore(row).seenFromTheOther()));
  }

  private void added(Row row) {
    changes.add(
        new RowChange(
            ChangeKind.ADDED,
            table.name(),
            table.narrowly(row),
            Optional.empty(),
            Optional.of(row),
            table.asOneMore(row)));
  }
}
