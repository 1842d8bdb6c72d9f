package org.ensemblerules.tables.load;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;
import org.ensemblerules.tables.set.TableRevision;

/**
 * The folder of an edition: which files it has for which subject.
 *
 * @param edition the edition
 * @param editionAt where its name stands, for faults
 * @param whole the edition that it carries over whole; empty if it carries over table by table
 * @param files the files, in the order listed
 */
record EditionFolder(
    OriginId edition, JsonCursor editionAt, Optional<Whole> whole, List<Listed> files) {
  static final String FILE = "edition.json";
  private static final String WHOLE = "edition";

  /** A file, and where it is listed. */
  record Listed(Subject subject, String path, JsonCursor at) {}

  /**
   * What an edition says once of every table that it has no file of.
   *
   * @param from the edition that they are carried over from
   * @param unconfirmed whether they are marked as such, since its own text was not seen
   * @param revision the head, as shown
   */
  record Whole(TableFile.CarriesOver from, boolean unconfirmed, TableRevision revision) {}

  private record Name(OriginId edition, JsonCursor at) {}

  /** Reads the folder's list; what is faulty of it is left out, with a fault added. */
  static Optional<EditionFolder> read(String folder, JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Name> name =
        object.required(
            "edition", place -> ValueReaders.editionId(place).map(id -> new Name(id, place)));
    Optional<Whole> whole =
        object.optional("carriesOver", place -> name.flatMap(own -> whole(place, own.edition())));
    List<Listed> files = new ArrayList<>();
    object.required("tables", place -> list(folder, place, files));
    object.make(() -> files);
    return name.map(found -> new EditionFolder(found.edition(), found.at(), whole, files));
  }

  private static Optional<Whole> whole(JsonCursor at, OriginId edition) {
    ObjectCursor object = at.object();
    Optional<TableFile.CarriesOver> from =
        object.required(
            "edition",
            place -> ValueReaders.editionId(place).map(id -> new TableFile.CarriesOver(id, place)));
    boolean unconfirmed = object.optional("unconfirmed", JsonCursor::bool).orElse(false);
    Optional<Integer> revision =
        object.required("revision", place -> place.integer(1, Integer.MAX_VALUE));
    Optional<String> about = object.required("about", JsonCursor::text);
    Optional<List<String>> gaps =
        object.required("knownGaps", place -> place.list(JsonCursor::text));
    return object.make(
        () ->
            new Whole(
                from.orElseThrow(),
                unconfirmed,
                new TableRevision(
                    at.source(),
                    WHOLE,
                    Optional.of(edition),
                    revision.orElseThrow(),
                    about.orElseThrow(),
                    gaps.orElseThrow())));
  }

  private static Optional<List<Listed>> list(String folder, JsonCursor at, List<Listed> files) {
    ObjectCursor tables = at.object();
    Set<String> seen = new HashSet<>();
    for (Subject subject : Subject.values()) {
      for (JsonCursor place :
          tables.optional(subject.name(), EditionFolder::entries).orElse(List.of())) {
        Optional<String> file = SetFiles.fileName(place);
        if (file.isPresent() && !seen.add(file.get())) {
          place.fault(FaultCode.DUPLICATE, file.get() + " again", "each file once");
        } else {
          file.ifPresent(name -> files.add(new Listed(subject, folder + "/" + name, place)));
        }
      }
    }
    return tables.make(() -> files);
  }

  private static Optional<List<JsonCursor>> entries(JsonCursor at) {
    return Optional.of(at.entries());
  }
}
