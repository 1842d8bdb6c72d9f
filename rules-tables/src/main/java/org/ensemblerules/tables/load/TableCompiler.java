package org.ensemblerules.tables.load;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import org.ensemblerules.ruleset.HeldBy;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.TableMap;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.json.Faults;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.EditionTables;
import org.ensemblerules.tables.set.LoadedTables;

/**
 * Reads, completes and compiles the tables of all editions, each table after the one that it is
 * compiled by: one of the trade's, or one of the same edition.
 */
final class TableCompiler {
  private final EditionFiles files;
  private final BasisReader bases;
  private final Faults faults;
  private final Predicate<OriginId> wanted;
  private final Map<OriginId, TableMap> editions = new LinkedHashMap<>();

  TableCompiler(EditionFiles files, BasisReader bases, Faults faults, Predicate<OriginId> wanted) {
    this.wanted = wanted;
    this.files = files;
    this.bases = bases;
    this.faults = faults;
  }

  /** Compiles the tables of editions. */
  List<EditionTables> compile(Collection<OriginId> all) {
    all.forEach(edition -> editions.put(edition, TableMap.none()));
    TableTypes.all().forEach(type -> compile(type));
    return editions.entrySet().stream()
        .map(each -> EditionTables.of(each.getKey(), each.getValue()))
        .toList();
  }

  private <R extends ComparableRow<R>> void compile(TableType<R> type) {
    boolean byEdition = type.kind().heldBy() == HeldBy.EDITIONS;
    compile(
        type,
        type.kind(),
        CarryOver.complete(files.tables(type, bases), files.count()).stream()
            .filter(table -> !byEdition || wanted.test(table.own().edition()))
            .toList());
  }

  private <R extends ComparableRow<R>, T> void compile(
      TableType<R> type, TableKind<R, T> kind, Collection<CarryOver.Completed<R>> tables) {
    Optional<TableKind<?, ?>> base = kind.base();
    Compilation.run(
        base.isPresent() ? withBase(tables, type, base.get()) : tables,
        (edition, rows) ->
            kind.compile(
                rows.stream().map(row -> type.heldBy().apply(row, edition)).toList(),
                base.map(by -> knownWith(edition, by)).orElse(known(edition))),
        (edition, table) -> editions.put(edition, known(edition).with(kind, table)),
        faults);
  }

  private TableMap known(OriginId edition) {
    return Objects.requireNonNull(editions.get(edition), "its folder was read");
  }

  private <B> TableMap knownWith(OriginId edition, TableKind<?, B> base) {
    return known(edition).with(base, known(holder(base, edition)).of(base));
  }

  private static OriginId holder(TableKind<?, ?> base, OriginId edition) {
    return base.heldBy() == HeldBy.TRADE ? LoadedTables.TRADE : edition;
  }

  /** The tables whose base is there; what surely lacks it is a fault. */
  private <R extends ComparableRow<R>> List<CarryOver.Completed<R>> withBase(
      Collection<CarryOver.Completed<R>> tables, TableType<R> type, TableKind<?, ?> base) {
    boolean ofTrade = base.heldBy() == HeldBy.TRADE;
    if (ofTrade && !tables.isEmpty() && !files.has(base)) {
      faults.add(
          new JsonFault(
              FaultCode.MISSING,
              TableSetReader.INDEX,
              "/folders",
              "no table " + base + " for the table " + type,
              "a folder of edition " + LoadedTables.TRADE + " with a table " + base));
    }
    List<CarryOver.Completed<R>> sound = new ArrayList<>();
    for (CarryOver.Completed<R> table : tables) {
      OriginId edition = table.own().edition();
      TableMap held = editions.getOrDefault(holder(base, edition), TableMap.none());
      if (held.find(base).isPresent()) {
        sound.add(table);
      } else if (!ofTrade && files.lack(base, edition)) {
        faults.add(
            new JsonFault(
                FaultCode.MISSING,
                table.own().firstFile(),
                "/table",
                type + " of " + edition + " without " + base,
                "a table " + base + " of the same edition"));
      }
    }
    return sound;
  }
}
