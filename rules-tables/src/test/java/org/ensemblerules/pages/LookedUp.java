package org.ensemblerules.pages;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.ensemblerules.tables.set.LoadedTables;

/** What a look for public pages gave, family by family, and the numbers on which pages disagree. */
final class LookedUp {
  private static final CSVFormat FORM =
      CSVFormat.DEFAULT.builder().setDelimiter(';').setCommentMarker('#').get();

  /** What a look gave. */
  enum Result {
    /** Raised: a page says so, where it was remembered or held for the trade's practice. */
    RAISED,
    /** Corrected: what the row says was changed to what a page says. */
    CORRECTED,
    /** Published before, and now followed to its page. */
    FOUND,
    /** Published before under another mark: another edition, another source, or only remembered. */
    RELABELED,
    /** Pages point the same way, and none is bound to the standard. */
    SUPPORTED,
    /** No page was found. */
    NOT_FOUND,
    /** A practice of the trade, which claims no page. */
    TRADE,
    /** Written since. */
    NEW
  }

  /**
   * A family, and what was found.
   *
   * @param origin the edition it was written for
   * @param table its table
   * @param family its key
   * @param before on what it stood before
   * @param topic the topic under which it was looked for
   * @param result what that gave
   * @param searches the searches made in its own words, or in those of a few siblings
   */
  record Line(
      String origin,
      String table,
      String family,
      String before,
      String topic,
      Result result,
      List<String> searches) {}

  /**
   * A search of stored public pages.
   *
   * @param id its short name
   * @param where what was searched
   * @param words the words searched for
   * @param day the day of the search
   * @param met what was met, in our own words
   */
  record Search(String id, String where, String words, LocalDate day, String met) {}

  /**
   * A number on which pages disagree.
   *
   * @param cells the point, one page, another, what stands, why, and where a row has it
   */
  record Disagreement(List<String> cells) {}

  private LookedUp() {}

  static List<Line> lines() {
    return read("looked-up.csv", 7).stream()
        .map(
            cells ->
                new Line(
                    cells.get(0),
                    cells.get(1),
                    cells.get(2),
                    cells.get(3),
                    cells.get(4),
                    Result.valueOf(cells.get(5)),
                    cells.get(6).equals("-") ? List.of() : List.of(cells.get(6).split(" "))))
        .toList();
  }

  static List<Search> searches() {
    return read("searches.csv", 5).stream()
        .map(
            cells ->
                new Search(
                    cells.get(0),
                    cells.get(1),
                    cells.get(2),
                    LocalDate.parse(cells.get(3)),
                    cells.get(4)))
        .toList();
  }

  /** The topics by name: what was looked for, and what was met. */
  static Map<String, List<String>> topics() {
    Map<String, List<String>> topics = new LinkedHashMap<>();
    read("topics.csv", 3).forEach(cells -> topics.put(cells.get(0), cells.subList(1, 3)));
    return topics;
  }

  static List<Disagreement> disagreements() {
    return read("disagreements.csv", 10).stream().map(Disagreement::new).toList();
  }

  /** The families of each table by basis before they were followed to pages. */
  static List<List<String>> before() {
    return read("before.csv", 5);
  }

