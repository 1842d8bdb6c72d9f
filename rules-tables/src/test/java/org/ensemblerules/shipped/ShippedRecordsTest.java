package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.record.KeepAnswer;
import org.ensemblerules.record.PfasAnswer;
import org.ensemblerules.record.PfasContent;
import org.ensemblerules.record.PfasLawTable;
import org.ensemblerules.record.PfasNotice;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.record.RecordDetail;
import org.ensemblerules.record.RecordItem;
import org.ensemblerules.record.RecordItemRow;
import org.ensemblerules.record.SaleAnswer;
import org.ensemblerules.record.SaleParty;
import org.ensemblerules.retirement.DisposalRoute;
import org.ensemblerules.retirement.DisposalTable;
import org.ensemblerules.retirement.RetiredGear;
import org.ensemblerules.retirement.RetirementCause;
import org.ensemblerules.retirement.RouteAnswer;
import org.ensemblerules.ruleset.RecordKinds;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.set.EditionTables;
import org.ensemblerules.tables.set.LoadedTables;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The shipped tables of records, disposal, custody and laws against what public documents say. What
 * agreed is listed in {@code target/outside-checks-records.csv}.
 */
class ShippedRecordsTest {
  private static final List<String> AGREED = Collections.synchronizedList(new ArrayList<>());
  private static final PfasLawTable LAWS =
      ShippedEditions.loaded().find(RecordKinds.PFAS_LAWS).orElseThrow();

  private static void agreed(String source, String what) {
    AGREED.add(source + ";" + what);
  }

  private static EditionTables tables(OriginId edition) {
    return ShippedEditions.loaded().tables(edition);
  }

  private static Map<RecordItem, Set<RecordDetail>> asked(
      OriginId edition, ElementKind element, Use use) {
    Map<RecordItem, Set<RecordDetail>> asked = new EnumMap<>(RecordItem.class);
    for (RecordItem item : RecordItem.values()) {
      tables(edition)
          .find(RecordKinds.RECORD_ITEMS)
          .orElseThrow()
          .row(element, use, item)
          .ifPresent(row -> asked.put(item, row.details()));
    }
    return asked;
  }

  // Texas Commission on Fire Protection, guide to complying with NFPA 1851, 2014 edition: the list
  // of eleven records, by number.
  @ParameterizedTest
  @CsvSource({
    "1, ISSUED_TO, HOLDER",
    "2, ISSUE_DATE_AND_CONDITION, DATE CONDITION",
    "3, MAKER_AND_MODEL, MAKER MODEL",
    "4, IDENTIFICATION, IDENTIFICATION",
    "5, MANUFACTURE_DATE, MONTH_AND_YEAR",
    "6, ADVANCED_INSPECTIONS, DATE FINDINGS",
    "7, ADVANCED_CLEANINGS, DATE FINDINGS",
    "8, CLEANING_REASON_AND_DOER, REASON DOER",
    "9, REPAIRS, DATE DOER DESCRIPTION",
    "10, RETIREMENT_DATE, DATE",
    "11, DISPOSAL, DATE METHOD"
  })
  void theElevenItemsAreThoseOfAStatesGuide(int number, RecordItem item, String details) {
    assertThat(RecordItem.values()[number - 1]).isEqualTo(item);
    Set<RecordDetail> expected = EnumSet.noneOf(RecordDetail.class);
    for (String detail : details.split(" ", -1)) {
      expected.add(RecordDetail.valueOf(detail));
    }
    for (OriginId edition : ShippedEditions.WITH_INSPECTION) {
      for (RecordItemRow row :
          tables(edition).find(RecordKinds.RECORD_ITEMS).orElseThrow().rows()) {
        if (row.item() == item) {
          assertThat(row.details()).as("%s %s", edition, row.key()).isEqualTo(expected);
        }
      }
    }
    agreed("Texas guide to NFPA 1851 of 2014", "item " + number + ": " + item + " " + expected);
  }

