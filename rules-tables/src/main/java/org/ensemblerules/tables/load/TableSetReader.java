package org.ensemblerules.tables.load;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.tables.json.Faults;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.NearestName;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.EditionTables;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.tables.set.TableFiles;
import org.ensemblerules.tables.set.TableRevision;

/**
 * Reads a set of table files: the index, the sources, the editions, then every edition's tables.
 */
public final class TableSetReader {
  static final String INDEX = "index.json";

  private static final int MOST_FOLDERS = 200;

  private final Faults faults = new Faults();
  private final SetFiles files;
  private final List<TableRevision> revisions = new ArrayList<>();

  private final Predicate<OriginId> wanted;

  private TableSetReader(TableFiles files, Predicate<OriginId> wanted) {
    this.files = new SetFiles(files, faults);
    this.wanted = wanted;
  }

  /** Reads a set. */
  public static Checked<LoadedTables, JsonFault> read(TableFiles files) {
    return new TableSetReader(files, edition -> true).read();
  }

  /**
   * Reads of a set what the rules of some editions need. Whatever all rules share is read too: the
   * trade's tables, public law, and what products must meet.
   */
  public static Checked<LoadedTables, JsonFault> read(TableFiles files, Set<OriginId> editions) {
    return new TableSetReader(files, Set.copyOf(editions)::contains).read();
  }

  /** Lists the editions that a set has tables of a subject for, without reading the tables. */
  public static Checked<List<Edition>, JsonFault> editions(TableFiles files, Subject subject) {
    TableSetReader reader = new TableSetReader(files, edition -> false);
    Outline outline = reader.outline();
    return reader.faults.outcome(
        outline.editions().map(EditionsReader.Editions::list).orElse(List.of()).stream()
            .filter(edition -> outline.lists(edition.id(), subject))
            .sorted()
            .toList());
  }

  /** Lists the sources of a set, without reading the tables. */
  public static Checked<Map<SourceId, Source>, JsonFault> sources(TableFiles files) {
    TableSetReader reader = new TableSetReader(files, edition -> false);
    Outline outline = reader.outline();
    return reader.faults.outcome(
        outline.sources().map(SourcesReader.Sources::byId).orElse(Map.of()));
  }

  /** What a set has, its tables not read yet. */
  private record Outline(
      Optional<SourcesReader.Sources> sources,
      Optional<EditionsReader.Editions> editions,
      BasisReader bases,
      Map<OriginId, EditionFolder> folders) {
    boolean lists(OriginId edition, Subject subject) {
      Set<OriginId> passed = new HashSet<>();
      Optional<EditionFolder> at = Optional.ofNullable(folders.get(edition));
      while (at.isPresent() && passed.add(at.get().edition())) {
        if (at.get().files().stream().anyMatch(file -> file.subject() == subject)) {
          return true;
        }
        at = at.get().whole().map(whole -> folders.get(whole.from().edition()));
      }
      return false;
    }
  }

  private Outline outline() {
    List<JsonCursor> listed = files.open(INDEX).map(TableSetReader::index).orElse(List.of());
    Optional<SourcesReader.Sources> sources =
        files.open(SourcesReader.FILE).flatMap(SourcesReader::read);
    BasisReader bases = new BasisReader(sources.map(SourcesReader.Sources::byId));
    Optional<EditionsReader.Editions> editions =
        files.open(EditionsReader.FILE).flatMap(at -> EditionsReader.read(at, bases));
    sources.ifPresent(read -> revisions.add(read.revision()));
    editions.ifPresent(read -> revisions.add(read.revision()));
    Map<OriginId, EditionFolder> folders = new LinkedHashMap<>();
    for (JsonCursor place : listed) {
      SetFiles.folderName(place)
          .flatMap(name -> folder(name, place))
          .filter(folder -> isNew(folder, folders))
          .ifPresent(folder -> editions.ifPresent(read -> checkListed(folder, read)));
    }
    folders.values().forEach(folder -> checkWhole(folder, folders));
    return new Outline(sources, editions, bases, folders);
  }

  private Checked<LoadedTables, JsonFault> read() {
    Outline outline = outline();
    EditionFiles listed = new EditionFiles(files, revisions);
    open(outline.folders(), listed);
    List<EditionTables> tables =
        new TableCompiler(listed, outline.bases(), faults, wanted)
            .compile(outline.folders().keySet());
    return faults.outcome(
        faults.count() > 0
            ? null
            : new LoadedTables(
                outline.sources().orElseThrow().byId(),
                outline.editions().orElseThrow().list(),
                tables,
                revisions));
  }

  /** Opens what is wanted, and what that carries over, and so on. */
  private void open(Map<OriginId, EditionFolder> folders, EditionFiles listed) {
    Set<OriginId> opened = new HashSet<>();
    // In the order of the index, as long as nothing is left out.
    folders.values().stream()
        .filter(folder -> isShared(folder) || wanted.test(folder.edition()))
        .forEach(
            folder -> {
              listed.open(folder, file -> true);
              opened.add(folder.edition());
            });
    Deque<OriginId> next = new ArrayDeque<>(opened);
    while (!next.isEmpty()) {
      for (OriginId base : listed.bases(next.remove())) {
        EditionFolder folder = folders.get(base);
        if (folder != null && opened.add(base)) {
          listed.open(folder, file -> true);
          next.add(base);
        }
      }
    }
  }

  private static boolean isShared(EditionFolder folder) {
    return folder.edition().equals(LoadedTables.TRADE)
        || folder.edition().equals(LoadedTables.LAW)
        || folder.files().stream().anyMatch(file -> file.subject() == Subject.PRODUCT);
  }

  /** What is carried over whole must be there, and must not lead back. */
  private static void checkWhole(EditionFolder folder, Map<OriginId, EditionFolder> folders) {
    Set<OriginId> passed = new HashSet<>();
    Optional<EditionFolder> at = Optional.of(folder);
    while (at.isPresent()) {
      Optional<TableFile.CarriesOver> from = at.get().whole().map(EditionFolder.Whole::from);
      if (!passed.add(at.get().edition())) {
        if (at.get().edition().equals(folder.edition())) {
          folder
              .whole()
              .ifPresent(whole -> whole.from().at().mismatch("a chain of editions that ends"));
        }
        return;
      }
      EditionFolder here = at.get();
      at = from.map(base -> folders.get(base.edition()));
      if (from.isPresent() && at.isEmpty() && here.edition().equals(folder.edition())) {
        from.get()
            .at()
            .mismatch(
                NearestName.allowed(
                    from.get().edition().value(),
                    folders.keySet().stream().map(OriginId::value).sorted().toList()));
      }
    }
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

  private static boolean isNew(EditionFolder folder, Map<OriginId, EditionFolder> seen) {
    JsonCursor at = folder.editionAt();
    EditionFolder first = seen.putIfAbsent(folder.edition(), folder);
    if (first != null) {
      at.fault(
          FaultCode.DUPLICATE,
          "a second folder of edition " + folder.edition(),
          "one folder for each edition; the first is that of " + first.editionAt().source());
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
