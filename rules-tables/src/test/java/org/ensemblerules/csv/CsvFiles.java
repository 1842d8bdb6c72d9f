package org.ensemblerules.csv;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.TableKinds;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.tables.set.EditionTables;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.tables.set.OverlayFile;

/**
 * The files: a folder for each edition with a file for each of its tables, a folder for each
 * overlay, the editions and the sources.
 */
final class CsvFiles {
  static final String SOURCES = "sources.csv";
  static final List<String> SOURCE_COLUMNS =
      List.of("id", "kind", "title", "issuer", "date", "seenAt", "seenOn", "restates");

  private CsvFiles() {}

  /** The text of each file by its path. */
  static Map<String, String> of(LoadedTables tables, List<OverlayFile> overlays) {
    Map<String, String> files = new TreeMap<>();
    files.put(SOURCES, sources(tables.sources().values()));
    files.put(
        CsvTables.EDITIONS.name() + ".csv",
        CsvTables.EDITIONS.text(tables.editions(), Edition::id));
    for (EditionTables edition : tables.tables().values()) {
      put(files, folder(edition.edition()), edition.edition(), rows(edition));
    }
    for (OverlayFile file : overlays) {
      Overlay overlay = file.overlay();
      put(files, "overlays/" + folder(overlay.id()), overlay.id(), overlay.rows().all());
    }
    return files;
  }

  private static String folder(OriginId edition) {
    return edition.value().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static void put(
      Map<String, String> files, String folder, OriginId edition, List<? extends Row> rows) {
    Map<CsvTable<?>, List<Row>> tables = new LinkedHashMap<>();
    for (Row row : rows) {
      tables.computeIfAbsent(CsvTables.of(row.getClass()), each -> new ArrayList<>()).add(row);
    }
    tables.forEach(
        (table, own) ->
            files.put(folder + "/" + table.name() + ".csv", table.text(own, each -> edition)));
  }

  /** Every row in force in an edition. */
  private static List<Row> rows(EditionTables edition) {
    return TableKinds.all().stream().flatMap(kind -> rows(edition, kind)).toList();
  }

  private static <R extends ComparableRow<R>, T> Stream<Row> rows(
      EditionTables edition, TableKind<R, T> kind) {
    return edition.find(kind).stream().flatMap(table -> kind.rows(table).stream());
  }

  private static String sources(Collection<Source> sources) {
    List<List<String>> records = new ArrayList<>(List.of(SOURCE_COLUMNS));
    for (Source source : sources) {
      records.add(
          List.of(
              source.id().value(),
              source.kind().name(),
              source.title(),
              source.issuer().orElse(""),
              source.date().orElse(""),
              source.seenAt().orElse(""),
              source.seenOn().map(LocalDate::toString).orElse(""),
              source.restates().stream().map(SourceId::value).collect(Collectors.joining(", "))));
    }
    return Csv.of(records);
  }

  /** Writes the files in place of all that stands in the folder. */
  static void write(Map<String, String> files, Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> old = Files.walk(folder)) {
        for (Path path : old.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue(), StandardCharsets.UTF_8);
    }
  }
}
