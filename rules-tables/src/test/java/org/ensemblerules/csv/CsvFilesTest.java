package org.ensemblerules.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.shipped.TableTexts;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Confidence;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.source.SourceKind;
import org.ensemblerules.tables.ShippedOverlays;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.tables.set.OverlayFile;
import org.ensemblerules.testkit.ShippedLoad;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Writes every table to {@code target/csv}, from where the build packs them, and reads them back
 * with a general-purpose reader (org.apache.commons:commons-csv): every row of every edition is
 * there once, and says what the loaded one says.
 */
class CsvFilesTest {
  private static final Path FOLDER = Path.of(System.getProperty("basedir", ""), "target", "csv");
  private static final LoadedTables TABLES = ShippedLoad.tables();
  private static final List<Overlay> OVERLAYS =
      ShippedOverlays.all().stream().map(OverlayFile::overlay).toList();
  private static final CSVFormat RFC_4180 =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  @BeforeAll
  static void write() throws IOException {
    CsvFiles.write(CsvFiles.of(TABLES, ShippedOverlays.all()), FOLDER);
  }

  private static List<CSVRecord> records(Path file) {
    try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, RFC_4180)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, Path> files(Path folder) throws IOException {
    try (Stream<Path> paths = Files.walk(folder)) {
      Map<String, Path> files = new TreeMap<>();
      paths
          .filter(Files::isRegularFile)
          .forEach(path -> files.put(folder.relativize(path).toString().replace('\\', '/'), path));
      return files;
    }
  }

