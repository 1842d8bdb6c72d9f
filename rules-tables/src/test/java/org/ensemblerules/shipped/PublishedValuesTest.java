package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.csv.AllRows;
import org.ensemblerules.csv.CsvTables;
import org.ensemblerules.shipped.Facts.Fact;
import org.ensemblerules.shipped.PublishedValues.Value;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.tables.ShippedOverlays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every document that a row cites is held against what it says: a value of it, written down here
 * beside its name, is that of a row that stands on it.
 */
class PublishedValuesTest {
  private static final List<String> FROM_SUREST =
      List.of("READ", "RESTATED", "MEMORY_HIGH", "MEMORY_MEDIUM", "MEMORY_LOW");
  private static final Map<OriginId, List<Row>> ROWS =
      AllRows.shipped(ShippedEditions.loaded(), ShippedOverlays.all());

  static List<Value> values() {
    return PublishedValues.all();
  }

  @ParameterizedTest
  @MethodSource("values")
  void theTableSaysWhatTheDocumentSays(Value value) {
    List<Row> rows = rows(value);
    assertThat(rows).isNotEmpty();
    for (Row row : rows) {
      String column = value.column().replace("~", "");
      String cell = CsvTables.cells(row).get(column);
      if (value.column().endsWith("~")) {
        assertThat(cell).as("%s", row.key()).contains(value.value());
      } else {
        assertThat(cell).as("%s", row.key()).isEqualTo(value.value());
      }
      Basis basis = there(row.provenance().basis());
      assertThat(basis.cited()).as("%s", row.key()).contains(new SourceId(value.source()));
      assertThat(FROM_SUREST.indexOf(RowFields.certainty(basis)))
          .as("%s is surer than what was seen", row.key())
          .isGreaterThanOrEqualTo(FROM_SUREST.indexOf(value.certainty()));
      if (basis instanceof Basis.Published published) {
        assertThat(published.clause()).as("%s", row.key()).isEqualTo(value.clause());
      }
    }
  }

  @Test
  void everySourceThatARowCitesIsHeldAgainstWhatItSays() {
    assertThat(unheld(PublishedValues.all())).isEmpty();
  }

  @Test
  void aSourceThatLosesItsOnlyCheckIsTold() {
    List<Value> without =
        PublishedValues.all().stream()
            .filter(value -> !value.source().equals("aatcc-127"))
            .toList();
    assertThat(unheld(without)).containsExactly("aatcc-127");
  }

  /** The sources that rows cite and of which no check holds a value of such a row. */
  private static Set<String> unheld(List<Value> values) {
    Set<String> unheld = new TreeSet<>();
    all()
        .flatMap(row -> row.provenance().basis().cited().stream())
        .forEach(id -> unheld.add(id.value()));
    assertThat(unheld).hasSizeGreaterThan(60);
    values.forEach(value -> unheld.remove(value.source()));
    Facts.all().stream()
        .filter(PublishedValuesTest::isOfARowOfItsSource)
        .forEach(fact -> unheld.remove(fact.source()));
    return unheld;
  }

  /** FactsTest asserts the value; whether the row stands on the source is asked here. */
  private static boolean isOfARowOfItsSource(Fact fact) {
    return fact.editions().stream()
        .flatMap(edition -> ROWS.get(edition).stream())
        .filter(row -> CsvTables.name(row).equals(fact.table()))
        .filter(row -> isOf(row, fact.rows()))
        .anyMatch(
            row ->
                row.provenance().basis().cited().equals(Optional.of(new SourceId(fact.source()))));
  }

  @Test
  void everyClauseThatARowNamesIsHeldAgainstWhatItSays() {
    Set<List<String>> held = new HashSet<>();
    for (Value value : PublishedValues.all()) {
      value.clause().ifPresent(clause -> held.add(List.of(value.source(), clause)));
    }
    Set<List<String>> named = new HashSet<>();
    published()
        .forEach(
            basis ->
                basis
                    .clause()
                    .ifPresent(clause -> named.add(List.of(basis.source().value(), clause))));
    assertThat(named).hasSizeGreaterThan(15).isSubsetOf(held);
  }

  @Test
  void everyPublishedRowNamesAListedSourceAndAClauseOrSaysThatNoneWasSeen() {
    Map<SourceId, Source> listed =
        Stream.concat(
                ShippedEditions.loaded().sources().values().stream(),
                ShippedOverlays.all().stream().flatMap(file -> file.sources().stream()))
            .collect(Collectors.toMap(Source::id, source -> source, (first, again) -> first));
    List<String> wrong = new ArrayList<>();
    for (Basis.Published basis : published().toList()) {
      Source source = listed.get(basis.source());
      if (source == null) {
        wrong.add(basis.source() + " is not listed");
      } else if (basis.seen() == HowSeen.READ && source.seenAt().isEmpty()) {
        wrong.add(basis.source() + " was read nowhere");
      }
      String last = basis.clause().map(clause -> ", " + clause).orElse(", clause not seen");
      if (!basis.text().replaceFirst(", on page .*", "").endsWith(last)) {
        wrong.add(basis.text());
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(published().filter(basis -> basis.clause().isPresent())).isNotEmpty();
    assertThat(published().filter(basis -> basis.clause().isEmpty())).isNotEmpty();
  }

  private static Stream<Row> all() {
    return ROWS.values().stream().flatMap(List::stream);
  }

  private static Stream<Basis.Published> published() {
    return all()
        .map(row -> there(row.provenance().basis()))
        .filter(Basis.Published.class::isInstance)
        .map(Basis.Published.class::cast);
  }

  private static Basis there(Basis basis) {
    return basis instanceof Basis.CarriedOver carried ? carried.there() : basis;
  }

  private static List<Row> rows(Value value) {
    List<Row> rows =
        value
            .edition()
            .map(edition -> ROWS.get(new OriginId(edition)))
            .orElseGet(() -> List.copyOf(ShippedEditions.loaded().editions()));
    return rows.stream()
        .filter(row -> CsvTables.name(row).equals(value.table()))
        .filter(row -> isOf(row, value.rows()))
        .toList();
  }

  private static boolean isOf(Row row, String family) {
    String key = row.key().value();
    return key.equals(family) || key.startsWith(family + "/");
  }
}
