package org.ensemblerules.issue;

import com.google.common.collect.ImmutableList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.InvalidValueException;

/**
 * What a set must have for a use, and where its elements must be shown to meet.
 *
 * @since 0.1
 */
public final class SetTable {
  private final ImmutableList<SetRow> rows;
  private final ImmutableList<Join> joins;

  private SetTable(List<SetRow> rows, List<Join> joins) {
    this.rows = ImmutableList.copyOf(rows);
    this.joins = ImmutableList.copyOf(joins);
  }

  /**
   * Makes a table.
   *
   * @param rows what a set must have; a use without a row has no complete set; not null
   * @param joins where its elements must be shown to meet; not null
   * @return the table; never null
   * @throws InvalidValueException if two joins stand for one place and use
   */
  public static SetTable of(List<SetRow> rows, List<Join> joins) {
    Set<String> seen = new HashSet<>();
    for (Join join : joins) {
      InvalidValueException.require(
          seen.add(join.use() + " " + join.place()),
          "SetTable.joins",
          join.use() + " " + join.place(),
          "each place once for each use");
    }
    return new SetTable(rows, joins);
  }

  /**
   * Returns what a set must have.
   *
   * @param use the use; not null
   * @return the rows in the order given; never null
   */
  public List<SetRow> rows(Use use) {
    return rows.stream().filter(row -> row.use() == use).toList();
  }

  /**
   * Returns where the elements of a set must be shown to meet.
   *
   * @param use the use; not null
   * @return the joins in the order given; never null
   */
  public List<Join> joins(Use use) {
    return joins.stream().filter(join -> join.use() == use).toList();
  }

  /**
   * Tells whether a set for a use has a place for a kind of element.
   *
   * @param use the use; not null
   * @param kind the kind; not null
   * @return true if some way takes it
   */
  public boolean takes(Use use, ElementKind kind) {
    return rows(use).stream()
        .flatMap(row -> row.ways().stream())
        .anyMatch(way -> way.contains(kind));
  }
}
