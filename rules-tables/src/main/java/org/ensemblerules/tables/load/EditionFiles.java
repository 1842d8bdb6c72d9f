package org.ensemblerules.tables.load;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.source.EditionId;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.TableRevision;

/** The table files of all editions, by table and edition. */
final class EditionFiles {
  private final SetFiles files;
  private final List<TableRevision> revisions;
  private final Map<TableType<?>, Map<EditionId, List<TableFile>>> byTable = new LinkedHashMap<>();
  private final Set<EditionId> incomplete = new HashSet<>();
  private final RowCount count = new RowCount();

  /** Makes an empty collection that adds the heads of files to a list. */
  EditionFiles(SetFiles files, List<TableRevision> revisions) {
    this.files = files;
    this.revisions = revisions;
  }

  /** Opens the files of an edition. */
  void open(EditionFolder folder) {
    for (EditionFolder.Listed listed : folder.files()) {
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
        .computeIfAbsent(file.type(), type -> new LinkedHashMap<>())
        .computeIfAbsent(file.edition(), edition -> new ArrayList<>())
        .add(file);
  }

  /** Tells whether any edition has a table. */
  boolean has(TableType<?> type) {
    return byTable.containsKey(type);
  }

  /** Tells whether an edition surely lacks a table: none of its files is it, or could be. */
  boolean lack(TableType<?> type, EditionId edition) {
    return !byTable.getOrDefault(type, Map.of()).containsKey(edition)
        && !incomplete.contains(edition);
  }

  /** Reads the rows of a table of all editions. */
  <R extends Row> List<EditionTable<R>> tables(TableType<R> type, BasisReader bases) {
    List<EditionTable<R>> tables = new ArrayList<>();
    byTable
        .getOrDefault(type, Map.of())
        .forEach(
            (edition, list) ->
                tables.add(
                    EditionTable.read(
                        type, edition, list, bases, !incomplete.contains(edition), count)));
    return tables;
  }

  /** Returns what counts the rows of the whole set. */
  RowCount count() {
    return count;
  }
}
