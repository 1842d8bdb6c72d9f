package org.ensemblerules.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.tables.set.EditionTables;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.testkit.ShippedLoad;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pages say what the tables say. With {@code -Ddocs.update=true} they are written anew. */
class PagesTest {
  private static final Path FOLDER = Path.of("..", "docs", "tables");
  private static final LoadedTables TABLES = ShippedLoad.tables();

  private static final List<Page> PAGES =
      List.of(
          Counts.page(TABLES),
          GearPages.elements(TABLES),
          InspectionPages.criteria(TABLES),
          DefectPage.page(TABLES),
          InspectionPages.intervals(TABLES),
          InspectionPages.returns(TABLES),
          TaskPage.page(TABLES),
          CarePages.routes(TABLES),
          CarePages.repairs(TABLES),
          GearPages.ages(TABLES),
          RecordPages.items(TABLES),
          RecordPages.disposal(TABLES),
          RecordPages.laws(TABLES),
          RecordPages.adoptions(TABLES),
          DutyPages.permissions(TABLES),
          DutyPages.destinations(TABLES),
          DutyPages.checks(TABLES),
          DutyPages.cautions(TABLES),
          MeasurementPage.page(TABLES),
          DocumentPages.sources(TABLES),
          DocumentPages.editions(TABLES),
          FollowedPage.page(TABLES),
          LookedUp.page(TABLES),
          LookedUp.disagreementsPage());

  static List<Page> pages() {
    return PAGES;
  }

  @ParameterizedTest(name = "{index}")
  @MethodSource("pages")
  void thePageSaysWhatTheTablesSay(Page page) throws IOException {
    Path file = FOLDER.resolve(page.name());
    if (Boolean.getBoolean("docs.update")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, page.text());
    }
    assertThat(file)
        .as("%s differs from the tables; write it anew with -Ddocs.update=true", page.name())
        .usingCharset(StandardCharsets.UTF_8)
        .hasContent(page.text());
  }

  @Test
  void noOtherPageStandsThere() throws IOException {
    Set<String> written = pages().stream().map(Page::name).collect(Collectors.toSet());
    try (Stream<Path> files = Files.list(FOLDER)) {
      assertThat(files.map(file -> file.getFileName().toString())).allMatch(written::contains);
    }
  }

  @Test
  void everyFamilyStandsOnAPage() {
    String all = pages().stream().map(Page::text).collect(Collectors.joining());
    Set<String> missing = new TreeSet<>();
    for (EditionTables edition : TABLES.tables().values()) {
      Counts.rows(edition).stream()
          .map(row -> Words.basis(row.provenance()))
          .distinct()
          .filter(basis -> !all.contains(basis.replace("|", "\\|")))
          .forEach(missing::add);
    }
    assertThat(missing).isEmpty();
  }

  // A family is grouped by the beginning of its rows' keys; its rows must agree in all but what
  // the key names.
  @Test
  void theRowsOfAFamilyAgree() {
    for (Family<?> family : Family.of(TABLES, InspectionKinds.DEFECTS)) {
      assertThat(family.rows().stream().map(row -> row.provenance().basis()).distinct())
          .as(family.key())
          .hasSize(1);
      assertThat(
              family.rows().stream()
                  .map(row -> row.canonical().subList(4, row.canonical().size()))
                  .distinct())
          .as(family.key())
          .hasSize(1);
    }
  }
}
