package org.ensemblerules.tables.load;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ensemblerules.source.EditionId;
import org.ensemblerules.tables.EditionTables;
import org.ensemblerules.tables.Loaded;
import org.ensemblerules.tables.LoadedTables;
import org.ensemblerules.tables.TableFiles;
import org.ensemblerules.tables.TableRevision;
import org.ensemblerules.tables.json.Faults;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.NearestName;
import org.ensemblerules.tables.json.ObjectCursor;

/**
 * Reads a set of table files: the index, the sources, the editions, then every edition's tables.
 */
public final class TableSetReader {
  static final String INDEX = "index.json";

  private static final int MOST_FOLDERS = 200;

  private final Faults faults = new Faults();
  private final SetFiles files;
  private final List<TableRevision> revisions = new ArrayList<>();

  private TableSetReader(TableFiles files) {
    this.files = new SetFiles(files, faults);
  }

  /** Reads a set. */
  public static Loaded<LoadedTables> read(TableFiles files) {
    return new TableSetReader(files).read();
  }

  private Loaded<LoadedTables> read() {
    List<JsonCursor> folders = files.open(INDEX).map(TableSetReader::index).orElse(List.of());
    Optional<SourcesReader.Sources> sources =
        files.open(SourcesReader.FILE).flatMap(SourcesReader::read);
    BasisReader bases = new BasisReader(sources.map(SourcesReader.Sources::byId));
    Optional<EditionsReader.Editions> editions =
        files.open(EditionsReader.FILE).flatMap(at -> EditionsReader.read(at, bases));
    sources.ifPresent(read -> revisions.add(read.revision()));
    editions.ifPresent(read -> revisions.add(read.revision()));

    EditionFiles listed = new EditionFiles(files, revisions);
    Map<EditionId, String> seen = new LinkedHashMap<>();
    for (JsonCursor place : folders) {
      SetFiles.folderName(place)
          .flatMap(name -> folder(name, place))
          .filter(folder -> isNew(folder, seen))
          .ifPresent(
              folder -> {
                editions.ifPresent(read -> checkListed(folder, read));
                listed.open(folder);
              });
    }
    List<EditionTables> tables = new TableCompiler(listed, bases, faults).compile(seen.keySet());
    return faults.outcome(
        faults.count() > 0
            ? null
            : new LoadedTables(
                sources.orElseThrow().byId(), editions.orElseThrow().list(), tables, revisions));
  }

  private static List<JsonCursor> index(JsonCursor at) {
    ObjectCursor index = at.object();
    List<JsonCursor> folders = index.required("folders", TableSetReader::folders).orElse(List.of());
    index.make(() -> folders);
    return folders;
  }

  private static Optional<List<JsonCursor>> folders(JsonCursor at) {
    List<JsonCursor> folders = at.entries();
    return folders.size() > MOST_FOLDERS
        ? at.fault(folders.size() + " folders", "at most " + MOST_FOLDERS)
        : Optional.of(folders);
  }

  private Optional<EditionFolder> folder(String name, JsonCursor namedAt) {
    return files
        .open(name + "/" + EditionFolder.FILE, namedAt)
        .flatMap(at -> EditionFolder.read(name, at));
  }

  private static boolean isNew(EditionFolder folder, Map<EditionId, String> seen) {
    JsonCursor at = folder.editionAt();
    String first = seen.putIfAbsent(folder.edition(), at.source());
    if (first != null) {
      at.fault(
          "a second folder of edition " + folder.edition(),
          "one folder for each edition; the first is that of " + first);
    }
    return first == null;
  }

  private static void checkListed(EditionFolder folder, EditionsReader.Editions editions) {
    Set<String> names = new TreeSet<>(editions.names());
    names.add(LoadedTables.TRADE.value());
    names.add(LoadedTables.LAW.value());
    if (!names.contains(folder.edition().value())) {
      folder
          .editionAt()
          .mismatch(
              NearestName.allowed(
                  folder.edition().value(),
                  names,
                  LoadedTables.TRADE
                      + ", "
                      + LoadedTables.LAW
                      + " or the id of an edition in "
                      + EditionsReader.FILE));
    }
  }
}