  private static List<List<String>> read(String name, int size) {
    try (CSVParser parser =
        CSVParser.parse(
            new InputStreamReader(
                Objects.requireNonNull(LookedUp.class.getResourceAsStream(name), name),
                StandardCharsets.UTF_8),
            FORM)) {
      List<List<String>> all = parser.stream().map(CSVRecord::toList).toList();
      all.stream()
          .filter(cells -> cells.size() != size)
          .findFirst()
          .ifPresent(
              cells -> {
                throw new IllegalStateException(name + ": " + cells.size() + " cells: " + cells);
              });
      return all;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Page page(LoadedTables tables) {
    List<Line> lines = lines();
    Markdown page =
        new Markdown("What was looked up")
            .paragraph(
                "Each family of defects, and each other one that is or was remembered or whose mark"
                    + " changed, was looked for in public pages: departments' procedures in public"
                    + " portals, agendas and drafts of committees, commissions of states,"
                    + " investigations and studies. No share was to be reached. Copies of the"
                    + " standard itself were left alone.")
            .points(
                List.of(
                    "RAISED: a page says so. CORRECTED: changed to what a page says. FOUND:"
                        + " published before, and now followed to its page.",
                    "RELABELED: published before under another mark; most of these leave the"
                        + " edition open now, since their page names none. NEW: written since.",
                    "SUPPORTED: pages met under its topic point the same way, and none is bound to"
                        + " the standard. NOT_FOUND: no page says what it calls for. TRADE: a"
                        + " practice that claims no page."))
            .heading("Families by basis before and after")
            .paragraph(
                "Before: on 30 November 2026, before they were followed to pages. Each family once,"
                    + " in the edition that it was written for; not counted are the factors of"
                    + " small samples.")
            .table(List.of("Table", "READ", "RESTATED", "COMMON_PRACTICE", "MEMORY"), trend(tables))
            .heading("Defects and others by result")
            .table(head(), byResult(lines))
            .heading("By topic")
            .table(List.of("Topic", "Looked for", "Met", "Results"), byTopic(lines))
            .heading("Searches")
            .paragraph(
                "Each remembered family was searched for in its own words, or in those of a few"
                    + " siblings: the same defect on other parts, the same property of another"
                    + " element. Of most pages only the opening was stored. A search that met"
                    + " nothing says nothing of pages that are not stored.")
            .table(List.of("Search", "Words", "Day", "Met", "Families"), bySearch(lines));
    Map<String, Map<String, List<Line>>> byTable = new LinkedHashMap<>();
    lines.forEach(
        line ->
            byTable
                .computeIfAbsent(line.table(), table -> new LinkedHashMap<>())
                .computeIfAbsent(
                    line.topic()
                        + "|"
                        + line.result()
                        + "|"
                        + line.origin()
                        + "|"
                        + line.searches(),
                    key -> new ArrayList<>())
                .add(line));
    byTable.forEach(
        (table, groups) -> {
          page.heading("Families of " + table);
          page.table(
              List.of("Written for", "Topic", "Result", "Before", "Searches", "Families"),
              groups.values().stream()
                  .map(
                      group ->
                          List.of(
                              group.get(0).origin().replace('_', ' '),
                              group.get(0).topic(),
                              group.get(0).result().name(),
                              group.stream()
                                  .map(Line::before)
                                  .distinct()
                                  .sorted()
                                  .collect(Collectors.joining(", ")),
                              String.join(", ", group.get(0).searches()),
                              group.stream()
                                  .map(line -> Words.code(line.family()))
                                  .collect(Collectors.joining(" "))))
                  .toList());
        });
    return page.page("looked-up.md");
  }

  private static List<List<String>> trend(LoadedTables tables) {
    Map<String, List<Long>> now = Counts.familiesByCsvTable(tables);
    List<List<String>> rows = new ArrayList<>();
    for (List<String> cells : before()) {
      List<Long> after = now.getOrDefault(cells.get(0), List.of(0L, 0L, 0L, 0L));
      List<String> row = new ArrayList<>(List.of(cells.get(0)));
      for (int at = 1; at < cells.size(); at++) {
        row.add(cells.get(at) + " → " + after.get(at - 1));
      }
      rows.add(row);
    }
    return rows;
  }

  private static List<String> head() {
    List<String> head = new ArrayList<>(List.of(""));
    for (Result result : Result.values()) {
      head.add(result.name());
    }
    return head;
  }

  private static List<List<String>> byResult(List<Line> lines) {
    List<List<String>> rows = new ArrayList<>();
    for (boolean defects : List.of(true, false)) {
      List<String> row = new ArrayList<>(List.of(defects ? "families of defects" : "others"));
      for (Result result : Result.values()) {
        row.add(
            Long.toString(
                lines.stream()
                    .filter(line -> line.table().equals("defects") == defects)
                    .filter(line -> line.result() == result)
                    .count()));
      }
      rows.add(row);
    }
    return rows;
  }

  private static List<List<String>> byTopic(List<Line> lines) {
    List<List<String>> rows = new ArrayList<>();
    topics()
        .forEach(
            (topic, said) -> {
              Map<Result, Long> counts =
                  lines.stream()
                      .filter(line -> line.topic().equals(topic))
                      .collect(
                          Collectors.groupingBy(
                              Line::result,
                              () -> new java.util.EnumMap<>(Result.class),
                              Collectors.counting()));
              rows.add(
                  List.of(
                      topic,
                      said.get(0),
                      said.get(1),
                      counts.entrySet().stream()
                          .map(each -> each.getKey() + " " + each.getValue())
                          .collect(Collectors.joining(", "))));
            });
    return rows;
  }

  private static List<List<String>> bySearch(List<Line> lines) {
    return searches().stream()
        .map(
            search ->
                List.of(
                    search.id(),
                    search.words(),
                    search.day().toString(),
                    search.met(),
                    Long.toString(
                        lines.stream()
                            .filter(line -> line.searches().contains(search.id()))
                            .count())))
        .toList();
  }

  static Page disagreementsPage() {
    return new Markdown("Numbers on which public pages disagree")
        .paragraph(
            "Which one stands, and why. STRICTER: it can only make a verdict stricter. NEWER: it"
                + " replaces the other. CLOSER: it is closer to the document itself, or names the"
                + " edition. OTHER_THING: both can hold, since they speak of different things.")
        .table(
            List.of("Point", "One page", "Another", "Stands", "Why"),
            disagreements().stream().map(each -> each.cells().subList(0, 5)).toList())
        .page("disagreements.md");
  }
}
