package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.source.SourceKind;
import org.junit.jupiter.api.Test;

/** Every row says honestly on whose word it stands, in our own words. */
class IntegrityTest {
  /** A source and a clause of it. */
  record Clause(String source, String clause, HowSeen seen) {}

  /**
   * The clauses that a page showed: chapter 10 of the care standard on pages that quote it, the
   * paragraphs of the laws in their own text.
   */
  private static final Set<Clause> CLAUSES_SEEN =
      Set.of(
          new Clause("nfpa-1851-2008", "chapter 10", HowSeen.RESTATED),
          new Clause("nfpa-1851-2014", "chapter 10", HowSeen.RESTATED),
          new Clause("nfpa-1851-2020", "chapter 10", HowSeen.RESTATED),
          new Clause("29-cfr-1910-1030", "(d)(3)", HowSeen.READ),
          new Clause("29-cfr-1910-132", "(e)", HowSeen.READ),
          new Clause("nmac-11-5-2-10", "11.5.2.10(B)(1)(a)", HowSeen.READ),
          new Clause("nmac-11-5-2-10", "11.5.2.10(B)(1)(b)", HowSeen.READ),
          new Clause("8-ccr-3403", "(b)", HowSeen.READ),
          new Clause("fl-69a-62-024", "(8)", HowSeen.READ),
          new Clause("nwt-firefighter-code", "11.4", HowSeen.READ),
          new Clause("nu-firefighter-code", "11.4", HowSeen.READ),
          new Clause("wac-296-305-02002", "(2)", HowSeen.READ),
          new Clause("wac-296-305-02002", "(3)", HowSeen.READ),
          new Clause("29-cfr-1910-156", "(e)(3)(ii)", HowSeen.READ),
          new Clause("nfpa-1971-2007", "7.10.2", HowSeen.RESTATED),
          new Clause("415-ilcs-170-20", "(a)", HowSeen.READ),
          new Clause("415-ilcs-170-20", "(b)", HowSeen.READ),
          new Clause("ca-hsc-13029", "(b)(1)", HowSeen.READ),
          new Clause("ca-hsc-13029", "(b)(2)", HowSeen.READ),
          new Clause("crs-25-5-1305", "(1)", HowSeen.READ),
          new Clause("rcw-70a-400-030", "(1)", HowSeen.READ),
          new Clause("rcw-70a-400-030", "(2)", HowSeen.READ),
          new Clause("vt-9-2494s", "(a)", HowSeen.READ),
          new Clause("vt-9-2494s", "(b)", HowSeen.READ));

  private static final Pattern REQUIREMENT =
      Pattern.compile("\\bshall\\b", Pattern.CASE_INSENSITIVE);
  private static final Pattern MARK = Pattern.compile("[\\u00AE\\u2122\\u00A9]");

  private static Stream<Basis.Published> published() {
    return ShippedEditions.rows().stream()
        .map(row -> row.provenance().basis())
        .filter(Basis.Published.class::isInstance)
        .map(Basis.Published.class::cast);
  }

  @Test
  void everySourceCitedIsListed() {
    Set<SourceId> listed = ShippedEditions.loaded().sources().keySet();
    assertThat(published().map(Basis.Published::source)).isNotEmpty().allMatch(listed::contains);
    assertThat(
            ShippedEditions.rows().stream()
                .flatMap(row -> row.provenance().basis().cited().stream()))
        .allMatch(listed::contains);
  }

  @Test
  void nothingOfAStandardWhoseTextWasNotSeenIsSaidToHaveBeenRead() {
    Map<SourceId, Source> sources = ShippedEditions.loaded().sources();
    assertThat(
            published().filter(basis -> basis.seen() == HowSeen.READ).map(Basis.Published::source))
        .isNotEmpty()
        .noneMatch(id -> id.value().startsWith("nfpa-"))
        .allMatch(id -> sources.get(id).seenAt().isPresent());
    assertThat(sources.values())
        .filteredOn(source -> source.title().startsWith("NFPA"))
        .hasSizeGreaterThanOrEqualTo(9)
        .allMatch(source -> source.kind() == SourceKind.STANDARD && source.seenAt().isEmpty());
  }

