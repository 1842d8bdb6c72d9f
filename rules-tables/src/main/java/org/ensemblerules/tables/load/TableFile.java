package org.ensemblerules.tables.load;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;
import org.ensemblerules.tables.set.TableRevision;

/**
 * One file of a table of an edition, its rows not read yet.
 *
 * @param type which table it is
 * @param edition the edition it is for, as its folder has it
 * @param head what every file has
 * @param revision the head as shown; empty if it is faulty
 * @param carriesOver the edition whose rows it carries over; empty if it carries none over
 * @param unconfirmed whether what it carries over is marked as such, since its own text was not
 *     seen
 * @param removes the families that it does not carry over
 */
record TableFile(
    TableType<?> type,
    OriginId edition,
    FileHead head,
    Optional<TableRevision> revision,
    Optional<CarriesOver> carriesOver,
    boolean unconfirmed,
    List<Removal> removes) {
  /** The edition that rows come from, and where it is named. */
  record CarriesOver(OriginId edition, JsonCursor at) {}

  /** The key of a family that is not carried over, and where it is named. */
  record Removal(String key, JsonCursor at) {}

  /**
   * Reads the head of a file.
   *
   * @return the file, also if other parts of its head are faulty; empty if it does not say which
   *     table it is
   */
  static Optional<TableFile> read(
      JsonCursor at, EditionFolder folder, EditionFolder.Listed listed) {
    ObjectCursor file = at.object();
    Optional<TableType<?>> type = file.required("table", name -> table(name, folder, listed));
    file.required("edition", name -> edition(name, folder.edition()));
    FileHead head = FileHead.read(file);
    Optional<CarriesOver> carriesOver =
        file.optional(
            "carriesOver",
            name -> ValueReaders.editionId(name).map(id -> new CarriesOver(id, name)));
    Optional<List<Removal>> removes =
        file.optional(
            "removes",
            names -> names.list(name -> FamilyHead.key(name).map(key -> new Removal(key, name))));
    if (file.has("removes") && !file.has("carriesOver")) {
      file.fault(
          "removes", "removes without carriesOver", "no removes, or an edition to carry over");
    }
    boolean unconfirmed = file.optional("unconfirmed", JsonCursor::bool).orElse(false);
    if (unconfirmed && !file.has("carriesOver")) {
      file.fault(
          "unconfirmed",
          "unconfirmed without carriesOver",
          "no unconfirmed, or an edition to carry over");
    }
    Optional<TableRevision> revision =
        file.make(() -> head.revision(type.orElseThrow().name(), Optional.of(folder.edition())));
    return type.map(
        known ->
            new TableFile(
                known,
                folder.edition(),
                head,
                revision,
                carriesOver,
                unconfirmed,
                removes.orElse(List.of())));
  }

  private static Optional<TableType<?>> table(
      JsonCursor at, EditionFolder folder, EditionFolder.Listed listed) {
    Optional<TableType<?>> type = at.named(TableTypes.named());
    if (type.isPresent() && type.get().subject() != listed.subject()) {
      listed
          .at()
          .fault(
              "table " + type.get() + " under " + listed.subject(),
              "tables of " + listed.subject() + ": " + namesOf(listed));
    }
    type.flatMap(TableType::ofOnly)
        .filter(only -> !folder.edition().equals(only))
        .ifPresent(
            only ->
                at.fault(
                    "a table " + type.get() + " of " + folder.edition(),
                    "one of " + only + " only"));
    return type;
  }

  private static String namesOf(EditionFolder.Listed listed) {
    return TableTypes.named().values().stream()
        .filter(type -> type.subject() == listed.subject())
        .map(TableType::name)
        .collect(Collectors.joining(", "));
  }

  private static Optional<OriginId> edition(JsonCursor at, OriginId expected) {
    Optional<OriginId> given = ValueReaders.editionId(at);
    return given.isPresent() && !given.get().equals(expected)
        ? at.mismatch(expected + ", the edition of its folder")
        : given;
  }
}
