package org.ensemblerules.tables.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.NearestName;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;
import org.ensemblerules.tables.set.TableRevision;

/** Reads the table of editions. */
final class EditionsReader {
  static final String FILE = "editions.json";
  private static final String TABLE = "editions";

  /** The editions, and the head of their file. */
  record Editions(List<Edition> list, TableRevision revision) {
    Set<String> names() {
      return list.stream()
          .map(edition -> edition.id().value())
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  private record Read(ObjectCursor row, Edition edition) {}

  private EditionsReader() {}

  static Optional<Editions> read(JsonCursor at, BasisReader bases) {
    ObjectCursor file = at.object();
    file.required("table", name -> name.named(Map.of(TABLE, TABLE)));
    FileHead head = FileHead.read(file);
    List<Read> read = new ArrayList<>();
    for (JsonCursor place : head.rows()) {
      ObjectCursor row = place.object();
      FamilyHead family = FamilyHead.read(row, Optional.empty(), head, bases);
      edition(family, row).ifPresent(edition -> read.add(new Read(row, edition)));
    }
    if (read.size() == head.rows().size()) {
      checkTogether(read);
    }
    return file.make(
        () ->
            new Editions(
                read.stream().map(Read::edition).toList(), head.revision(TABLE, Optional.empty())));
  }

  private static Optional<Edition> edition(FamilyHead head, ObjectCursor row) {
    Optional<OriginId> id = row.required("id", ValueReaders::editionId);
    Optional<Integer> order = row.required("order", at -> at.integer(1, Integer.MAX_VALUE));
    Optional<String> title = row.required("title", JsonCursor::text);
    Optional<LocalDate> effective = row.optional("effective", ValueReaders::day);
    Optional<OriginId> into = row.optional("consolidatedInto", ValueReaders::editionId);
    Optional<LocalDate> notBefore = row.optional("notBefore", ValueReaders::day);
    return row.make(
        () ->
            new Edition(
                head.from(id.orElseThrow()).provenance(),
                id.orElseThrow(),
                order.orElseThrow(),
                title.orElseThrow(),
                effective,
                into,
                notBefore));
  }

  private static void checkTogether(List<Read> read) {
    Map<OriginId, Edition> ids = new HashMap<>();
    Set<Integer> orders = new HashSet<>();
    Set<String> keys = new HashSet<>();
    for (Read each : read) {
      Edition edition = each.edition();
      if (ids.putIfAbsent(edition.id(), edition) != null) {
        each.row()
            .fault(
                FaultCode.DUPLICATE, "id", "a second edition " + edition.id(), "each edition once");
      }
      if (!orders.add(edition.order())) {
        each.row()
            .fault(
                FaultCode.DUPLICATE,
                "order",
                "a second edition at " + edition.order(),
                "each place once");
      }
      if (!keys.add(edition.key().value())) {
        each.row()
            .fault(FaultCode.DUPLICATE, "key", "a second row " + edition.key(), "each key once");
      }
    }
    List<String> names = ids.keySet().stream().map(OriginId::value).sorted().toList();
    for (Read each : read) {
      each.edition()
          .consolidatedInto()
          .filter(into -> !ids.containsKey(into))
          .ifPresent(
              into ->
                  each.row()
                      .fault(
                          "consolidatedInto",
                          "unknown edition " + into,
                          NearestName.allowed(into.value(), names)));
    }
  }
}
