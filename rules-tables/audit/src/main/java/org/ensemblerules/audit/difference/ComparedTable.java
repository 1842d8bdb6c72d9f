package org.ensemblerules.audit.difference;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.TableKinds;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.Row;

/**
 * A table whose rows are compared between two sets of rules. How rows compare, they say themselves.
 *
 * @param type the type of its rows; not null
 * @param name its name, as files have it; not null
 * @param <R> the type of its rows
 */
record ComparedTable<R extends ComparableRow<R>>(Class<R> type, String name) {
  /** All tables, in the order in which differences are told. */
  static final List<ComparedTable<?>> ALL =
      Stream.concat(
              Stream.of(new ComparedTable<>(Edition.class, "editions")),
              TableKinds.all().stream().map(ComparedTable::of))
          .collect(ImmutableList.toImmutableList());

  private static <R extends ComparableRow<R>> ComparedTable<R> of(TableKind<R, ?> kind) {
    return new ComparedTable<>(kind.rowType(), kind.name());
  }

  /** The table that has rows of the type of this one. */
  static ComparedTable<?> of(Row row) {
    return ALL.stream()
        .filter(table -> table.type.isInstance(row))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no table of rows of " + row.getClass()));
  }

  List<String> topic(Row row) {
    return type.cast(row).topic();
  }

  /** The topic with what narrows it. */
  List<String> narrowly(Row row) {
    List<String> all = new ArrayList<>(topic(row));
    all.addAll(type.cast(row).narrowedTo());
    return all;
  }

  List<String> meaning(Row row) {
    return type.cast(row).meaning();
  }

  Comparison asOneMore(Row row) {
    return type.cast(row).asOneMore();
  }

  /** How strict the later row is, set against the earlier; other words ask for the same. */
  Comparison compare(Row earlier, Row later) {
    return meaning(earlier).equals(meaning(later))
        ? Comparison.SAME
        : type.cast(later).compareStrictness(type.cast(earlier));
  }
}
