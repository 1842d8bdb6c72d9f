package org.ensemblerules.tables.load;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.json.Faults;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;

/**
 * One table of one edition as its own files have it, before anything is carried over.
 *
 * @param <R> its rows
 */
final class EditionTable<R extends ComparableRow<R>> {
  private final TableType<R> type;
  private final OriginId edition;
  private final String firstFile;
  private final RowCount count;
  private final Map<String, Family<R>> families = new LinkedHashMap<>();
  private final List<TableFile.Removal> removes = new ArrayList<>();
  private Optional<TableFile.CarriesOver> carriesOver = Optional.empty();
  private boolean unconfirmed;
  private boolean sound = true;

  private EditionTable(TableType<R> type, OriginId edition, String firstFile, RowCount count) {
    this.type = type;
    this.edition = edition;
    this.firstFile = firstFile;
    this.count = count;
  }

  /**
   * Reads the rows of a table.
   *
   * @param files its files, at least one
   * @param complete whether all files of the edition could be told, so that none of this table is
   *     missing
   * @param count counts the rows of the whole set
   */
  static <R extends ComparableRow<R>> EditionTable<R> read(
      TableType<R> type,
      OriginId edition,
      List<TableFile> files,
      BasisReader bases,
      boolean complete,
      RowCount count) {
    EditionTable<R> table = new EditionTable<>(type, edition, files.get(0).head().file(), count);
    table.sound = complete;
    files.forEach(file -> table.add(file, bases));
    return table;
  }

  /**
   * Makes a table without files, which an edition carries over with all others.
   *
   * @param complete whether all files of the edition could be told, so that none of this table is
   *     missing
   * @param count counts the rows of the whole set
   */
  static <R extends ComparableRow<R>> EditionTable<R> carriedOver(
      TableType<R> type,
      OriginId edition,
      EditionFolder.Whole whole,
      boolean complete,
      RowCount count) {
    EditionTable<R> table = new EditionTable<>(type, edition, whole.revision().file(), count);
    table.sound = complete;
    table.carriesOver = Optional.of(whole.from());
    table.unconfirmed = whole.unconfirmed();
    return table;
  }

  private void add(TableFile file, BasisReader bases) {
    sound &= file.revision().isPresent();
    if (carriesOver.isPresent()) {
      file.carriesOver()
          .ifPresent(
              second ->
                  unsound(second.at(), "a second carriesOver", "one in all files of a table"));
    }
    carriesOver = carriesOver.or(file::carriesOver);
    unconfirmed |= file.unconfirmed();
    removes.addAll(file.removes());
    for (JsonCursor place : file.head().rows()) {
      Faults faults = place.faults();
      int before = faults.count();
      ObjectCursor row = place.object();
      FamilyHead head = FamilyHead.read(row, Optional.of(edition), file.head(), bases);
      List<R> rows = type.reader().read(head, row).orElse(List.of());
      if (!count.takes(rows.size(), place)) {
        sound = false;
        return;
      }
      head.key()
          .ifPresent(
              key ->
                  add(
                      new Family<>(
                          key, edition, row, rows, into -> unconfirmed(place, file, bases, into))));
      sound &= !faults.since(before);
    }
  }

  /** Reads an entry again, for an edition whose own text was not seen. */
  private List<R> unconfirmed(JsonCursor place, TableFile file, BasisReader bases, OriginId into) {
    ObjectCursor row = place.object();
    FamilyHead head = FamilyHead.read(row, Optional.of(edition), file.head(), bases);
    return type.reader().read(head.unconfirmedIn(into), row).orElse(List.of());
  }

  private void add(Family<R> family) {
    Family<R> first = families.putIfAbsent(family.key(), family);
    if (first != null) {
      JsonCursor at = first.place().at();
      family
          .place()
          .fault(
              FaultCode.DUPLICATE,
              "key",
              "a second family " + family.key(),
              "each key once; the first is " + at.source() + "#" + at.pointer());
    }
  }

  private void unsound(JsonCursor at, String found, String allowed) {
    at.fault(found, allowed);
    sound = false;
  }

  OriginId edition() {
    return edition;
  }

  TableType<R> type() {
    return type;
  }

  String firstFile() {
    return firstFile;
  }

  Optional<TableFile.CarriesOver> carriesOver() {
    return carriesOver;
  }

  /** Tells whether what it carries over is marked as not confirmed. */
  boolean unconfirmed() {
    return unconfirmed;
  }

  List<TableFile.Removal> removes() {
    return removes;
  }

  Map<String, Family<R>> families() {
    return families;
  }

  /** Tells whether its own files were read without a fault. */
  boolean isSound() {
    return sound;
  }
}