  @Test
  void thereAreTenItemsIn2001AndElevenFrom2008On() {
    for (ElementKind element :
        List.of(ElementKind.COAT, ElementKind.HELMET, ElementKind.FOOTWEAR)) {
      Map<RecordItem, Set<RecordDetail>> first =
          asked(ShippedEditions.EDITION_2001, element, Use.STRUCTURAL);
      assertThat(first).hasSize(10).doesNotContainKey(RecordItem.MAKER_AND_MODEL);
      assertThat(first.get(RecordItem.ADVANCED_CLEANINGS)).containsExactly(RecordDetail.DATE);
      for (OriginId edition : ShippedEditions.WITH_INSPECTION) {
        assertThat(asked(edition, element, Use.STRUCTURAL)).hasSize(11);
        assertThat(asked(edition, element, Use.PROXIMITY)).hasSize(11);
      }
    }
    assertThat(asked(ShippedEditions.EDITION_2001, ElementKind.COAT, Use.PROXIMITY)).isEmpty();
  }

  @Test
  void rowsByEdition() {
    assertThat(
            tables(ShippedEditions.EDITION_2001)
                .find(RecordKinds.RECORD_ITEMS)
                .orElseThrow()
                .rows())
        .hasSize(70);
    assertThat(tables(ShippedEditions.EDITION_2001).find(RecordKinds.DISPOSAL_ROUTES)).isEmpty();
    assertThat(tables(ShippedEditions.EDITION_2001).find(RecordKinds.CUSTODY_STEPS)).isEmpty();
    for (OriginId edition : ShippedEditions.WITH_INSPECTION) {
      assertThat(tables(edition).find(RecordKinds.RECORD_ITEMS).orElseThrow().rows()).hasSize(198);
      assertThat(tables(edition).find(RecordKinds.DISPOSAL_ROUTES).orElseThrow().rows())
          .hasSize(396);
      assertThat(tables(edition).find(RecordKinds.CUSTODY_STEPS).orElseThrow().rows()).hasSize(10);
    }
    assertThat(ShippedEditions.loaded().tables(LoadedTables.LAW).subjects())
        .containsExactly(Subject.RECORD);
    assertThat(LAWS.rows()).hasSize(27);
  }

  /** Every element has a way to end, whatever it was retired for. */
  @ParameterizedTest
  @MethodSource("editions")
  void everyCauseLeavesARouteOpen(OriginId edition) {
    for (RetirementCause cause :
        List.of(
            new RetirementCause.OverAge(LocalDate.of(2024, 1, 1)),
            new RetirementCause.BeyondRepair("shell"),
            new RetirementCause.CannotBeCleaned("asbestos"),
            new RetirementCause.CbrnAgent(),
            new RetirementCause.NeverComplied("2007"),
            new RetirementCause.OriginNotShown(),
            new RetirementCause.OwnDecision("new gear"))) {
      for (YesNoUnknown custody : YesNoUnknown.values()) {
        Set<DisposalRoute> open =
            open(
                edition,
                gear(
                    cause,
                    custody,
                    YesNoUnknown.UNKNOWN,
                    YesNoUnknown.UNKNOWN,
                    YesNoUnknown.UNKNOWN));
        assertThat(open.contains(DisposalRoute.CUSTODY)).isEqualTo(custody != YesNoUnknown.NO);
        assertThat(open).isNotEmpty();
      }
    }
  }

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  // 37 TAC 427.207: gear no longer used for emergencies may be used for training without live fire
  // if it is not contaminated, defective or damaged and is marked so that it is easily recognized.
  @ParameterizedTest
  @MethodSource("editions")
  void trainingGearIsMarkedSoundAndClean(OriginId edition) {
    RetirementCause old = new RetirementCause.OverAge(LocalDate.of(2024, 1, 1));
    for (YesNoUnknown marked : YesNoUnknown.values()) {
      for (YesNoUnknown damaged : YesNoUnknown.values()) {
        for (YesNoUnknown contaminated : YesNoUnknown.values()) {
          boolean allowed =
              marked == YesNoUnknown.YES
                  && damaged == YesNoUnknown.NO
                  && contaminated == YesNoUnknown.NO;
          assertThat(
                  open(edition, gear(old, YesNoUnknown.NO, marked, damaged, contaminated))
                      .contains(DisposalRoute.NON_LIVE_FIRE_TRAINING))
              .isEqualTo(allowed);
        }
      }
    }
    for (RetirementCause cause :
        List.of(
            new RetirementCause.CannotBeCleaned("asbestos"),
            new RetirementCause.BeyondRepair("shell"),
            new RetirementCause.NeverComplied("2007"))) {
      assertThat(
              open(
                  edition,
                  gear(cause, YesNoUnknown.NO, YesNoUnknown.YES, YesNoUnknown.NO, YesNoUnknown.NO)))
          .doesNotContain(DisposalRoute.NON_LIVE_FIRE_TRAINING);
    }
    agreed("37 TAC 427.207", "27 states of training gear, edition " + edition);
  }

