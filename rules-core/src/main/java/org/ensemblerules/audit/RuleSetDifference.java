package org.ensemblerules.audit;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Row;

/**
 * What differs between two sets of rules, row by row. Rows are held against each other by what they
 * speak of: the element, the part, the defect and its extent, and so on. Where no order of
 * strictness is defined, a row that says something else is only changed.
 *
 * @param changes every row that differs, by table and key; not null
 */
public record RuleSetDifference(List<RowChange> changes) {
  private static final Comparator<RowChange> ORDER =
      Comparator.comparing(RowChange::table)
          .thenComparing(change -> change.row().key())
          .thenComparing(RowChange::kind)
          .thenComparing(change -> change.row().provenance().origin().value())
          .thenComparing(change -> String.join("\n", change.row().canonical()));

  /** Puts the changes in order. */
  public RuleSetDifference {
    changes = changes.stream().sorted(ORDER).collect(ImmutableList.toImmutableList());
  }

  /**
   * Compares two sets of rules.
   *
   * @param before the set before; not null
   * @param after the set after; not null
   * @return what differs; never null
   */
  public static RuleSetDifference between(RuleSet before, RuleSet after) {
    return between(before.tables().rows(), after.tables().rows());
  }

  static RuleSetDifference between(List<Row> before, List<Row> after) {
    Map<Object, List<Row>> old = bySubject(before);
    Map<Object, List<Row>> current = bySubject(after);
    List<RowChange> changes = new ArrayList<>();
    old.forEach((about, rows) -> compare(rows, current.getOrDefault(about, List.of()), changes));
    current.forEach(
        (about, rows) -> {
          if (!old.containsKey(about)) {
            compare(List.of(), rows, changes);
          }
        });
    return new RuleSetDifference(changes);
  }

  private static Map<Object, List<Row>> bySubject(List<Row> rows) {
    Map<Object, List<Row>> subjects = new LinkedHashMap<>();
    for (Row row : rows) {
      Meaning meaning = Meaning.of(row);
      subjects
          .computeIfAbsent(List.of(meaning.table(), meaning.about()), each -> new ArrayList<>())
          .add(row);
    }
    return subjects;
  }

  /** Rows that speak of the same: those that say the same, of one key, more or less strict. */
  private static void compare(List<Row> before, List<Row> after, List<RowChange> changes) {
    List<Row> old = sorted(before);
    List<Row> current = sorted(after);
    match(old, current, RuleSetDifference::same, changes);
    match(old, current, (one, two) -> one.key().equals(two.key()), changes);
    match(old, current, (one, two) -> Strictness.compare(one, two) != ChangeKind.CHANGED, changes);
    match(old, current, (one, two) -> true, changes);
    old.forEach(
        row -> changes.add(new RowChange(ChangeKind.REMOVED, Optional.of(row), Optional.empty())));
    current.forEach(
        row -> changes.add(new RowChange(ChangeKind.ADDED, Optional.empty(), Optional.of(row))));
  }

  private static List<Row> sorted(List<Row> rows) {
    return new ArrayList<>(
        rows.stream()
            .sorted(
                Comparator.comparing(Row::key)
                    .thenComparing(row -> String.join("\n", row.canonical())))
            .toList());
  }

  private interface Pairing {
    boolean pairs(Row before, Row after);
  }

  private static void match(
      List<Row> before, List<Row> after, Pairing pairing, List<RowChange> changes) {
    for (Iterator<Row> olds = before.iterator(); olds.hasNext(); ) {
      Row old = olds.next();
      for (Iterator<Row> news = after.iterator(); news.hasNext(); ) {
        Row current = news.next();
        if (pairing.pairs(old, current)) {
          olds.remove();
          news.remove();
          kind(old, current)
              .ifPresent(
                  kind -> changes.add(new RowChange(kind, Optional.of(old), Optional.of(current))));
          break;
        }
      }
    }
  }

  private static boolean same(Row one, Row two) {
    return Meaning.of(one).equals(Meaning.of(two));
  }

  /** How a pair differs; empty if it does not. */
  private static Optional<ChangeKind> kind(Row before, Row after) {
    if (!same(before, after)) {
      return Optional.of(Strictness.compare(before, after));
    }
    boolean words =
        before.canonical().equals(after.canonical())
            && before.provenance().basis().equals(after.provenance().basis())
            && before.provenance().note().equals(after.provenance().note());
    return words ? Optional.empty() : Optional.of(ChangeKind.REWORDED);
  }

  /**
   * Returns the changes of a kind.
   *
   * @param kind the kind; not null
   * @return the changes by table and key; never null
   */
  public List<RowChange> of(ChangeKind kind) {
    return changes.stream().filter(change -> change.kind() == kind).toList();
  }

  /**
   * Counts the changes of each table by their kind.
   *
   * @return for each table with a change, how many there are of each kind that occurs; never null
   */
  public Map<String, Map<ChangeKind, Integer>> counts() {
    Map<String, Map<ChangeKind, Integer>> counts = new TreeMap<>();
    for (RowChange change : changes) {
      counts
          .computeIfAbsent(change.table(), table -> new EnumMap<>(ChangeKind.class))
          .merge(change.kind(), 1, Integer::sum);
    }
    return counts;
  }
}
