package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TimeZone;
import java.util.stream.Collectors;
import org.ensemblerules.GearRules;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.ruleset.HeldBy;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.ruleset.TableKinds;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.RuleSets;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.ShippedTables;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Caution;
import org.ensemblerules.verdict.LayerAge;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Which rule sets come with the library, and how others are composed of its tables. */
class ShippedRulesTest {
  @Test
  void theDefaultEditionIsThatOf2020() {
    assertThat(ShippedRules.DEFAULT_EDITION).isEqualTo(ShippedEditions.EDITION_2020);
    assertThat(ShippedRules.standard().rules())
        .isSameAs(ShippedRules.of(ShippedEditions.EDITION_2020).orElseThrow().rules());
    assertThat(ShippedRules.standard().identity().editions())
        .containsExactlyInAnyOrderEntriesOf(
            Map.of(
                Subject.CARE,
                ShippedEditions.EDITION_2020,
                Subject.INSPECTION,
                ShippedEditions.EDITION_2020,
                Subject.AGE,
                ShippedEditions.EDITION_2020,
                Subject.RECORD,
                ShippedEditions.EDITION_2020));
  }

  @Test
  void anEditionWithoutRulesIsEmpty() {
    assertThat(ShippedRules.of(new OriginId("NFPA_1851_1999"))).isEmpty();
    assertThat(ShippedRules.of(ShippedEditions.EDITION_2001)).isEmpty();
  }

  @Test
  void editionsComeInTheOrderOfPublication() {
    assertThat(ShippedRules.editions())
        .isSorted()
        .extracting(Edition::id)
        .containsExactlyElementsOf(ShippedEditions.WITH_INSPECTION);
  }

  @Test
  void theFingerprintIsTheSameAtEachLoad() {
    LoadedTables loaded = ShippedTables.load().orElseThrow();
    for (OriginId edition : ShippedEditions.WITH_INSPECTION) {
      RuleSet anew = RuleSets.compose(loaded, edition).orElseThrow().rules();
      assertThat(fingerprint(anew)).matches("[0-9a-f]{64}").isEqualTo(fingerprint(edition));
      assertThat(anew.identity()).isEqualTo(ShippedEditions.rules(edition).identity());
    }
    assertThat(ShippedEditions.WITH_INSPECTION)
        .extracting(ShippedRulesTest::fingerprint)
        .doesNotHaveDuplicates();
  }

