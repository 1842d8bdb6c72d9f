package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.GearRules;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.shipped.PublicRegulations.Rule;
import org.ensemblerules.shipped.PublicRegulations.Stand;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The shipped intervals beside those of public regulations; where they are looser, that is said.
 */
class RegulationsTest {
  static List<Rule> rules() {
    return PublicRegulations.all();
  }

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theShippedIntervalsStandToTheRuleAsSaid(Rule rule) {
    assertThat(ShippedEditions.loaded().sources().keySet())
        .anyMatch(source -> source.value().equals(rule.source()));
    if (rule.months().isEmpty()) {
      return;
    }
    for (OriginId edition : editions()) {
      for (IntervalRow row : ShippedEditions.rules(edition).tables().intervals().rows()) {
        if (row.inspection() == InspectionKind.ADVANCED) {
          assertThat(Math.max(row.firstMonths(), row.repeatMonths()) <= rule.months().getAsInt())
              .as("%s: %s", rule, row.key())
              .isEqualTo(rule.stand() == Stand.ENOUGH);
        }
      }
    }
  }

  // WAC 296-305-02002(5): at most six months between inspections. The care standard asks for
  // twelve, so a department in Washington needs an overlay; the shipped default does not do.
  @ParameterizedTest
  @MethodSource("editions")
  void theShippedDefaultAloneDoesNotSatisfyWashington(OriginId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    LocalDate sevenMonthsOn = ShippedGear.LAST_IN_FULL.plusMonths(7);
    assertThat(sevenMonthsOn)
        .isAfter(
            ShippedGear.LAST_IN_FULL.plusMonths(PublicRegulations.WASHINGTON.months().getAsInt()));
    for (Kind kind : ShippedGear.kinds(rules)) {
      if (kind.use() == Use.STRUCTURAL) {
        assertThat(
                GearRules.of(rules).service(lookedOver(rules, kind, sevenMonthsOn), sevenMonthsOn))
            .as("%s", kind)
            .isEqualTo(Service.IN);
      }
    }
  }

  // N.J.A.C. 12:100-10.16(a); 11.5.2.10(B)(1) NMAC: an inspection at least every year.
  @ParameterizedTest
  @MethodSource("editions")
  void nothingIsInMoreThanAYearAfterItsLastAdvancedInspection(OriginId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    LocalDate aYearOn = ShippedGear.LAST_IN_FULL.plusYears(1);
    for (Kind kind : ShippedGear.kinds(rules)) {
      assertThat(GearRules.of(rules).service(lookedOver(rules, kind, aYearOn), aYearOn))
          .as("%s", kind)
          .isEqualTo(Service.IN);
      LocalDate nextDay = aYearOn.plusDays(1);
      assertThat(GearRules.of(rules).service(lookedOver(rules, kind, nextDay), nextDay))
          .as("%s", kind)
          .isEqualTo(Service.OUT);
    }
  }

  private static Assessment lookedOver(RuleSet rules, Kind kind, LocalDate day) {
    List<Event> events = new ArrayList<>(ShippedGear.events(rules, kind));
    events.add(
        new LookEvent.Inspected(
            ShippedGear.inspection(rules, InspectionKind.ROUTINE, kind, MarkedDate.of(day)).build(),
            0));
    return Assessment.builder(ShippedGear.element(rules, kind).build())
        .history(History.of(events))
        .build();
  }

  // R 408.17431(5): inspected after each use; 11.5.2.10(B)(1) NMAC: after each run or daily.
  @ParameterizedTest
  @MethodSource("editions")
  void nothingIsInThatWasNotLookedOverSinceItWasWorn(OriginId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    for (Kind kind : ShippedGear.kinds(rules)) {
      Assessment worn = worn(rules, kind, ShippedGear.AS_OF);
      assertThat(GearRules.of(rules).assess(worn, ShippedGear.AS_OF).reasons())
          .as("%s", kind)
          .extracting(Reason::kind)
          .containsExactly(ReasonKind.USED_SINCE_INSPECTION, ReasonKind.TASK_DUE);
    }
  }

  // R 408.17431(5) also has it cleaned after each use; the shipped rows ask for cleaning only when
  // soil or contamination was found.
  @ParameterizedTest
  @MethodSource("editions")
  void theShippedDefaultAloneDoesNotCleanAfterEachUseAsMichiganAsks(OriginId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    for (Kind kind : ShippedGear.kinds(rules)) {
      Assessment worn = worn(rules, kind, ShippedGear.AS_OF.minusDays(1));
      assertThat(GearRules.of(rules).service(worn, ShippedGear.AS_OF))
          .as("%s", kind)
          .isEqualTo(Service.IN);
    }
    assertThat(PublicRegulations.MICHIGAN_CLEANED.stand()).isEqualTo(Stand.LOOSER);
  }

  private static Assessment worn(RuleSet rules, Kind kind, LocalDate day) {
    Assessment fit = ShippedGear.fit(rules, kind).build();
    List<Event> events = new ArrayList<>(fit.history().events());
    events.add(new UseEvent.Used(Moment.on(MarkedDate.of(day))));
    return ShippedGear.fit(rules, kind).history(History.of(events)).build();
  }

  // The editions that laws name, so that a department under each finds its tables here.
  @Test
  void everyEditionThatALawNamesHasRules() {
    assertThat(PublicRegulations.adoptions())
        .allSatisfy(
            adopted ->
                assertThat(ShippedEditions.WITH_INSPECTION)
                    .as(adopted.law())
                    .contains(adopted.edition()));
  }

  // Texas Commission on Fire Protection: guide to the 2014 edition, effective 15 August 2013;
  // compliance standards page, the 2020 edition effective 25 August 2019.
  @Test
  void theEffectiveDatesAreThoseOfTheTexasPages() {
    assertThat(effective(ShippedEditions.EDITION_2014)).isEqualTo(LocalDate.of(2013, 8, 15));
    assertThat(effective(ShippedEditions.EDITION_2020)).isEqualTo(LocalDate.of(2019, 8, 25));
  }

  private static LocalDate effective(OriginId edition) {
    return ShippedEditions.loaded().edition(edition).flatMap(Edition::effective).orElseThrow();
  }
}
