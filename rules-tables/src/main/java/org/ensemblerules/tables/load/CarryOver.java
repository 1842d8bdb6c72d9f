package org.ensemblerules.tables.load;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.json.NearestName;

/**
 * Completes the tables of a type, each from the edition that it carries over, through any number of
 * editions. A family with a key of its base takes the place of the base's family.
 *
 * @param <R> the rows
 */
final class CarryOver<R extends ComparableRow<R>> {
  /**
   * A completed table.
   *
   * @param own the table's own files
   * @param base the completed table it carries over; empty if none
   * @param families all families by key, those of the base first
   * @param sound whether no file that it draws on had a fault
   */
  record Completed<R extends ComparableRow<R>>(
      EditionTable<R> own,
      Optional<Completed<R>> base,
      Map<String, Family<R>> families,
      boolean sound) {
    int size() {
      return families.values().stream().mapToInt(family -> family.rows().size()).sum();
    }

    List<R> rows() {
      return families.values().stream().flatMap(family -> family.rows().stream()).toList();
    }
  }

  private final Map<OriginId, EditionTable<R>> tables = new LinkedHashMap<>();
  private final Map<OriginId, Completed<R>> done = new LinkedHashMap<>();
  private final RowCount count;

  private CarryOver(Collection<EditionTable<R>> tables, RowCount count) {
    this.count = count;
    tables.forEach(table -> this.tables.put(table.edition(), table));
  }

  /** Completes tables of one type, of which each edition has at most one. */
  static <R extends ComparableRow<R>> Collection<Completed<R>> complete(
      Collection<EditionTable<R>> tables, RowCount count) {
    CarryOver<R> carryOver = new CarryOver<>(tables, count);
    carryOver.tables.values().forEach(carryOver::complete);
    return carryOver.done.values();
  }

  private Completed<R> complete(EditionTable<R> table) {
    Completed<R> known = done.get(table.edition());
    if (known != null) {
      return known;
    }
    Optional<TableFile.CarriesOver> from =
        table.carriesOver().filter(named -> !endsNowhere(table, named));
    Optional<Completed<R>> base =
        from.map(named -> tables.get(named.edition()))
            .map(this::complete)
            .filter(carried -> count.takes(carried.size(), from.orElseThrow().at()));
    boolean lost = table.carriesOver().isPresent() && base.isEmpty();
    Map<String, Family<R>> families = new LinkedHashMap<>();
    base.ifPresent(
        carried ->
            carried
                .families()
                .forEach(
                    (key, family) ->
                        families.put(
                            key,
                            table.unconfirmed() ? family.carriedInto(table.edition()) : family)));
    boolean baseSound = !lost && base.map(Completed::sound).orElse(true);
    boolean sound = table.isSound() && baseSound;
    for (TableFile.Removal removal : table.removes()) {
      if (families.remove(removal.key()) == null && baseSound && base.isPresent()) {
        sound = false;
        removal
            .at()
            .fault("no family " + removal.key() + " to remove", removable(removal, base.get()));
      }
    }
    families.putAll(table.families());
    Completed<R> completed = new Completed<>(table, base, families, sound);
    done.put(table.edition(), completed);
    return completed;
  }

  private String removable(TableFile.Removal removal, Completed<R> base) {
    return NearestName.allowed(
        removal.key(),
        base.families().keySet(),
        "the key of a family that is carried over, each once");
  }

  /** Tells whether a chain of editions names one that is not there, or comes back to itself. */
  private boolean endsNowhere(EditionTable<R> table, TableFile.CarriesOver first) {
    List<OriginId> chain = new ArrayList<>(List.of(table.edition()));
    Optional<TableFile.CarriesOver> next = Optional.of(first);
    while (next.isPresent()) {
      OriginId from = next.get().edition();
      boolean again = chain.contains(from);
      chain.add(from);
      if (again) {
        // Each edition on the circle says so; those that only lead into it are lost with it.
        if (from.equals(table.edition())) {
          first.at().fault(names(chain), "a chain of editions that ends");
        }
        return true;
      }
      EditionTable<R> base = tables.get(from);
      if (base == null) {
        if (chain.size() == 2) {
          unknown(table, first);
        }
        return true;
      }
      next = base.carriesOver();
    }
    return false;
  }

  private void unknown(EditionTable<R> table, TableFile.CarriesOver from) {
    List<String> others =
        tables.keySet().stream()
            .filter(edition -> !edition.equals(table.edition()))
            .map(OriginId::value)
            .toList();
    from.at()
        .fault(
            "no table " + table.type() + " of edition " + from.edition(),
            NearestName.allowed(from.edition().value(), others));
  }

  private static String names(List<OriginId> chain) {
    return chain.stream().map(OriginId::value).collect(Collectors.joining(" from "));
  }
}
