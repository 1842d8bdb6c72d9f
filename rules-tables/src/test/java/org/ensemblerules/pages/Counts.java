package org.ensemblerules.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.csv.AllRows;
import org.ensemblerules.csv.CsvTables;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.RecordKinds;
import org.ensemblerules.ruleset.StrengthKinds;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.source.SourceKind;
import org.ensemblerules.tables.set.EditionTables;
import org.ensemblerules.tables.set.LoadedTables;

/** How many rows each table has in each edition, and on whose word. */
final class Counts {
  private static final String COMMERCIAL_ALONE = "RESTATED, by makers, sellers or providers alone";
  private static final String CARRIED = "carried over, ";

  static final List<String> BASES =
      List.of("READ", "RESTATED", COMMERCIAL_ALONE, "COMMON_PRACTICE", "MEMORY");

  /** The tables of measurements by name. */
  static final Map<String, TableKind<?, ?>> MEASUREMENTS = measurements();

  /** The tables by name. */
  static final Map<String, TableKind<?, ?>> TABLES = tables();

  private Counts() {}

  private static Map<String, TableKind<?, ?>> tables() {
    Map<String, TableKind<?, ?>> tables = new LinkedHashMap<>();
    tables.put("elements and parts", InspectionKinds.ANATOMY);
    tables.put("criteria", InspectionKinds.CRITERIA);
    tables.put("defects", InspectionKinds.DEFECTS);
    tables.put("intervals", InspectionKinds.INTERVALS);
    tables.put("looks after a return", InspectionKinds.RETURNS);
    tables.put("tasks", InspectionKinds.TASKS);
    tables.put("care routes", CareKinds.CARE_ROUTES);
    tables.put("limits of repair", CareKinds.REPAIR_LIMITS);
    tables.put("age limits", InspectionKinds.AGE_LIMITS);
    tables.put("record items", RecordKinds.RECORD_ITEMS);
    tables.put("routes of disposal", RecordKinds.DISPOSAL_ROUTES);
    tables.put("steps of custody", RecordKinds.CUSTODY_STEPS);
    tables.put("laws on PFAS", RecordKinds.PFAS_LAWS);
    tables.put("adoptions", RecordKinds.ADOPTIONS);
    tables.put("permissions", InspectionKinds.PERMISSIONS);
    tables.put("where gear goes", InspectionKinds.DESTINATIONS);
    tables.put("checks", InspectionKinds.CHECKS);
    tables.put("cautions", InspectionKinds.CAUTIONS);
    tables.putAll(MEASUREMENTS);
    return tables;
  }

  private static Map<String, TableKind<?, ?>> measurements() {
    Map<String, TableKind<?, ?>> tables = new LinkedHashMap<>();
    tables.put("conditions of checks", InspectionKinds.CONDITIONS);
    tables.put("stronger checks", InspectionKinds.STRONGER_CHECKS);
    tables.put("limits of checks", InspectionKinds.CHECK_LIMITS);
    tables.put("care limits", CareKinds.CARE_LIMITS);
    tables.put("how far limits of washes can go", CareKinds.WASH_BOUNDS);
    tables.put("cleaning results", CareKinds.CLEANING_RESULTS);
    tables.put("strength", StrengthKinds.REQUIREMENTS);
    tables.put("test methods", StrengthKinds.METHODS);
    return tables;
  }

  /** Every row in force under an edition. */
  static List<Row> rows(EditionTables edition) {
    return TABLES.values().stream()
        .flatMap(kind -> Family.rows(edition, kind).stream())
        .<Row>flatMap(List::stream)
        .toList();
  }

