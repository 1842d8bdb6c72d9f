package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.csv.AllRows;
import org.ensemblerules.csv.CsvTables;
import org.ensemblerules.shipped.PagesAndValues.Origin;
import org.ensemblerules.shipped.PagesAndValues.Taken;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.source.SourceKind;
import org.ensemblerules.tables.ShippedOverlays;
import org.junit.jupiter.api.Test;

/**
 * Every published family is followed to a page: one that restates what the family cites, or the
 * document itself, with the value that is taken from it.
 */
class PagesAndValuesTest {
  private static final Map<Origin, List<Row>> FAMILIES = families();
  private static final Map<SourceId, Source> LISTED =
      Stream.concat(
              ShippedEditions.loaded().sources().values().stream(),
              ShippedOverlays.all().stream().flatMap(file -> file.sources().stream()))
          .collect(Collectors.toMap(Source::id, source -> source, (first, again) -> first));

  @Test
  void everyFamilySaysWhatIsTakenFromItsPage() {
    List<String> wrong = new ArrayList<>();
    for (Taken taken : PagesAndValues.all()) {
      List<Row> rows = FAMILIES.getOrDefault(taken.family(), List.of());
      if (rows.isEmpty()) {
        wrong.add(taken.family() + " is not published");
      }
      for (Row row : rows) {
        String column = taken.column().replace("~", "");
        Optional<String> cell = Optional.ofNullable(CsvTables.cells(row).get(column));
        boolean says =
            taken.column().endsWith("~")
                ? cell.filter(text -> text.contains(taken.value())).isPresent()
                : cell.filter(taken.value()::equals).isPresent();
        if (!says) {
          wrong.add(row.key() + " " + taken.column() + ": " + cell + ", not " + taken.value());
        }
        if (!seenOn(row).contains(new SourceId(taken.page()))) {
          wrong.add(row.key() + " was not seen on " + taken.page());
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void noPublishedFamilyIsWithoutAPageAndAValue() {
    assertThat(FAMILIES).hasSizeGreaterThan(600);
    assertThat(without(PagesAndValues.all())).isEmpty();
  }

  @Test
  void aFamilyThatLosesItsPageIsTold() {
    List<Taken> all = new ArrayList<>(PagesAndValues.all());
    Taken lost = all.remove(0);
    assertThat(without(all)).containsExactly(lost.family());
  }

  @Test
  void everyRestatedRowNamesItsPagesAndEachRestatesWhatTheRowCites() {
    Set<String> wrong = new TreeSet<>();
    for (Row row : FAMILIES.values().stream().flatMap(List::stream).toList()) {
      Basis.Published basis = (Basis.Published) row.provenance().basis();
      if (basis.seen() == HowSeen.RESTATED && basis.pages().isEmpty()) {
        wrong.add(row.key() + " names no page");
      }
      for (SourceId id : basis.pages()) {
        Source page = LISTED.get(id);
        if (page == null) {
          wrong.add(id + " is not listed");
        } else if (!page.wasSeen() || !page.restates().contains(basis.source())) {
          wrong.add(id + " does not restate " + basis.source());
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void aPageNamesItsIssuerOrIsOfAKindThatKeepsItBack() {
    List<Source> pages =
        LISTED.values().stream().filter(page -> !page.restates().isEmpty()).toList();
    assertThat(pages).hasSizeGreaterThan(40);
    assertThat(pages).filteredOn(page -> page.kind() == SourceKind.COMMERCIAL).isNotEmpty();
    assertThat(pages)
        .filteredOn(page -> page.kind() != SourceKind.COMMERCIAL)
        .isNotEmpty()
        .allMatch(page -> page.seenAt().isPresent());
    assertThat(pages).noneMatch(page -> page.kind() == SourceKind.STANDARD);
    assertThat(pages)
        .allMatch(page -> page.restates().stream().allMatch(LISTED::containsKey), "known");
  }

  private static Set<Origin> without(List<Taken> taken) {
    Set<Origin> held = taken.stream().map(Taken::family).collect(Collectors.toSet());
    return FAMILIES.keySet().stream()
        .filter(family -> !held.contains(family))
        .collect(Collectors.toSet());
  }

  private static List<SourceId> seenOn(Row row) {
    Basis.Published basis = (Basis.Published) row.provenance().basis();
    return basis.seen() == HowSeen.READ ? List.of(basis.source()) : basis.pages();
  }

  /** The published families in the edition that each was written for. */
  private static Map<Origin, List<Row>> families() {
    Map<Origin, List<Row>> families = new LinkedHashMap<>();
    AllRows.shipped(ShippedEditions.loaded(), ShippedOverlays.all())
        .forEach(
            (edition, rows) -> {
              for (Row row : rows) {
                if (row.provenance().basis() instanceof Basis.Published) {
                  families.computeIfAbsent(family(row), family -> new ArrayList<>()).add(row);
                }
              }
            });
    return families;
  }

  private static Origin family(Row row) {
    return new Origin(
        row.provenance().origin().value(), CsvTables.name(row), row.key().value().split("/", 2)[0]);
  }
}