  @Test
  void onlyClausesThatWereSeenAreNamed() {
    Set<Clause> named =
        published()
            .filter(basis -> basis.clause().isPresent())
            .map(
                basis ->
                    new Clause(basis.source().value(), basis.clause().orElseThrow(), basis.seen()))
            .collect(Collectors.toSet());
    assertThat(named).isEqualTo(CLAUSES_SEEN);
  }

  @Test
  void everySourceIsCitedByARowOrACheck() {
    Set<String> cited = new TreeSet<>(TableTexts.sourcesCited());
    Facts.all().forEach(fact -> cited.add(fact.source()));
    PublicRegulations.all().forEach(rule -> cited.add(rule.source()));
    String notes = TableTexts.notes();
    assertThat(ShippedEditions.loaded().sources().values())
        .filteredOn(source -> !cited.contains(source.id().value()))
        .filteredOn(source -> !notes.contains(source.title().split(",", 2)[0]))
        .isEmpty();
  }

  @Test
  void whatIsDisputedSaysWhetherAPolicyMayDecide() {
    List<DefectRow> open = defects().filter(DefectRow::open).toList();
    assertThat(open)
        .isNotEmpty()
        .allSatisfy(
            row -> {
              assertThat(row.wording().contains("department may decide it by a written policy"))
                  .as("%s", row.key())
                  .isNotEqualTo(row.admits().isEmpty());
              assertThat(row.effect().effectKind()).isEqualTo(EffectKind.EVALUATE);
            });
    assertThat(defects().filter(row -> !row.open()))
        .allSatisfy(row -> assertThat(row.wording()).doesNotContain("overlay", "written policy"));
  }

  @Test
  void wordsAreOurOwnAndShort() {
    for (Row row : ShippedEditions.rows()) {
      for (String text : texts(row)) {
        assertThat(text).as("%s", row.key()).hasSizeLessThanOrEqualTo(500);
        assertThat(REQUIREMENT.matcher(text).find()).as("%s: %s", row.key(), text).isFalse();
        assertThat(MARK.matcher(text).find()).as("%s: %s", row.key(), text).isFalse();
      }
    }
  }

  // Names of makers and materials come as words with a capital letter inside a sentence; these are
  // all that the tables hold, and none of them is such a name.
  @Test
  void noWordingNamesAMakerOrABrand() {
    Set<String> names =
        ShippedEditions.rows().stream()
            .flatMap(row -> texts(row).stream())
            .flatMap(
                text ->
                    Pattern.compile("(?<=[a-z,;:(] )\\(?[A-Z][A-Za-z-]+").matcher(text).results())
            .map(match -> match.group().replace("(", ""))
            .filter(word -> !isEnumName(word))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(names)
        .isSubsetOf(
            "NFPA",
            "ASTM",
            "ISO",
            "US",
            "D-rings",
            "CBRN",
            "PFAS",
            "G",
            "A",
            "B",
            "Major",
            "MEMORY",
            "MEDIUM",
            "HIGH",
            "LOW",
            "BS",
            "March",
            "May",
            "August",
            "February",
            "Firefighter",
            "Autopsy",
            "Protocol");
  }

  private static boolean isEnumName(String word) {
    return word.length() > 8 && word.equals(word.toUpperCase(Locale.ROOT));
  }

  private static Stream<DefectRow> defects() {
    return ShippedEditions.rows().stream()
        .filter(DefectRow.class::isInstance)
        .map(DefectRow.class::cast);
  }

  private static List<String> texts(Row row) {
    Stream<String> own = Stream.empty();
    if (row instanceof DefectRow defect) {
      own = Stream.of(defect.wording());
    } else if (row instanceof CriterionRow criterion) {
      own = Stream.of(criterion.way());
    } else if (row instanceof CheckRow check) {
      own = Stream.of(check.shown());
    } else if (row instanceof CautionRow caution) {
      own = Stream.of(caution.text());
    } else if (row instanceof CareRouteRow route) {
      own = Stream.of(route.wording());
    } else if (row instanceof RepairLimitRow limit) {
      own = Stream.of(limit.wording());
    }
    return Stream.concat(own, row.provenance().note().stream()).toList();
  }
}
