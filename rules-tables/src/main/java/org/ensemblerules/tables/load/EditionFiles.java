package org.ensemblerules.tables.load;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.set.TableRevision;

/** The table files of all editions, by table and edition. */
final class EditionFiles {
  private final SetFiles files;
  private final List<TableRevision> revisions;
  private final Map<TableKind<?, ?>, Map<OriginId, List<TableFile>>> byTable =
      new LinkedHashMap<>();
  private final Set<OriginId> incomplete = new HashSet<>();
  private final Map<OriginId, EditionFolder.Whole> whole = new LinkedHashMap<>();
  private final RowCount count = new RowCount();

  /** Makes an empty collection that adds the heads of files to a list. */
  EditionFiles(SetFiles files, List<TableRevision> revisions) {
    this.files = files;
    this.revisions = revisions;
  }

  /** Opens those files of an edition that are wanted. */
  void open(EditionFolder folder, Predicate<EditionFolder.Listed> wanted) {
    folder
        .whole()
        .ifPresent(
            all -> {
              revisions.add(all.revision());
              whole.put(folder.edition(), all);
            });
    for (EditionFolder.Listed listed : folder.files()) {
      if (!wanted.test(listed)) {
        continue;
      }
      Optional<TableFile> read =
          files.open(listed.path(), listed.at()).flatMap(at -> TableFile.read(at, folder, listed));
      if (read.isEmpty()) {
        incomplete.add(folder.edition());
      }
      read.ifPresent(this::add);
    }
  }

  private void add(TableFile file) {
    file.revision().ifPresent(revisions::add);
    byTable
        .computeIfAbsent(file.type().kind(), kind -> new LinkedHashMap<>())
        .computeIfAbsent(file.edition(), edition -> new ArrayList<>())
        .add(file);
  }

  /** Tells whether any edition has a table. */
  boolean has(TableKind<?, ?> kind) {
    return byTable.containsKey(kind);
  }

  /** Tells whether an edition surely lacks a table: none of its files is it, or could be. */
  boolean lack(TableKind<?, ?> kind, OriginId edition) {
    return !holds(kind, edition) && !incomplete.contains(edition);
  }

  /** Tells whether an edition has a table, be it one that it carries over with all others. */
  private boolean holds(TableKind<?, ?> kind, OriginId edition) {
    Map<OriginId, List<TableFile>> own = byTable.getOrDefault(kind, Map.of());
    Set<OriginId> passed = new HashSet<>();
    Optional<OriginId> at = Optional.of(edition);
    while (at.isPresent() && passed.add(at.get())) {
      if (own.containsKey(at.get())) {
        return true;
      }
      at = Optional.ofNullable(whole.get(at.get())).map(all -> all.from().edition());
    }
    return false;
  }

  /** The editions that an edition names to carry tables over from, in its opened files. */
  Set<OriginId> bases(OriginId edition) {
    Set<OriginId> bases = new LinkedHashSet<>();
    Optional.ofNullable(whole.get(edition)).ifPresent(all -> bases.add(all.from().edition()));
    byTable
        .values()
        .forEach(
            editions ->
                editions.getOrDefault(edition, List.of()).stream()
                    .flatMap(file -> file.carriesOver().stream())
                    .forEach(from -> bases.add(from.edition())));
    return bases;
  }

  /** Reads the rows of a table of all editions whose files are open. */
  <R extends ComparableRow<R>> List<EditionTable<R>> tables(TableType<R> type, BasisReader bases) {
    List<EditionTable<R>> tables = new ArrayList<>();
    Map<OriginId, List<TableFile>> own = byTable.getOrDefault(type.kind(), Map.of());
    own.forEach(
        (edition, list) ->
            tables.add(
                EditionTable.read(
                    type, edition, list, bases, !incomplete.contains(edition), count)));
    whole.forEach(
        (edition, all) -> {
          if (!own.containsKey(edition) && holds(type.kind(), edition)) {
            tables.add(
                EditionTable.carriedOver(type, edition, all, !incomplete.contains(edition), count));
          }
        });
    return tables;
  }

  /** Returns what counts the rows of the whole set. */
  RowCount count() {
    return count;
  }
}
