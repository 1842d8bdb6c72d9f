package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.ensemblerules.GearRules;
import org.ensemblerules.care.WashAnswer;
import org.ensemblerules.care.WashDeviation;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.verdict.Caution;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

/**
 * What a trade page restates of NFPA 1850 (2026), of whose text nobody has seen anything: hotter
 * water is allowed, gear stored for long is inspected, and no date was given.
 */
class ConsolidatedEditionTest {
  private static final SourceId PAGE = new SourceId("press-1850-explained");

  @Test
  void aHotterWashIsUnconfirmedThereAndOverheatedBefore() {
    for (String value : List.of("106", "120", "140")) {
      WashDeviation later = water(ShippedEditions.EDITION_2026, value);
      assertThat(later.stated()).isTrue();
      assertThat(later.finding()).as(value).isEmpty();
      assertThat(water(ShippedEditions.EDITION_2020, value).finding())
          .contains(DefectKind.OVERHEATED_IN_WASHING);
    }
    assertThat(water(ShippedEditions.EDITION_2026, "141").finding())
        .contains(DefectKind.OVERHEATED_IN_WASHING);
  }

  @Test
  void storedGearIsNotExemptThere() {
    assertThat(exempt(ShippedEditions.EDITION_2020)).isNotEmpty();
    assertThat(exempt(ShippedEditions.EDITION_2026)).isEmpty();
    assertThat(advanced(ShippedEditions.EDITION_2026))
        .isNotEmpty()
        .allMatch(row -> row.provenance().basis().pages().contains(PAGE));
  }

  @Test
  void aDayBeforeItSaysSoThoughItsFirstDayIsNotKnown() {
    RuleSet rules = ShippedEditions.rules(ShippedEditions.EDITION_2026);
    LocalDate known = LocalDate.of(2019, 8, 25);
    assertThat(notInForce(rules, known)).isEmpty();
    assertThat(notInForce(rules, known.minusDays(1)))
        .isNotEmpty()
        .allSatisfy(
            reason ->
                assertThat(reason.seen())
                    .isEqualTo(
                        "asOf is 2019-08-24; the day NFPA_1850_2026 took effect is not known, and"
                            + " is not before 2019-08-25"));
    assertThat(verdict(rules, known.minusDays(1)).service()).isEqualTo(Service.OUT);
    assertThat(verdict(rules, ShippedGear.AS_OF).cautions())
        .extracting(Caution::text)
        .anyMatch(text -> text.contains("took effect was not seen"));
  }

  @Test
  void nothingThatWasCarriedOverCountsAsReadThere() {
    assertThat(
            ShippedEditions.loaded()
                .tables(ShippedEditions.EDITION_2026)
                .find(InspectionKinds.DEFECTS))
        .hasValueSatisfying(
            table ->
                assertThat(table.rows())
                    .isNotEmpty()
                    .allMatch(row -> row.provenance().basis() instanceof Basis.CarriedOver));
  }

  private static Element coat(OriginId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    return ShippedGear.kinds(rules).stream()
        .filter(kind -> kind.element() == ElementKind.COAT && kind.use() == Use.STRUCTURAL)
        .map(kind -> ShippedGear.element(rules, kind).build())
        .findFirst()
        .orElseThrow();
  }

  private static WashDeviation water(OriginId edition, String fahrenheit) {
    WashRecord wash =
        WashRecord.builder()
            .waterTemperature(Quantity.of(fahrenheit, Unit.DEGREE_FAHRENHEIT))
            .build();
    WashAnswer answer =
        ShippedEditions.loaded()
            .tables(edition)
            .find(CareKinds.CARE_LIMITS)
            .orElseThrow()
            .judge(wash, coat(edition), Set.of());
    return ((WashAnswer.OutsideLimits) answer)
        .deviations().stream()
            .filter(each -> each.row().demand().subject().equals("WATER_TEMPERATURE"))
            .findFirst()
            .orElseThrow();
  }

  private static List<TaskRow> advanced(OriginId edition) {
    return ShippedEditions.loaded()
        .tables(edition)
        .find(InspectionKinds.TASKS)
        .orElseThrow()
        .rows()
        .stream()
        .filter(row -> row.key().value().contains("advanced-inspection/"))
        .toList();
  }

  private static List<TaskRow> exempt(OriginId edition) {
    return ShippedEditions.loaded()
        .tables(edition)
        .find(InspectionKinds.TASKS)
        .orElseThrow()
        .rows()
        .stream()
        .filter(TaskRow::exemptInReserve)
        .toList();
  }

  private static List<Reason> notInForce(RuleSet rules, LocalDate asOf) {
    return verdict(rules, asOf).reasons().stream()
        .filter(reason -> reason.kind() == ReasonKind.EDITION_NOT_IN_FORCE)
        .filter(reason -> reason.seen().contains("NFPA_1850_2026"))
        .toList();
  }

  private static Verdict verdict(RuleSet rules, LocalDate asOf) {
    return GearRules.of(rules)
        .assess(ShippedGear.fit(rules, ShippedGear.kinds(rules).get(0)).build(), asOf);
  }
}
