package org.ensemblerules.ruleset;

import com.google.common.collect.ImmutableMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.InvalidValueException;

/**
 * Compiled tables by their kinds. Immutable.
 *
 * @since 0.1
 */
public final class TableMap {
  private static final TableMap NONE = new TableMap(ImmutableMap.of());

  // Only with() puts tables in, each of the type of its kind.
  private final ImmutableMap<TableKind<?, ?>, Object> tables;

  private TableMap(Map<TableKind<?, ?>, Object> tables) {
    this.tables = ImmutableMap.copyOf(tables);
  }

  /**
   * Returns the map without tables.
   *
   * @return the map; never null
   */
  public static TableMap none() {
    return NONE;
  }

  /**
   * Returns these with another table, in place of one of the same kind.
   *
   * @param kind its kind; not null
   * @param table the table; not null
   * @param <T> its type
   * @return the changed tables; never null
   */
  public <T> TableMap with(TableKind<?, T> kind, T table) {
    Map<TableKind<?, ?>, Object> changed = new LinkedHashMap<>(tables);
    changed.put(kind.home(), Objects.requireNonNull(table, kind.name()));
    return new TableMap(changed);
  }

  /**
   * Finds the table of a kind.
   *
   * @param kind the kind; not null
   * @param <T> its type
   * @return the table; empty if there is none
   */
  @SuppressWarnings("unchecked") // with() put it in as such
  public <T> Optional<T> find(TableKind<?, T> kind) {
    return Optional.ofNullable((T) tables.get(kind.home()));
  }

  /**
   * Returns the table of a kind that is there.
   *
   * @param kind the kind; not null
   * @param <T> its type
   * @return the table; never null
   * @throws InvalidValueException if there is none
   */
  public <T> T of(TableKind<?, T> kind) {
    return find(kind)
        .orElseThrow(
            () -> new InvalidValueException("TableMap.kind", kind.name(), "one of " + kinds()));
  }

  /**
   * Returns the kinds that there are tables of.
   *
   * @return an unmodifiable set; never null
   */
  public Set<TableKind<?, ?>> kinds() {
    return tables.keySet();
  }

  /** These, and an empty table of each kind that is not among them. */
  TableMap completed() {
    TableMap all = this;
    for (TableKind<?, ?> kind : TableKinds.all()) {
      all = all.find(kind).isPresent() ? all : withEmpty(all, kind);
    }
    // Conditions are compiled by the checks that outrank others, which are theirs.
    return all.with(InspectionKinds.STRONGER_CHECKS, all.of(InspectionKinds.CONDITIONS).stronger());
  }

  private static <R extends ComparableRow<R>, T> TableMap withEmpty(
      TableMap tables, TableKind<R, T> kind) {
    return tables.with(kind, kind.compile(List.of(), tables).orElseThrow());
  }
}
