package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.demo.DemoElement;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Edition;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Headline;
import org.ensemblerules.verdict.OutBecause;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class DemoDepartmentTest {
  private static final GearRules RULES = ShippedRules.standard();
  private static final List<Verdict> VERDICTS = judged(RULES, DemoDepartment.AS_OF);

  private static List<Verdict> judged(GearRules rules, LocalDate asOf) {
    return DemoDepartment.assessments(rules).stream()
        .map(assessment -> rules.assess(assessment, asOf))
        .toList();
  }

  @Test
  void hasEnoughElementsEachWithANameOfItsOwn() {
    assertThat(VERDICTS).hasSizeGreaterThanOrEqualTo(600);
    assertThat(DemoDepartment.cases(RULES)).hasSizeGreaterThanOrEqualTo(120);
    assertThat(VERDICTS.stream().map(verdict -> verdict.element().id()).distinct())
        .hasSameSizeAs(VERDICTS);
  }

  @Test
  void hasEveryKindOfElementForEveryUseItExistsFor() {
    Set<String> missing = new TreeSet<>();
    for (ElementKind kind : ElementKind.values()) {
      for (Use use : Use.values()) {
        if (!RULES.tables().anatomy().of(kind, use).isEmpty()) {
          missing.add(kind + " " + use);
        }
      }
    }
    VERDICTS.stream()
        .map(Verdict::element)
        .forEach(element -> missing.remove(element.kind() + " " + element.use()));
    assertThat(missing).isEmpty();
  }

  @Test
  void reachesEveryHeadline() {
    Set<Headline> missing = EnumSet.allOf(Headline.class);
    VERDICTS.forEach(verdict -> missing.remove(verdict.headline()));
    assertThat(missing).isEmpty();
  }

  @Test
  void reachesEveryKindOfEffect() {
    Set<EffectKind> missing = EnumSet.allOf(EffectKind.class);
    reasons(VERDICTS).forEach(reason -> missing.remove(reason.effect().effectKind()));
    assertThat(missing).isEmpty();
  }

  @Test
  void goesToEveryPlaceAndIsOutForEveryCause() {
    Set<Destination> places = EnumSet.allOf(Destination.class);
    Set<OutBecause> causes = EnumSet.allOf(OutBecause.class);
    for (Verdict verdict : VERDICTS) {
      verdict.goesTo().ifPresent(goesTo -> places.remove(goesTo.destination()));
      causes.removeAll(verdict.outBecause());
    }
    assertThat(places).isEmpty();
    assertThat(causes).isEmpty();
  }

  @Test
  void reachesEveryHandlingDutyThatARowCallsFor() {
    Set<HandlingDuty> missing = EnumSet.allOf(HandlingDuty.class);
    VERDICTS.forEach(verdict -> missing.removeAll(verdict.handling()));
    // Gear that leaves service for a defect never trains; only an overlay's row can mark other
    // gear.
    assertThat(missing).containsExactly(HandlingDuty.MARK_FOR_TRAINING);
  }

  @Test
  void reachesEveryKindOfReasonButThatOfTheCalendarAndThoseOfOverlays() {
    Set<ReasonKind> missing = EnumSet.allOf(ReasonKind.class);
    reasons(VERDICTS).forEach(reason -> missing.remove(reason.kind()));
    assertThat(missing)
        .containsExactlyInAnyOrder(
            ReasonKind.EDITION_NOT_IN_FORCE,
            ReasonKind.INSPECTION_NOT_ITEMIZED,
            ReasonKind.LIMIT_LOOSENED,
            ReasonKind.LIMIT_TIGHTENED);
  }

  /** Test reports, in newtons and in pounds of force, come to each outcome. */
  @Test
  void reachesEveryOutcomeOfATest() {
    assertThat(reasons(VERDICTS))
        .extracting(Reason::seen)
        .anyMatch(seen -> seen.contains("PASS by simple acceptance"))
        .anyMatch(
            seen -> seen.contains("FAIL by simple acceptance") && seen.contains("second unit"))
        .anyMatch(seen -> seen.contains("CONDITIONAL_PASS by guard band"))
        .anyMatch(seen -> seen.contains("CONDITIONAL_FAIL by guard band"))
        .anyMatch(seen -> seen.contains("no result, NO_SPECIMENS"))
        .anyMatch(seen -> seen.contains("specimens were cut from this element"));
  }

  @Test
  void isOutAsAWholeBeforeTheEditionTookEffect() {
    LocalDate effective =
        RULES.editions().values().stream()
            .flatMap(edition -> edition.effective().stream())
            .max(LocalDate::compareTo)
            .orElseThrow();
    List<Verdict> early = judged(RULES, effective.minusDays(1));
    assertThat(early).allMatch(verdict -> verdict.service() == Service.OUT);
    assertThat(reasons(early)).extracting(Reason::kind).contains(ReasonKind.EDITION_NOT_IN_FORCE);
  }

  @Test
  void ordinaryYearsLeaveAnElementInService() {
    List<DemoElement> elements = DemoDepartment.elements(RULES);
    for (int i = 0; i < elements.size(); i++) {
      if (elements.get(i).story().contains("all clear")) {
        assertThat(VERDICTS.get(i).reasons()).as("%s", VERDICTS.get(i)).isEmpty();
      }
    }
  }

  /** Most of an ordinary fleet is in service or merely late; each kind of trouble is there. */
  @Test
  void theFleetHasAnOrdinaryShareOfTrouble() {
    List<DemoElement> fleet = DemoDepartment.fleet(RULES);
    List<Verdict> verdicts =
        fleet.stream().map(one -> RULES.assess(one.assessment(), DemoDepartment.AS_OF)).toList();
    long in = verdicts.stream().filter(one -> one.service() == Service.IN).count();
    assertThat(100.0 * in / fleet.size()).isBetween(80.0, 95.0);
    assertThat(fleet.stream().map(DemoElement::story).distinct()).hasSizeGreaterThan(8);
  }

  @Test
  void isTheSameAtEveryTelling() {
    assertThat(DemoDepartment.elements(RULES)).isEqualTo(DemoDepartment.elements(RULES));
  }

  @Tag("slow")
  @Test
  void fillsInTheFormsOfEveryEdition() {
    for (Edition edition : ShippedRules.editions()) {
      ShippedRules.of(edition.id())
          .ifPresent(
              rules -> {
                List<Verdict> verdicts = judged(rules, DemoDepartment.AS_OF);
                assertThat(verdicts)
                    .as("%s", edition.id())
                    .anyMatch(verdict -> verdict.service() == Service.IN)
                    .anyMatch(verdict -> verdict.service() == Service.OUT);
              });
    }
  }

  /** Everybody and everything is invented, and says so. */
  @Test
  void namesManufacturersThatDoNotExist() {
    Set<String> manufacturers =
        DemoDepartment.assessments(ShippedRules.standard()).stream()
            .map(Assessment::element)
            .flatMap(DemoDepartmentTest::manufacturers)
            .collect(Collectors.toSet());
    assertThat(manufacturers).isSubsetOf(Arrays.asList("Maker One", "Maker Two"));
  }

  private static Stream<String> manufacturers(Element element) {
    return Stream.concat(element.label().stream(), element.layerLabels().values().stream())
        .flatMap(label -> label.manufacturer().stream());
  }

  private static List<Reason> reasons(List<Verdict> verdicts) {
    return verdicts.stream().flatMap(verdict -> verdict.reasons().stream()).toList();
  }
}