  private static String folder(OriginId edition) {
    return edition.value().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  // The table files themselves, read as plain JSON, say which tables there are.
  @Test
  void everyTableFileOfEveryEditionHasItsFile() throws IOException {
    Set<String> expected = new TreeSet<>(Set.of("editions.csv", "sources.csv"));
    for (TableTexts.Text text : TableTexts.all()) {
      if (!text.edition().isEmpty()) {
        expected.add(folder(new OriginId(text.edition())) + "/" + text.table() + ".csv");
      }
    }
    // An edition that carries all of another over has tables of which it has no text.
    for (OriginId edition : TABLES.tables().keySet()) {
      AllRows.of(TABLES.tables(edition))
          .forEach(
              row ->
                  expected.add(
                      folder(edition) + "/" + CsvTables.of(row.getClass()).name() + ".csv"));
    }
    for (Overlay overlay : OVERLAYS) {
      overlay.rows().all().stream()
          .map(
              row -> "overlays/" + folder(overlay.id()) + "/" + CsvTables.of(row.getClass()).name())
          .forEach(name -> expected.add(name + ".csv"));
    }
    assertThat(files(FOLDER).keySet()).isEqualTo(expected).hasSizeGreaterThan(80);
  }

  @Tag("slow")
  @Test
  void everyRowOfEveryEditionIsThereOnceWithEveryField() throws IOException {
    for (OriginId edition : TABLES.tables().keySet()) {
      agrees(FOLDER.resolve(folder(edition)), edition, AllRows.of(TABLES.tables(edition)));
    }
  }

  @Test
  void everyRowOfEveryOverlayIsThereOnceWithEveryField() throws IOException {
    assertThat(OVERLAYS).isNotEmpty();
    for (Overlay overlay : OVERLAYS) {
      agrees(
          FOLDER.resolve("overlays").resolve(folder(overlay.id())),
          overlay.id(),
          overlay.rows().all());
    }
  }

  // The rows that verdicts rest on, gathered by the rule sets instead of by edition.
  @Test
  void everyRowOfEveryRuleSetStandsInSomeEdition() throws IOException {
    Set<List<String>> written = new HashSet<>();
    for (Map.Entry<String, Path> file : files(FOLDER).entrySet()) {
      if (!file.getKey().equals(CsvFiles.SOURCES)) {
        String table = file.getValue().getFileName().toString();
        records(file.getValue())
            .forEach(each -> written.add(List.of(table, each.get("key"), each.get("origin"))));
      }
    }
    for (Edition edition : ShippedRules.editions()) {
      List<List<String>> rows =
          ShippedRules.of(edition.id()).orElseThrow().rules().tables().rows().stream()
              .map(
                  row ->
                      List.of(
                          CsvTables.of(row.getClass()).name() + ".csv",
                          row.key().value(),
                          row.provenance().origin().value()))
              .toList();
      assertThat(rows).hasSizeGreaterThan(9000);
      assertThat(rows.stream().filter(row -> !written.contains(row))).isEmpty();
    }
  }

  @Test
  void theEditionsAreThere() throws IOException {
    List<CSVRecord> records = records(FOLDER.resolve("editions.csv"));
    assertThat(records).hasSameSizeAs(TABLES.editions());
    for (int at = 0; at < records.size(); at++) {
      Edition edition = TABLES.editions().get(at);
      assertThat(differences(records.get(at), edition.id(), edition)).isEmpty();
    }
  }

  @Test
  void theSourcesAreThere() throws IOException {
    List<Source> read =
        records(FOLDER.resolve(CsvFiles.SOURCES)).stream()
            .map(
                record ->
                    new Source(
                        new SourceId(record.get("id")),
                        SourceKind.valueOf(record.get("kind")),
                        record.get("title"),
                        given(record, "issuer"),
                        given(record, "date"),
                        given(record, "seenAt"),
                        given(record, "seenOn").map(LocalDate::parse),
                        Set.copyOf(ids(record, "restates"))))
            .toList();
    assertThat(read).containsExactlyElementsOf(TABLES.sources().values());
  }

  // As the table files have them, in the units they were published in.
  @Test
  void valuesStandInCellsOfTheirOwnWithTheirUnits() throws IOException {
    assertThat(cells("nfpa-1851-2020/care-limits.csv", "water-temperature/COAT/STRUCTURAL"))
        .containsEntry("bound", "MAXIMUM")
        .containsEntry("value", "105")
        .containsEntry("unit", "degF")
        .containsEntry("alsoValue", "40")
        .containsEntry("alsoUnit", "degC");
    assertThat(cells("trade/hydrostatic.csv", "barrier-evaluation/COAT/STRUCTURAL"))
        .containsEntry("pressureValue", "1")
        .containsEntry("pressureUnit", "psi")
        .containsEntry("dwellValue", "15")
        .containsEntry("dwellUnit", "s");
    assertThat(
            cells(
                "nfpa-1850-2026/age-limits.csv",
                "garment-layers-structural/COAT/STRUCTURAL/OUTER_SHELL"))
        .containsEntry("years", "10")
        .containsEntry("edition", "NFPA_1850_2026")
        .containsEntry("basis", "CARRIED_OVER")
        .containsEntry("carriedInto", "NFPA_1850_2026")
        .containsEntry("carriedBasis", "PUBLISHED");
  }

  private static Map<String, String> cells(String file, String key) {
    return records(FOLDER.resolve(file)).stream()
        .filter(each -> each.get("key").equals(key))
        .findFirst()
        .orElseThrow()
        .toMap();
  }

  // No cell of a wrong row passes for that of another.
  @Tag("slow")
  @Test
  void aRowThatWasChangedOrLeftOutIsTold() throws IOException {
    OriginId edition = ShippedRules.DEFAULT_EDITION;
    Path folder = FOLDER.resolve(folder(edition));
    List<Row> rows = AllRows.of(TABLES.tables(edition));
    assertThatThrownBy(() -> agrees(folder, edition, rows.subList(1, rows.size())))
        .isInstanceOf(AssertionError.class);
    List<Row> other = new ArrayList<>(rows);
    other.set(0, AllRows.of(TABLES.tables(new OriginId("NFPA_1850_2026"))).get(0));
    assertThatThrownBy(() -> agrees(folder, edition, other)).isInstanceOf(AssertionError.class);
  }

  private static void agrees(Path folder, OriginId edition, List<Row> rows) throws IOException {
    Map<List<String>, List<CSVRecord>> found = new HashMap<>();
    long records = 0;
    for (Map.Entry<String, Path> file : files(folder).entrySet()) {
      for (CSVRecord each : records(file.getValue())) {
        found
            .computeIfAbsent(List.of(file.getKey(), each.get("key")), key -> new ArrayList<>())
            .add(each);
        records++;
      }
    }
    assertThat(records).as("%s", edition).isEqualTo(rows.size()).isPositive();
    List<String> wrong = new ArrayList<>();
    for (Row row : rows) {
      String file = CsvTables.of(row.getClass()).name() + ".csv";
      List<CSVRecord> read = found.getOrDefault(List.of(file, row.key().value()), List.of());
      if (read.size() == 1) {
        wrong.addAll(differences(read.get(0), edition, row));
      } else {
        wrong.add(file + ", " + row.key() + ": " + read.size() + " records");
      }
    }
    assertThat(wrong).as("%s", edition).isEmpty();
  }

  /** What a record says otherwise than a row; nothing if they agree in every field. */
  private static List<String> differences(CSVRecord read, OriginId edition, Row row) {
    List<String> wrong = new ArrayList<>();
    List<String> own = read.toList().subList(3, read.size() - 9);
    List<String> canonical = row.canonical();
    for (int at = 0; at < canonical.size(); at++) {
      String cell = own.get(at);
      if (!List.of(cell, "[" + cell + "]", "{" + cell + "}").contains(canonical.get(at))) {
        wrong.add(row.key() + ": " + cell + ", not " + canonical.get(at));
      }
    }
    AllRows.numbers(
        row,
        (value, unit) -> {
          if (!isIn(own, value, unit)) {
            wrong.add(row.key() + ": no cell has " + value + unit.map(" "::concat).orElse(""));
          }
        });
    if (!read.isConsistent()) {
      wrong.add(row.key() + ": " + read.size() + " cells");
    }
    if (!new OriginId(read.get("edition")).equals(edition)) {
      wrong.add(row.key() + ": edition " + read.get("edition"));
    }
    if (!provenance(read).equals(row.provenance())) {
      wrong.add(row.key() + ": " + provenance(read) + ", not " + row.provenance());
    }
    return wrong;
  }

  /** Tells whether a number stands in a cell, and its unit, if it has one, in the next. */
  private static boolean isIn(List<String> cells, String value, Optional<String> unit) {
    for (int at = 0; at < cells.size(); at++) {
      if (cells.get(at).equals(value)
          && (unit.isEmpty() || (at + 1 < cells.size() && cells.get(at + 1).equals(unit.get())))) {
        return true;
      }
    }
    return false;
  }

  private static Provenance provenance(CSVRecord read) {
    String kind = read.get("basis");
    Basis basis =
        kind.equals("CARRIED_OVER")
            ? new Basis.CarriedOver(
                new OriginId(read.get("carriedInto")), basis(read.get("carriedBasis"), read))
            : basis(kind, read);
    return new Provenance(
        new RowKey(read.get("key")),
        new OriginId(read.get("origin")),
        basis,
        LocalDate.parse(read.get("reviewedThrough")),
        given(read, "note"));
  }

  private static List<SourceId> ids(CSVRecord read, String column) {
    return given(read, column).stream()
        .flatMap(text -> Stream.of(text.split(", ", -1)))
        .map(SourceId::new)
        .toList();
  }

  private static Basis basis(String kind, CSVRecord read) {
    Optional<SourceId> source = given(read, "source").map(SourceId::new);
    return switch (kind) {
      case "PUBLISHED" ->
          new Basis.Published(
              source.orElseThrow(),
              given(read, "clause").filter(text -> !text.equals("not seen")),
              HowSeen.valueOf(read.get("seen")),
              ids(read, "pages"));
      case "MEMORY" -> new Basis.Memory(Confidence.valueOf(read.get("confidence")), source);
      case "COMMON_PRACTICE" -> new Basis.CommonPractice();
      default -> throw new IllegalStateException(kind);
    };
  }

  private static Optional<String> given(CSVRecord read, String column) {
    return Optional.of(read.get(column)).filter(text -> !text.isEmpty());
  }
}
