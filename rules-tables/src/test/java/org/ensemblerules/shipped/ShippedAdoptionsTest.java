package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.ruleset.AdoptionAnswer;
import org.ensemblerules.ruleset.AdoptionKind;
import org.ensemblerules.ruleset.AdoptionRow;
import org.ensemblerules.ruleset.AdoptionTable;
import org.ensemblerules.ruleset.RecordKinds;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.RuleSets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the laws of places ask to go by, held against those laws. */
class ShippedAdoptionsTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final AdoptionTable TABLE =
      ShippedEditions.loaded().find(RecordKinds.ADOPTIONS).orElseThrow();

  private static List<AdoptionRow> held(String place, Subject subject, LocalDate day) {
    AdoptionAnswer answer = TABLE.inForce(new PlaceCode(place), day, subject);
    return answer instanceof AdoptionAnswer.Rules rules
        ? rules.rules().stream().map(AdoptionAnswer.Held::row).toList()
        : List.of();
  }

  /**
   * WAC 296-305-02001(4) and -02002(5); 8 CCR rulemaking of 2022; 37 TAC 435.1(a); R 408.17431(5);
   * SPS 330.11(1); N.J.A.C. 12:100-10.16(a); 11.5.2.10 NMAC; 69A-37.501(1)(f).
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "US-WA|CARE|FIXED NFPA_1851_2008, MANUFACTURER",
        "US-WA|INSPECTION|OWN_RULE",
        "US-CA|CARE|FIXED NFPA_1851_2014",
        "US-TX|CARE|NONE_NAMED, NEWEST, NONE_NAMED",
        "US-TX|INSPECTION|NONE_NAMED, NEWEST",
        "US-TX|PRODUCT|AT_PURCHASE, FIXED US_FEDERAL_1980",
        "US-MI|CARE|OWN_RULE, MANUFACTURER",
        "US-WI|INSPECTION|MANUFACTURER",
        "US-NJ|INSPECTION|OWN_RULE",
        "US-NM|INSPECTION|OWN_RULE",
        "US-NM|PRODUCT|NONE_NAMED, FIXED US_FEDERAL_1980",
        "US-NJ|PRODUCT|OWN_RULE, FIXED US_FEDERAL_1980",
        "US-FL|CARE|FIXED NFPA_1851_2020, OWN_RULE",
        "CA-YT|CARE|NEWEST",
        "CA-QC|AGE|MANUFACTURER",
        "US-MA|CARE|",
        "CA-ON|CARE|MANUFACTURER",
        "CA-NT|CARE|OWN_RULE",
        "CA-NU|CARE|OWN_RULE",
        "GB-ENG|CARE|OWN_RULE",
        "JP-13|CARE|OWN_RULE",
        "AU-NSW|CARE|"
      })
  void whatEachPlaceAsks(String place, Subject subject, String expected) {
    List<String> rules =
        held(place, subject, TODAY).stream()
            .map(row -> row.kind() + row.edition().map(edition -> " " + edition).orElse(""))
            .toList();
    assertThat(String.join(", ", rules)).isEqualTo(expected == null ? "" : expected);
  }

  /** 8 CCR, rulemaking filed 7 November 2022: in force on 1 January 2023. */
  @Test
  void aRuleHoldsFromItsFirstDay() {
    assertThat(held("US-CA", Subject.CARE, LocalDate.of(2022, 12, 31))).isEmpty();
    assertThat(held("US-CA", Subject.CARE, LocalDate.of(2023, 1, 1))).hasSize(1);
  }

  @Test
  void whatIsPastItsReviewIsStale() {
    AdoptionAnswer answer =
        TABLE.inForce(new PlaceCode("US-CA"), LocalDate.of(2030, 1, 1), Subject.CARE);
    assertThat(((AdoptionAnswer.Rules) answer).rules())
        .allMatch(AdoptionAnswer.Held::stale)
        .allMatch(AdoptionAnswer.Held::sinceKnown);
  }

  /** 37 TAC 435.1(a)(2): the edition in effect when the entity contracts. */
  @ParameterizedTest
  @CsvSource({
    "2012-08-28, ",
    "2012-08-29, NFPA_1971_2013",
    "2017-08-20, NFPA_1971_2013",
    "2017-08-21, NFPA_1971_2018"
  })
  void texasTakesTheEditionAtTheContract(LocalDate bought, String edition) {
    AdoptionRow row = held("US-TX", Subject.PRODUCT, TODAY).get(0);
    assertThat(row.kind()).isEqualTo(AdoptionKind.AT_PURCHASE);
    assertThat(
            AdoptionTable.choose(
                    row,
                    ShippedEditions.loaded().editions(Subject.PRODUCT),
                    TODAY,
                    Optional.of(bought))
                .map(OriginId::value))
        .isEqualTo(Optional.ofNullable(edition));
    assertThat(
            AdoptionTable.choose(
                row, ShippedEditions.loaded().editions(Subject.PRODUCT), TODAY, Optional.empty()))
        .isEmpty();
  }

  /** Yukon: the most current edition. That of 2026 has no known first day, so it is 2020. */
  @Test
  void theNewestIsTheLastKnownToHaveTakenEffect() {
    AdoptionRow row = held("CA-YT", Subject.CARE, TODAY).get(0);
    assertThat(
            AdoptionTable.choose(
                row, ShippedEditions.loaded().editions(Subject.CARE), TODAY, Optional.empty()))
        .contains(ShippedEditions.EDITION_2020);
  }

  /** A department in Washington that cleans by the edition named and inspects by another. */
  @Test
  void rulesAreComposedBySubject() {
    OriginId care =
        held("US-WA", Subject.CARE, TODAY).stream()
            .flatMap(row -> row.edition().stream())
            .findFirst()
            .orElseThrow();
    RuleSet rules =
        RuleSets.compose(
                ShippedEditions.loaded(),
                Map.of(
                    Subject.CARE, care,
                    Subject.INSPECTION, ShippedEditions.EDITION_2020,
                    Subject.AGE, ShippedEditions.EDITION_2020))
            .orElseThrow()
            .rules();
    assertThat(rules.identity().editions())
        .containsEntry(Subject.CARE, ShippedEditions.EDITION_2008)
        .containsEntry(Subject.INSPECTION, ShippedEditions.EDITION_2020);
    assertThat(rules.tables().tasks().rows())
        .extracting(row -> row.key().value().split("/", 2)[0])
        .contains("cleaning-yearly", "routine-at-start-of-duty")
        .doesNotContain("cleaning-twice-a-year");
  }
}