  private static RetiredGear gear(
      RetirementCause cause,
      YesNoUnknown custody,
      YesNoUnknown marked,
      YesNoUnknown damaged,
      YesNoUnknown contaminated) {
    return new RetiredGear(
        ElementKind.COAT, Use.STRUCTURAL, Set.of(cause), custody, marked, damaged, contaminated);
  }

  private static Set<DisposalRoute> open(OriginId edition, RetiredGear gear) {
    DisposalTable routes = tables(edition).find(RecordKinds.DISPOSAL_ROUTES).orElseThrow();
    Set<DisposalRoute> open = EnumSet.noneOf(DisposalRoute.class);
    routes.routes(gear).stream()
        .filter(RouteAnswer.Open.class::isInstance)
        .forEach(answer -> open.add(answer.route()));
    return open;
  }

  // The first day of each notice: the statutes' own texts (RCW 70A.400.030(1); C.R.S.
  // 25-5-1305(1); California Health and Safety Code 13029(b)(1); 9 V.S.A. 2494s(a); 415 ILCS
  // 170/20(a)), and pages that restate RSA 154:8-c, the Massachusetts act of 2024 and Connecticut's
  // Public Act 24-59.
  @ParameterizedTest
  @CsvSource({
    "US-WA, 2018-07-01, RCW 70A.400.030(1)",
    "US-CO, 2019-08-02, C.R.S. 25-5-1305(1)",
    "US-CA, 2022-01-01, Health and Safety Code 13029(b)(1)",
    "US-IL, 2026-01-01, 415 ILCS 170/20(a)",
    "US-NH, 2020-01-01, RSA 154:8-c as restated",
    "US-MA, 2025-01-01, act of 2024 as restated",
    "US-CT, 2026-01-01, PA 24-59 as restated"
  })
  void aNoticeIsAskedFromTheDayOfTheStatute(String place, LocalDate first, String source) {
    PlaceCode at = new PlaceCode(place);
    assertThat(LAWS.notice(at, first)).isInstanceOf(PfasAnswer.Asked.class);
    assertThat(LAWS.notice(at, first.minusDays(1))).isInstanceOf(PfasAnswer.OnOtherDays.class);
    agreed(source, "notice from " + first);
  }

  // 9 V.S.A. 2494s: notice and keeping from 1 January 2026 until 1 July 2029, when the ban begins.
  @Test
  void vermontsNoticeEndsWhereItsBanBegins() {
    PlaceCode vermont = new PlaceCode("US-VT");
    LocalDate ban = LocalDate.of(2029, 7, 1);
    assertThat(LAWS.notice(vermont, ban.minusDays(1))).isInstanceOf(PfasAnswer.Asked.class);
    assertThat(LAWS.notice(vermont, ban)).isInstanceOf(PfasAnswer.OnOtherDays.class);
    assertThat(LAWS.keeping(vermont, ban)).isInstanceOf(PfasAnswer.OnOtherDays.class);
    PfasAnswer.Asked first = (PfasAnswer.Asked) LAWS.notice(vermont, LocalDate.of(2026, 1, 1));
    assertThat(first.rows()).extracting(row -> row.key().value()).containsExactly("vermont-notice");
    assertThat(LAWS.notice(vermont, LocalDate.of(2022, 7, 1))).isInstanceOf(PfasAnswer.Asked.class);
    assertThat(LAWS.notice(vermont, LocalDate.of(2022, 6, 30)))
        .isInstanceOf(PfasAnswer.OnOtherDays.class);
    agreed("9 V.S.A. 2494s", "notice until, and ban from, " + ban);
  }

