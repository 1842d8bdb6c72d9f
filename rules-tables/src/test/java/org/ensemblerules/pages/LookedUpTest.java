package org.ensemblerules.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ensemblerules.csv.AllRows;
import org.ensemblerules.csv.CsvTables;
import org.ensemblerules.pages.LookedUp.Disagreement;
import org.ensemblerules.pages.LookedUp.Line;
import org.ensemblerules.pages.LookedUp.Result;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.testkit.ShippedLoad;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The list of what was looked up leaves no family out, and says of each what the tables say. */
class LookedUpTest {
  private static final LoadedTables TABLES = ShippedLoad.tables();
  private static final Set<String> WHY = Set.of("STRICTER", "NEWER", "CLOSER", "OTHER_THING");

  @Test
  void everyFamilyOfDefectsAndEachRememberedOneIsListedOnce() {
    List<String> listed =
        LookedUp.lines().stream()
            .map(line -> line.origin() + " " + line.table() + " " + line.family())
            .toList();
    assertThat(listed).doesNotHaveDuplicates();
    Set<String> missing = new TreeSet<>();
    families()
        .forEach(
            (family, rows) -> {
              boolean asked =
                  family.contains(" defects ")
                      || rows.get(0).provenance().basis() instanceof Basis.Memory;
              if (asked && !listed.contains(family)) {
                missing.add(family);
              }
            });
    assertThat(missing).isEmpty();
  }

  @Test
  void theResultFitsWhatTheFamilyStandsOn() {
    Map<String, List<Row>> families = families();
    List<String> wrong = new ArrayList<>();
    for (Line line : LookedUp.lines()) {
      String name = line.origin() + " " + line.table() + " " + line.family();
      List<Row> rows = families.getOrDefault(name, List.of());
      if (rows.isEmpty()) {
        wrong.add("no family " + name);
        continue;
      }
      Basis basis = rows.get(0).provenance().basis();
      boolean fits =
          switch (line.result()) {
            case RAISED, FOUND -> basis instanceof Basis.Published;
            case SUPPORTED, NOT_FOUND -> basis instanceof Basis.Memory;
            case TRADE -> basis instanceof Basis.CommonPractice;
            case RELABELED, CORRECTED, NEW -> true;
          };
      boolean before =
          switch (line.result()) {
            case RAISED -> Set.of("MEMORY", "COMMON_PRACTICE").contains(line.before());
            case FOUND -> Set.of("READ", "RESTATED").contains(line.before());
            case NEW -> line.before().equals("NEW");
            default -> !line.before().equals("NEW");
          };
      if (!fits || !before) {
        wrong.add(name + " is " + line.result() + " and stands on " + basis.text());
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void everyTopicSaysWhatWasLookedForAndHasFamilies() {
    Set<String> used = LookedUp.lines().stream().map(Line::topic).collect(Collectors.toSet());
    assertThat(LookedUp.topics().keySet()).containsExactlyInAnyOrderElementsOf(used);
    assertThat(LookedUp.lines()).extracting(Line::result).contains(Result.RAISED, Result.NOT_FOUND);
  }

  @Test
  void eachRememberedFamilyWasSearchedForAndNoSearchIsUnknownOrUnused() {
    List<String> known = LookedUp.searches().stream().map(LookedUp.Search::id).toList();
    assertThat(known).doesNotHaveDuplicates();
    assertThat(LookedUp.lines().stream().flatMap(line -> line.searches().stream()).distinct())
        .containsExactlyInAnyOrderElementsOf(known);
    assertThat(LookedUp.searches())
        .allMatch(search -> !search.words().isBlank() && !search.met().isBlank());
    Map<String, List<String>> searches =
        LookedUp.lines().stream()
            .collect(
                Collectors.toMap(
                    line -> line.origin() + " " + line.table() + " " + line.family(),
                    Line::searches));
    Set<String> without = new TreeSet<>();
    families()
        .forEach(
            (family, rows) -> {
              boolean remembered =
                  rows.stream().anyMatch(row -> row.provenance().basis() instanceof Basis.Memory);
              if (remembered && searches.getOrDefault(family, List.of()).isEmpty()) {
                without.add(family);
              }
            });
    assertThat(without).isEmpty();
  }

  @Tag("slow")
  @Test
  void whereARowHasTheNumberItIsTheOneThatStands() {
    List<String> wrong = new ArrayList<>();
    int held = 0;
    for (Disagreement each : LookedUp.disagreements()) {
      List<String> cells = each.cells();
      assertThat(WHY).contains(cells.get(4));
      for (String page : List.of(cells.get(1), cells.get(2))) {
        String id = page.split(":", 2)[0];
        if (id.matches("[a-z0-9-]+") && id.contains("-")) {
          assertThat(TABLES.sources()).containsKey(new SourceId(id));
        }
      }
      if (cells.get(6).equals("-")) {
        continue;
      }
      held++;
      List<Row> rows =
          AllRows.shipped(TABLES, List.of()).entrySet().stream()
              .filter(
                  entry -> cells.get(5).equals("-") || entry.getKey().value().equals(cells.get(5)))
              .flatMap(entry -> entry.getValue().stream())
              .filter(row -> CsvTables.name(row).equals(cells.get(6)))
              .filter(row -> Family.family(row).equals(cells.get(7)))
              .toList();
      if (rows.isEmpty()) {
        wrong.add("no row for " + cells.get(0));
      }
      for (Row row : rows) {
        String cell = CsvTables.cells(row).get(cells.get(8));
        if (!cells.get(9).equals(cell)) {
          wrong.add(cells.get(0) + ": " + cell);
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(held).isGreaterThanOrEqualTo(10);
  }

  /** The families in the edition that each was written for. */
  private static Map<String, List<Row>> families() {
    Map<String, List<Row>> families = new LinkedHashMap<>();
    AllRows.shipped(TABLES, List.of())
        .values()
        .forEach(
            rows ->
                rows.stream()
                    .filter(row -> !(row.provenance().basis() instanceof Basis.CarriedOver))
                    .forEach(
                        row ->
                            families
                                .computeIfAbsent(
                                    row.provenance().origin()
                                        + " "
                                        + CsvTables.name(row)
                                        + " "
                                        + Family.family(row),
                                    family -> new ArrayList<>())
                                .add(row)));
    return families;
  }
}