  static Page page(LoadedTables tables) {
    List<EditionTables> editions = Family.inOrder(tables);
    Markdown page = new Markdown("Tables");
    page.paragraph(
            "Written from the table files by `mvn -q -Ppages test`;"
                + " a test fails when they differ. Nothing here is the text of a standard: every"
                + " row is in our own words, with the basis it stands on.")
        .points(
            List.of(
                "[elements-and-parts.md](elements-and-parts.md): what gear there is",
                "[criteria.md](criteria.md): what inspections look at",
                "[defects.md](defects.md): what defects call for",
                "[intervals.md](intervals.md): how often",
                "[returns.md](returns.md): how gear is inspected once it is back",
                "[tasks.md](tasks.md): which tasks are due when",
                "[care-routes.md](care-routes.md): what is done after an exposure",
                "[repair.md](repair.md): how lightly repairs may be taken",
                "[age-limits.md](age-limits.md): how old",
                "[record-items.md](record-items.md): what is recorded",
                "[disposal.md](disposal.md): what becomes of retired gear, and custody",
                "[pfas-laws.md](pfas-laws.md): what laws ask of sales",
                "[adoptions.md](adoptions.md): which rules hold where",
                "[permissions.md](permissions.md): who may do what",
                "[destinations.md](destinations.md): where gear goes for it",
                "[checks.md](checks.md): what checks show and settle",
                "[measurements.md](measurements.md): conditions, limits and strength",
                "[cautions.md](cautions.md): what verdicts warn of",
                "[editions.md](editions.md): editions and when they took effect",
                "[sources.md](sources.md): documents cited, and where they were seen",
                "[followed.md](followed.md): reasons of verdicts followed to their pages",
                "[looked-up.md](looked-up.md): what was looked for in public pages, and found",
                "[disagreements.md](disagreements.md): numbers on which public pages disagree"))
        .paragraph(
            "No verdict rests on the tables of limits of repair, cleaning results, records,"
                + " disposal, custody and laws; functions of their own answer from them. How far"
                + " limits of washes can go decides only which overlays are refused.")
        .paragraph(
            "A row is one combination of element, use, part and the like. A family is what stands"
                + " in a file: one entry for all combinations that say the same.")
        .heading("Rows in force by table and edition")
        .paragraph(
            "Carried over rows are counted in each edition in which they are in force. Each cell:"
                + " rows (families).")
        .table(head(editions), byTable(editions))
        .heading("Rows in force by basis and edition")
        .paragraph(
            "READ: seen in the document's own text. RESTATED: seen on another page that says what"
                + " the document requires. COMMON_PRACTICE: what the trade does, without a source."
                + " MEMORY: remembered, found on no page; to be confirmed before use. Of makers,"
                + " sellers and providers only kind and date are named, so what they alone restate"
                + " is counted apart. A row carried over into an edition whose text nobody has seen"
                + " counts as carried over, by what it was.")
        .table(head(editions), byBasis(editions, tables, false))
        .heading("Families in force by basis and edition")
        .table(head(editions), byBasis(editions, tables, true))
        .heading("Families by table and basis")
        .paragraph("Each family once, in the edition that it was written for.")
        .table(byTableHead(), byTableAndBasis(editions, tables))
        .heading("Rows by table and basis")
        .paragraph("Each row once, in the edition that it was written for.")
        .table(byTableHead(), rowsByTableAndBasis(editions, tables))
        .heading("Restated families by edition that they name")
        .paragraph(
            "A page that names no edition leaves the edition open. Counted once, in the edition"
                + " that the family was written for.")
        .table(List.of("Written for", "Edition named on the page", "Edition open"), open(editions));
    return CsvSection.of(page).page("README.md");
  }

  private static List<String> head(List<EditionTables> editions) {
    return Stream.concat(
            Stream.of(""),
            editions.stream()
                .map(each -> Words.edition(each.edition()))
                .map(name -> name.equals("all") ? "every edition" : name))
        .toList();
  }

  private static List<List<String>> byTable(List<EditionTables> editions) {
    List<List<String>> lines = new ArrayList<>();
    TABLES.forEach(
        (name, kind) -> {
          List<String> line = new ArrayList<>(List.of(name));
          editions.forEach(each -> line.add(Family.rows(each, kind).map(Counts::both).orElse("")));
          lines.add(line);
        });
    List<String> sum = new ArrayList<>(List.of("together"));
    editions.forEach(each -> sum.add(both(rows(each))));
    lines.add(sum);
    return lines;
  }

  private static String both(List<? extends Row> rows) {
    return rows.size() + " (" + families(rows) + ")";
  }

  private static long families(List<? extends Row> rows) {
    return rows.stream().map(row -> row.getClass() + Family.family(row)).distinct().count();
  }

  private static List<List<String>> byBasis(
      List<EditionTables> editions, LoadedTables tables, boolean families) {
    List<List<String>> lines = new ArrayList<>();
    for (String basis :
        Stream.concat(BASES.stream(), BASES.stream().map(each -> CARRIED + each)).toList()) {
      List<String> line = new ArrayList<>(List.of(basis));
      for (EditionTables each : editions) {
        List<Row> rows =
            rows(each).stream()
                .filter(row -> kind(row.provenance().basis(), tables).equals(basis))
                .toList();
        line.add(Long.toString(families ? families(rows) : rows.size()));
      }
      if (line.stream().skip(1).anyMatch(count -> !count.equals("0"))) {
        lines.add(line);
      }
    }
    return lines;
  }

