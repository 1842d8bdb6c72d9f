package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.GearRules;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.WashBoundRow;
import org.ensemblerules.care.WashBoundTable;
import org.ensemblerules.care.WashMeasure;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.OverlayJson;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.OverlayFile;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Service;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How far a manufacturer's instructions can loosen the shipped limits of washes. */
class ShippedWashBoundsTest {
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  private static OverlayFile water(String celsius) {
    return OverlayJson.read(
            "water.json",
            """
            {"overlay": "WATER", "kind": "MANUFACTURERS_INSTRUCTIONS", "title": "Invented",
             "manufacturer": "%s", "model": "Model A", "reviewedThrough": "2027-12-31",
             "careLimits": [
               {"key": "water", "elements": ["COAT"], "uses": ["STRUCTURAL"],
                "demand": {"kind": "WITHIN", "measure": "WATER_TEMPERATURE",
                           "limit": {"bound": "MAXIMUM", "value": "%s", "unit": "degC"}},
                "replaces": "water-temperature", "basis": {"kind": "COMMON_PRACTICE"}}]}
            """
                .formatted(ShippedGear.MAKER, celsius))
        .orElseThrow();
  }

  private static Checked<GearRules, JsonFault> laid(RuleSet rules, OverlayFile overlay) {
    return OverlayJson.lay(GearRules.of(rules), List.of(overlay), ShippedGear.AS_OF);
  }