  // Upper case of "i", digits and years differ between these; the meaning of a row does not.
  @Tag("slow")
  @Test
  void theFingerprintIsTheSameInAnyLocaleAndZone() {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String tag : List.of("en-US", "tr-TR-u-ca-buddhist-nu-arab")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        LoadedTables anew = ShippedTables.load().orElseThrow();
        for (OriginId edition : ShippedEditions.WITH_INSPECTION) {
          assertThat(fingerprint(RuleSets.compose(anew, edition).orElseThrow().rules()))
              .as("%s under %s", edition, tag)
              .isEqualTo(fingerprint(edition));
        }
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  private static String fingerprint(OriginId edition) {
    return fingerprint(ShippedEditions.rules(edition));
  }

  private static String fingerprint(RuleSet rules) {
    return rules.identity().fingerprint();
  }

  @Test
  void anEditionWithoutTheTablesOfASubjectIsRefusedWithThoseThatHaveThem() {
    assertThat(faults(ShippedEditions.EDITION_2001, ShippedEditions.EDITION_2001))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.toString())
                  .contains("/editions/INSPECTION", "NFPA_1851_2001")
                  .contains("NFPA_1851_2008, NFPA_1851_2014, NFPA_1851_2020");
            });
    OriginId product = new OriginId("NFPA_1971_2018");
    assertThat(faults(product, product))
        .extracting(JsonFault::toString)
        .satisfiesExactly(
            inspection -> assertThat(inspection).contains("/editions/INSPECTION", "NFPA_1971_2018"),
            age ->
                assertThat(age)
                    .contains("/editions/AGE", "NFPA_1971_2018")
                    .contains("NFPA_1851_2001, NFPA_1851_2008"));
    assertThat(faults(ShippedEditions.EDITION_2020, new OriginId("NFPA_1851_2019")))
        .singleElement()
        .extracting(JsonFault::toString)
        .asString()
        .contains("/editions/AGE", "NFPA_1851_2019", "NFPA_1851_2020");
    assertThat(RuleSets.compose(ShippedEditions.loaded(), Map.of()))
        .isInstanceOf(Checked.Refused.class)
        .asString()
        .contains("/editions/INSPECTION", "/editions/AGE");
  }

  private static List<JsonFault> faults(OriginId inspection, OriginId age) {
    return compose(inspection, age) instanceof Checked.Refused<GearRules, JsonFault> refused
        ? refused.faults()
        : List.of();
  }

  private static Checked<GearRules, JsonFault> compose(OriginId inspection, OriginId age) {
    return RuleSets.compose(
        ShippedEditions.loaded(), Map.of(Subject.INSPECTION, inspection, Subject.AGE, age));
  }

  @Test
  void withTheAgesOf2001NoStructuralGearIsTooOld() {
    RuleSet rules =
        compose(ShippedEditions.EDITION_2008, ShippedEditions.EDITION_2001).orElseThrow().rules();
    LocalDate fiftyYearsOn = ShippedGear.MADE.plusYears(50);
    for (Kind kind : ShippedGear.kinds(rules)) {
      Verdict verdict =
          GearRules.of(rules).assess(ShippedGear.fit(rules, kind).build(), ShippedGear.AS_OF);
      boolean told = kind.use() == Use.STRUCTURAL && !kind.element().name().startsWith("DRAG");
      for (LayerAge age : verdict.ages()) {
        assertThat(age.answer())
            .as("%s", kind)
            .isInstanceOf(told ? AgeAnswer.NoLimitSet.class : AgeAnswer.NoRule.class);
        assertThat(age.answer().keepsOut(fiftyYearsOn)).isEqualTo(!told);
      }
      assertThat(verdict.service()).as("%s", kind).isEqualTo(told ? Service.IN : Service.OUT);
    }
  }

  @Test
  void everyVerdictUnder2020SaysThatTheEditionWasConsolidated() {
    RuleSet rules = ShippedRules.standard().rules();
    assertThat(rules.editions().get(Subject.INSPECTION))
        .isNotNull()
        .extracting(Edition::consolidatedInto)
        .isEqualTo(Optional.of(ShippedEditions.EDITION_2026));
    for (Kind kind : ShippedGear.kinds(rules)) {
      Assessment fit = ShippedGear.fit(rules, kind).build();
      Assessment bare =
          Assessment.builder(
                  ShippedGear.element(rules, kind).cbrnOption(YesNoUnknown.UNKNOWN).build())
              .build();
      for (Assessment each : List.of(fit, bare)) {
        assertThat(GearRules.of(rules).assess(each, ShippedGear.AS_OF).cautions())
            .extracting(Caution::text)
            .anyMatch(text -> text.contains("NFPA 1850 (2026)") && text.contains("not confirmed"));
      }
    }
    for (OriginId edition : List.of(ShippedEditions.EDITION_2008, ShippedEditions.EDITION_2014)) {
      RuleSet older = ShippedEditions.rules(edition);
      Kind kind = ShippedGear.kinds(older).get(0);
      assertThat(
              GearRules.of(older)
                  .assess(ShippedGear.fit(older, kind).build(), ShippedGear.AS_OF)
                  .cautions())
          .extracting(Caution::text)
          .anyMatch(text -> text.contains("superseded"));
    }
  }

  /** Nothing of the text of NFPA 1850 was seen, so nothing under it stands as if it had been. */
  @Test
  void whateverRestsOnAnEditionWhoseTextWasNotSeenSaysSo() {
    RuleSet rules = ShippedEditions.rules(ShippedEditions.EDITION_2026);
    Set<Row> beside = new HashSet<>();
    TableKinds.all().stream()
        .filter(kind -> kind.heldBy() != HeldBy.EDITIONS)
        .forEach(kind -> beside.addAll(rules.tables().rows(kind)));
    assertThat(rules.tables().rows())
        .filteredOn(row -> !beside.contains(row))
        .filteredOn(row -> !row.provenance().origin().equals(ShippedEditions.EDITION_2026))
        .hasSizeGreaterThan(9000)
        .allSatisfy(
            row ->
                assertThat(row.provenance().basis())
                    .isInstanceOfSatisfying(
                        Basis.CarriedOver.class,
                        carried ->
                            assertThat(carried.into()).isEqualTo(ShippedEditions.EDITION_2026)));
    Kind kind = ShippedGear.kinds(rules).get(0);
    Assessment bare = Assessment.builder(ShippedGear.element(rules, kind).build()).build();
    Verdict verdict = GearRules.of(rules).assess(bare, ShippedGear.AS_OF);
    assertThat(verdict.cautions())
        .extracting(Caution::text)
        .anyMatch(text -> text.startsWith("The text of NFPA 1850 (2026) was not seen."));
    assertThat(verdict.reasons())
        .filteredOn(reason -> reason.row().isPresent())
        .isNotEmpty()
        .allSatisfy(
            reason ->
                assertThat(reason.caution().orElseThrow())
                    .startsWith(
                        "Carried over from an earlier edition and not confirmed for"
                            + " NFPA_1850_2026"));
  }

  /** But for the basis and the cautions it is the edition of 2020, row by row. */
  @Test
  void whatIsCarriedOverIsWhatItWas() {
    Set<String> own =
        ShippedEditions.rules(ShippedEditions.EDITION_2026).tables().rows().stream()
            .filter(row -> row.provenance().origin().equals(ShippedEditions.EDITION_2026))
            .map(row -> row.key().value())
            .collect(Collectors.toSet());
    assertThat(own).isNotEmpty();
    assertThat(meanings(ShippedEditions.EDITION_2026, own))
        .containsExactlyInAnyOrderElementsOf(meanings(ShippedEditions.EDITION_2020, own));
  }

  private static List<String> meanings(OriginId edition, Set<String> without) {
    Set<String> cautions = new HashSet<>();
    RuleSet rules = ShippedEditions.rules(edition);
    rules.tables().cautions().rows().forEach(row -> cautions.add(row.key().value()));
    return rules.tables().rows().stream()
        .filter(row -> !cautions.contains(row.key().value()))
        .filter(row -> !without.contains(row.key().value()))
        .map(row -> row.key() + " " + row.canonical())
        .toList();
  }

  @Test
  void aDayBeforeTheEditionTookEffectIsNotJudgedByIt() {
    for (OriginId edition : ShippedEditions.WITH_INSPECTION) {
      RuleSet rules = ShippedEditions.rules(edition);
      Edition named = ShippedEditions.loaded().edition(edition).orElseThrow();
      if (named.effective().isEmpty()) {
        assertThat(edition).isEqualTo(ShippedEditions.EDITION_2026);
        continue;
      }
      LocalDate before = named.effective().orElseThrow().minusDays(1);
      Kind kind = ShippedGear.kinds(rules).get(0);
      assertThat(GearRules.of(rules).service(ShippedGear.fit(rules, kind).build(), before))
          .isEqualTo(Service.OUT);
    }
  }
}