  /** What a row stands on, with whether the public can follow it to a page. */
  static String kind(Basis basis, LoadedTables tables) {
    if (basis instanceof Basis.CarriedOver carried) {
      return CARRIED + kind(carried.there(), tables);
    }
    boolean keptBack =
        !basis.pages().isEmpty()
            && basis.pages().stream()
                .allMatch(page -> tables.sources().get(page).kind() == SourceKind.COMMERCIAL);
    return keptBack ? COMMERCIAL_ALONE : Words.kind(basis);
  }

  private static List<String> byTableHead() {
    return Stream.concat(Stream.of(""), BASES.stream()).toList();
  }

  private static List<List<String>> byTableAndBasis(
      List<EditionTables> editions, LoadedTables tables) {
    return byTableAndBasis(editions, tables, Counts::families);
  }

  private static List<List<String>> rowsByTableAndBasis(
      List<EditionTables> editions, LoadedTables tables) {
    return byTableAndBasis(editions, tables, rows -> (long) rows.size());
  }

  private static List<List<String>> byTableAndBasis(
      List<EditionTables> editions, LoadedTables tables, ToLongFunction<List<Row>> count) {
    List<List<String>> lines = new ArrayList<>();
    Map<String, Long> sums = new LinkedHashMap<>();
    TABLES.forEach(
        (name, kind) -> {
          List<String> line = new ArrayList<>(List.of(name));
          for (String basis : BASES) {
            long sum = 0;
            for (EditionTables edition : editions) {
              List<Row> own =
                  Family.rows(edition, kind).stream()
                      .flatMap(List::stream)
                      .<Row>map(row -> row)
                      .filter(row -> row.provenance().origin().equals(edition.edition()))
                      .filter(row -> kind(row.provenance().basis(), tables).equals(basis))
                      .toList();
              sum += count.applyAsLong(own);
            }
            sums.merge(basis, sum, Long::sum);
            line.add(Long.toString(sum));
          }
          lines.add(line);
        });
    List<String> together = new ArrayList<>(List.of("together"));
    BASES.forEach(basis -> together.add(Long.toString(sums.getOrDefault(basis, 0L))));
    lines.add(together);
    return lines;
  }

  /**
   * The families of each table, as files of comma-separated values name it, in the editions that
   * they were written for: read, restated, common practice and remembered.
   */
  static Map<String, List<Long>> familiesByCsvTable(LoadedTables tables) {
    Map<String, Map<String, Set<String>>> families = new TreeMap<>();
    AllRows.shipped(tables, List.of())
        .values()
        .forEach(
            rows ->
                rows.stream()
                    .filter(row -> !(row.provenance().basis() instanceof Basis.CarriedOver))
                    .forEach(
                        row ->
                            families
                                .computeIfAbsent(CsvTables.name(row), name -> new TreeMap<>())
                                .computeIfAbsent(
                                    Words.kind(row.provenance().basis()), kind -> new TreeSet<>())
                                .add(row.provenance().origin() + " " + Family.family(row))));
    Map<String, List<Long>> counts = new TreeMap<>();
    families.forEach(
        (name, byKind) ->
            counts.put(
                name,
                Stream.of("READ", "RESTATED", "COMMON_PRACTICE", "MEMORY")
                    .map(kind -> (long) byKind.getOrDefault(kind, Set.of()).size())
                    .toList()));
    return counts;
  }

  private static List<List<String>> open(List<EditionTables> editions) {
    List<List<String>> lines = new ArrayList<>();
    for (EditionTables edition : editions) {
      Map<Boolean, List<Row>> restated =
          rows(edition).stream()
              .filter(row -> row.provenance().origin().equals(edition.edition()))
              .filter(row -> !row.provenance().basis().pages().isEmpty())
              .filter(row -> row.provenance().basis().cited().stream().anyMatch(Counts::isNfpa))
              .collect(Collectors.partitioningBy(row -> isOpen(row.provenance().basis())));
      if (!restated.get(true).isEmpty() || !restated.get(false).isEmpty()) {
        lines.add(
            List.of(
                Words.edition(edition.edition()),
                Long.toString(families(restated.get(false))),
                Long.toString(families(restated.get(true)))));
      }
    }
    return lines;
  }

  private static boolean isNfpa(SourceId source) {
    return source.value().startsWith("nfpa-");
  }

  /** Whether the source is a standard without the year of an edition. */
  private static boolean isOpen(Basis basis) {
    return basis.cited().stream().anyMatch(source -> source.value().matches("nfpa-[0-9]+"));
  }
}
