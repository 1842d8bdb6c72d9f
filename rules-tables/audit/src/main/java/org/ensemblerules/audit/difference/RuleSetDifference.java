package org.ensemblerules.audit.difference;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ListMultimap;
import com.google.common.collect.MultimapBuilder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.source.Row;

/**
 * What differs between two sets of rules, row by row. Rows are matched by what they speak of, as
 * element, use, part, defect and extent, and by their keys only where that leaves a choice. Where
 * an order of strictness is defined, a changed row is said to be tightened or loosened.
 *
 * @since 0.1
 */
public final class RuleSetDifference {
  private final Identity before;
  private final Identity after;
  private final List<RowChange> changes;

  private RuleSetDifference(Identity before, Identity after, List<RowChange> changes) {
    this.before = before;
    this.after = after;
    this.changes = changes;
  }

  static List<RowChange> changes(List<? extends Row> before, List<? extends Row> after) {
    ListMultimap<Class<?>, Row> were = byType(before);
    ListMultimap<Class<?>, Row> are = byType(after);
    ImmutableList.Builder<RowChange> all = ImmutableList.builder();
    for (ComparedTable<?> table : ComparedTable.ALL) {
      List<RowChange> found =
          new ArrayList<>(
              Matching.of(table, were.removeAll(table.type()), are.removeAll(table.type())));
      found.sort(
          Comparator.comparing(RowChange::kind)
              .thenComparing(change -> String.join("\n", change.topic()))
              .thenComparing(RowChange::text));
      all.addAll(found);
    }
    requireNoOther(were);
    requireNoOther(are);
    return all.build();
  }

  private static ListMultimap<Class<?>, Row> byType(List<? extends Row> rows) {
    ListMultimap<Class<?>, Row> byType = MultimapBuilder.hashKeys().arrayListValues().build();
    rows.forEach(row -> byType.put(row.getClass(), row));
    return byType;
  }

  /** A kind of row that nothing is said about here would be a difference passed over in silence. */
  private static void requireNoOther(ListMultimap<Class<?>, Row> rows) {
    if (!rows.isEmpty()) {
      throw new IllegalStateException("no table of rows of " + rows.keySet());
    }
  }

  /**
   * Compares two sets of rules.
   *
   * @param before the earlier; not null
   * @param after the later; not null
   * @return what differs; never null
   */
  public static RuleSetDifference between(GearRules before, GearRules after) {
    return new RuleSetDifference(
        before.identity(), after.identity(), changes(rows(before), rows(after)));
  }

  /** The editions chosen are rows too. */
  private static List<Row> rows(GearRules rules) {
    return ImmutableList.<Row>builder()
        .addAll(rules.editions().values().stream().distinct().toList())
        .addAll(rules.tables().rows())
        .build();
  }

  /**
   * Returns which rules the earlier are.
   *
   * @return the identity; never null
   */
  public Identity before() {
    return before;
  }

  /**
   * Returns which rules the later are.
   *
   * @return the identity; never null
   */
  public Identity after() {
    return after;
  }

  /**
   * Returns every row that differs.
   *
   * @return the changes, table by table, in an order that depends on the two sets alone; never null
   */
  public List<RowChange> changes() {
    return changes;
  }

  /**
   * Returns the rows that something became of.
   *
   * @param kind what; not null
   * @return the changes of that kind, in order; never null
   */
  public List<RowChange> changes(ChangeKind kind) {
    return changes.stream()
        .filter(change -> change.kind() == kind)
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * Tells whether nothing differs that a reader of the rows is told.
   *
   * @return true if no row was added, removed, changed or reworded
   */
  public boolean isEmpty() {
    return changes.isEmpty();
  }

  /**
   * Counts the changes of each table by their kind.
   *
   * @return the tables with changes, in order, each with the kinds that it has; never null
   */
  public Map<String, Map<ChangeKind, Integer>> counts() {
    Map<String, Map<ChangeKind, Integer>> counts = new LinkedHashMap<>();
    for (RowChange change : changes) {
      counts
          .computeIfAbsent(change.table(), table -> new EnumMap<>(ChangeKind.class))
          .merge(change.kind(), 1, Integer::sum);
    }
    counts.replaceAll((table, kinds) -> Collections.unmodifiableMap(kinds));
    return Collections.unmodifiableMap(counts);
  }

  @Override
  public String toString() {
    return "RuleSetDifference[" + counts() + "]";
  }
}
