package org.ensemblerules.tables.load;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.EditionId;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/**
 * The folder of an edition: which files it has for which subject.
 *
 * @param edition the edition
 * @param editionAt where its name stands, for faults
 * @param files the files, in the order listed
 */
record EditionFolder(EditionId edition, JsonCursor editionAt, List<Listed> files) {
  static final String FILE = "edition.json";

  /** A file, and where it is listed. */
  record Listed(Subject subject, String path, JsonCursor at) {}

  private record Name(EditionId edition, JsonCursor at) {}

  /** Reads the folder's list; what is faulty of it is left out, with a fault added. */
  static Optional<EditionFolder> read(String folder, JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Name> name =
        object.required(
            "edition", place -> ValueReaders.editionId(place).map(id -> new Name(id, place)));
    List<Listed> files = new ArrayList<>();
    object.required("tables", place -> list(folder, place, files));
    object.make(() -> files);
    return name.map(found -> new EditionFolder(found.edition(), found.at(), files));
  }

  private static Optional<List<Listed>> list(String folder, JsonCursor at, List<Listed> files) {
    ObjectCursor tables = at.object();
    Set<String> seen = new HashSet<>();
    for (Subject subject : Subject.values()) {
      for (JsonCursor place :
          tables.optional(subject.name(), EditionFolder::entries).orElse(List.of())) {
        Optional<String> file = SetFiles.fileName(place);
        if (file.isPresent() && !seen.add(file.get())) {
          place.fault(file.get() + " again", "each file once");
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