  private static List<JsonFault> faults(Checked<GearRules, JsonFault> loaded) {
    assertThat(loaded).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<GearRules, JsonFault>) loaded).faults();
  }

  /** The same rules with one more row, or other rows, of how far limits can go. */
  private static RuleSet reaching(RuleSet rules, List<WashBoundRow> bounds) {
    return RuleSet.of(
        rules.editions(),
        Tables.of(
            rules
                .tables()
                .map()
                .with(CareKinds.WASH_BOUNDS, WashBoundTable.of(bounds).orElseThrow())),
        Map.of());
  }

  private static ShippedCase washedTwiceAt(RuleSet rules, String celsius) {
    ShippedCase fit = ShippedCase.fit(rules, COAT);
    List<Event> events = new ArrayList<>(fit.events());
    for (int back : new int[] {3, 2}) {
      LocalDate day = ShippedGear.AS_OF.minusDays(back);
      events.add(
          new WorkEvent.Cleaned(
              Moment.on(MarkedDate.of(day)),
              CleaningKind.ADVANCED,
              ShippedGear.permitted(rules, Task.ADVANCED_CLEANING),
              Set.of(),
              new WashedLayers.Whole(),
              false,
              Optional.of(
                  WashRecord.builder()
                      .waterTemperature(Quantity.of(celsius, Unit.DEGREE_CELSIUS))
                      .build())));
    }
    return fit.withEvents(events);
  }

  /** Without an end of what a maker may loosen, a coat boiled twice over would go back. */
  @ParameterizedTest
  @MethodSource("editions")
  void noInstructionsMakeWashesAtThreeHundredDegreesGood(OriginId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    OverlayFile endless = water("100000");
    ShippedCase alone = washedTwiceAt(rules, "300");
    assertThat(alone.verdict().service()).isEqualTo(Service.OUT);
    assertThat(alone.verdict().openFindings())
        .anyMatch(open -> open.finding().defect() == DefectKind.OVERHEATED_IN_WASHING);

    WashBoundRow shipped =
        rules
            .tables()
            .of(CareKinds.WASH_BOUNDS)
            .loosest(WashMeasure.WATER_TEMPERATURE, Bound.MAXIMUM)
            .orElseThrow();
    WashBoundRow noEnd =
        new WashBoundRow(
            shipped.provenance(),
            shipped.measure(),
            shipped.reach(),
            Limit.atMost("100000", Unit.DEGREE_CELSIUS));
    RuleSet before = laid(reaching(rules, List.of(noEnd)), endless).orElseThrow().rules();
    assertThat(washedTwiceAt(before, "300").verdict().service()).isEqualTo(Service.IN);

    assertThat(faults(laid(rules, endless)))
        .first()
        .satisfies(
            fault -> {
              assertThat(fault.code()).isEqualTo(FaultCode.LOOSER);
              assertThat(fault.toString())
                  .isEqualTo(
                      "water.json#/careLimits/0/demand: found at most 100000 degC, beyond at most"
                          + " 60 degC by row water-loosest of TRADE (row water/COAT/STRUCTURAL),"
                          + " allowed: at most 60 degC at the loosest, whatever a manufacturer"
                          + " says");
            });
  }

  @ParameterizedTest
  @MethodSource("editions")
  void theLoosestItselfIsAllowedAndNothingBeyond(OriginId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    RuleSet sixty = laid(rules, water("60")).orElseThrow().rules();
    assertThat(washedTwiceAt(sixty, "60").verdict().service()).isEqualTo(Service.IN);
    assertThat(washedTwiceAt(sixty, "60.1").verdict().service()).isEqualTo(Service.OUT);
    assertThat(faults(laid(rules, water("60.000001")))).hasSize(1);
  }

  @Test
  void whatHasNoEndIsNotLoosenedAtAll() {
    RuleSet rules = reaching(ShippedEditions.rules(ShippedEditions.EDITION_2020), List.of());
    assertThat(faults(laid(rules, water("41"))))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.code()).isEqualTo(FaultCode.LOOSER);
              assertThat(fault.allowed())
                  .isEqualTo(
                      "a limit that lets no more pass: no row says how far the MAXIMUM of"
                          + " WATER_TEMPERATURE can be loosened");
            });
    assertThat(laid(rules, water("40")).orElseThrow()).isNotNull();
  }

  @Test
  void whatNothingKeepsIsNoLooserButNotAllowed() {
    RuleSet rules = ShippedEditions.rules(ShippedEditions.EDITION_2020);
    assertThat(faults(laid(rules, water("-300"))))
        .singleElement()
        .satisfies(fault -> assertThat(fault.code()).isEqualTo(FaultCode.NOT_ALLOWED));
  }

  /** No limit of an edition is itself beyond what a maker could ask for, or what there is. */
  @ParameterizedTest
  @MethodSource("editions")
  void theEditionsKeepWithinTheirEnds(OriginId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    WashBoundTable bounds = rules.tables().of(CareKinds.WASH_BOUNDS);
    for (CareLimitRow row : rules.tables().care().limits().rows()) {
      if (row.demand() instanceof CareDemand.Within within) {
        assertThat(bounds.crossedBy(within.measure(), within.limit())).isEmpty();
        bounds
            .loosest(within.measure(), within.limit().bound())
            .ifPresent(
                end ->
                    assertThat(within.limit().compareStrictness(end.limit()))
                        .as("%s", row)
                        .isEqualTo(Comparison.STRICTER));
      }
    }
    assertThat(bounds.loosest(WashMeasure.EXTRACTION, Bound.MAXIMUM)).isEmpty();
  }

  /** Nothing published says how far a maker may go, and no row says that something does. */
  @Test
  void eachRowSaysOnWhoseWordItStands() {
    RuleSet rules = ShippedEditions.rules(ShippedEditions.EDITION_2020);
    assertThat(rules.tables().rows(CareKinds.WASH_BOUNDS))
        .hasSize(10)
        .allSatisfy(
            row -> {
              assertThat(row.provenance().basis()).isInstanceOf(Basis.Memory.class);
              assertThat(row.provenance().note()).isPresent();
            });
    assertThat(rules.tables().rows(CareKinds.WASH_BOUNDS))
        .extracting(WashBoundRow::measure)
        .containsAll(Arrays.asList(WashMeasure.values()));
  }
}