  // 9 V.S.A. 2494s(a) and 415 ILCS 170/20(b) in their own texts; the others as restated.
  @ParameterizedTest
  @CsvSource({
    "US-VT, 2029-07-01, 9 V.S.A. 2494s(a)",
    "US-IL, 2027-01-01, 415 ILCS 170/20(b)",
    "US-MA, 2027-01-01, act of 2024 as restated",
    "US-CT, 2028-01-01, PA 24-59 as restated",
    "US-RI, 2027-01-01, P.L. 2025 ch. 24 as restated",
    "US-NY, 2028-01-01, GBS 391-u as restated",
    "US-MN, 2032-01-01, law of 2023 as restated"
  })
  void aBanBeginsOnTheDayOfTheStatute(String place, LocalDate first, String source) {
    PlaceCode at = new PlaceCode(place);
    for (PfasContent content : List.of(PfasContent.ADDED, PfasContent.UNKNOWN)) {
      assertThat(LAWS.maySell(at, first, content)).isInstanceOf(SaleAnswer.Barred.class);
      assertThat(LAWS.maySell(at, first.minusDays(1), content))
          .isInstanceOf(SaleAnswer.NotBarredBy.class);
    }
    agreed(source, "sale ban from " + first);
  }

  // RCW 70A.400.030(2), C.R.S. 25-5-1305, Health and Safety Code 13029(b)(2), 9 V.S.A. 2494s(b) and
  // 415 ILCS 170/20(a): seller and buyer keep the notice at least three years from the sale.
  @ParameterizedTest
  @CsvSource({
    "US-WA, 2018-07-01, 2021-07-01",
    "US-CO, 2019-08-02, 2022-08-02",
    "US-CA, 2024-02-29, 2027-02-28",
    "US-VT, 2026-03-15, 2029-03-15",
    "US-IL, 2026-01-01, 2029-01-01"
  })
  void sellerAndBuyerKeepTheNoticeThreeYears(String place, LocalDate sold, LocalDate through) {
    PfasNotice notice =
        new PfasNotice(
            new PlaceCode(place),
            MarkedDate.of(sold),
            PfasContent.ADDED,
            Optional.of("water repellent"),
            MarkedDate.of(sold));
    for (SaleParty party : SaleParty.values()) {
      KeepAnswer answer = LAWS.keepThrough(notice, party);
      assertThat(answer).isInstanceOf(KeepAnswer.Through.class);
      assertThat(((KeepAnswer.Through) answer).through()).isEqualTo(through);
    }
    agreed(place, "kept three years from " + sold);
  }

  // IC 36-8-27 as restated: no purchase after 30 June 2024 without a label fixed to the gear.
  @Test
  void indianaAsksForALabel() {
    PlaceCode indiana = new PlaceCode("US-IN");
    assertThat(LAWS.fixedLabel(indiana, LocalDate.of(2024, 6, 30)))
        .isInstanceOf(PfasAnswer.OnOtherDays.class);
    assertThat(LAWS.fixedLabel(indiana, LocalDate.of(2024, 7, 1)))
        .isInstanceOf(PfasAnswer.Asked.class);
    assertThat(LAWS.notice(indiana, LocalDate.of(2024, 7, 1)))
        .isEqualTo(new PfasAnswer.NotKnown(indiana));
    agreed("IC 36-8-27 as restated", "label from 2024-07-01");
  }

  @ParameterizedTest
  @CsvSource({"US-TX", "US-ME", "US-NV", "US-NJ", "CA-ON", "US-WA"})
  void aStateWithoutABanOnRecordIsNotKnown(String place) {
    PlaceCode at = new PlaceCode(place);
    for (PfasContent content : PfasContent.values()) {
      assertThat(LAWS.maySell(at, LocalDate.of(2030, 1, 1), content))
          .isEqualTo(new SaleAnswer.NotKnown(at));
    }
  }

  @AfterAll
  static void write() throws IOException {
    List<String> lines = new ArrayList<>(List.of("source;what agreed"));
    AGREED.stream().sorted().forEach(lines::add);
    Path file = Path.of(System.getProperty("basedir", ""), "target", "outside-checks-records.csv");
    Files.createDirectories(file.getParent());
    Files.write(file, lines);
  }
}
