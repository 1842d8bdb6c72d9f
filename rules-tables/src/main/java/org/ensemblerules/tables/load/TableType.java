package org.ensemblerules.tables.load;

import java.util.Optional;
import java.util.function.BiFunction;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.set.LoadedTables;

/**
 * A table that files have, and how its rows are read.
 *
 * @param kind which table it is
 * @param reader reads a family of its rows
 * @param heldBy makes a row that of an edition, which may have carried it over
 * @param <R> its rows
 */
record TableType<R extends ComparableRow<R>>(
    TableKind<R, ?> kind, FamilyReader<R> reader, BiFunction<R, OriginId, R> heldBy) {
  /** A table whose rows are the same in every edition that carries them over. */
  TableType(TableKind<R, ?> kind, FamilyReader<R> reader) {
    this(kind, reader, (row, edition) -> row);
  }

  String name() {
    return kind.name();
  }

  Subject subject() {
    return kind.subject();
  }

  /** The one body of rules that may have it; empty if every edition may. */
  Optional<OriginId> ofOnly() {
    return switch (kind.heldBy()) {
      case TRADE -> Optional.of(LoadedTables.TRADE);
      case LAW -> Optional.of(LoadedTables.LAW);
      case EDITIONS, PRODUCTS, OVERLAYS -> Optional.empty();
    };
  }

  @Override
  public String toString() {
    return name();
  }
}
