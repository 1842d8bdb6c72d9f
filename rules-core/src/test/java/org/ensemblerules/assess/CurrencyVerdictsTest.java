package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.assess.Verdicts.kinds;
import static org.ensemblerules.assess.Verdicts.onlyReason;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Inspections that must be current, and the look after each use. */
class CurrencyVerdictsTest {
  private static GearCase helmet(String inService, String lastAdvanced) {
    Element element =
        FitGear.element(ElementKind.HELMET).inService(MarkedDate.parse(inService)).build();
    GearCase given =
        new GearCase(
            element,
            List.of(),
            List.of(
                FitGear.inspection(InspectionKind.ROUTINE, ElementKind.HELMET, FitGear.AS_OF)
                    .build()),
            List.of(),
            FitGear.AS_OF);
    return lastAdvanced == null
        ? given
        : given.with(inspected(InspectionKind.ADVANCED, ElementKind.HELMET, lastAdvanced));
  }

  private static Event inspected(InspectionKind kind, ElementKind element, String on) {
    return new LookEvent.Inspected(
        FitGear.inspection(kind, element, MarkedDate.parse(on), People.permitted(kind.task()))
            .build(),
        0);
  }

  /** The frozen rules: an advanced inspection every 12 months, seen from 15 June 2024. */
  @ParameterizedTest
  @CsvSource({
    "2020-06-01, 2023-07-15, IN",
    "2020-06-01, 2023-06-15, IN",
    "2020-06-01, 2023-06-14, OUT",
    "2020-06-01, 2023-07, IN",
    "2020-06-01, 2023-06, OUT",
    "2020-06-01, 2024, OUT",
    "2020-06-01, 2024-06-16, OUT",
    "2020-06-01, UNKNOWN, OUT",
    "2023-07-15, , IN",
    "2023-06-15, , IN",
    "2023-06-14, , OUT",
    "2023, , OUT",
    "UNKNOWN, , OUT",
    "UNKNOWN, 2023-07-15, IN"
  })
  void anAdvancedInspectionWithinItsMonths(String inService, String last, Service service) {
    assertThat(helmet(inService, last).verdict().service()).isEqualTo(service);
  }

  @Test
  void notCurrentSaysSinceWhenAndUntilWhen() {
    Reason late = onlyReason(helmet("2020-06-01", "2023-06-14"), ReasonKind.INSPECTION_NOT_CURRENT);
    assertThat(late.seen())
        .isEqualTo("ADVANCED inspection: last one that counts 2023-06-14, due by 2024-06-14");
    assertThat(late.effect())
        .isEqualTo(new Effect.Evaluate(Check.ADVANCED_INSPECTION, Scope.ELEMENT));
    assertThat(late.rowKey()).map(Object::toString).contains("frozen/interval/ADVANCED/HELMET");
    Reason never = onlyReason(helmet("UNKNOWN", null), ReasonKind.INSPECTION_NOT_CURRENT);
    assertThat(never.seen())
        .isEqualTo(
            "ADVANCED inspection: none on record counts, and nobody knows since when it has been in"
                + " service");
  }

  @Test
  void anInspectionThatDoesNotCountKeepsNothingCurrent() {
    Inspection dirty =
        FitGear.inspection(InspectionKind.ADVANCED, ElementKind.HELMET, LocalDate.of(2024, 3, 1))
            .gearClean(YesNoUnknown.NO)
            .build();
    Verdict verdict = helmet("2020-06-01", null).with(new LookEvent.Inspected(dirty, 0)).verdict();
    assertThat(Verdicts.kinds(verdict))
        .containsOnly(ReasonKind.INSPECTION_NOT_CURRENT, ReasonKind.INSPECTED_DIRTY);
  }

  @Test
  void theLastInspectionIsItselfCurrent() {
    GearCase given =
        helmet("2020-06-01", null)
            .inspectedBy(
                List.of(
                    FitGear.inspection(InspectionKind.ADVANCED, ElementKind.HELMET, FitGear.AS_OF)
                        .build()));
    assertThat(given.verdict().service()).isEqualTo(Service.IN);
  }

  private static GearCase coat(String inService, YesNoUnknown cbrn) {
    GearCase fit = FitGear.fit(ElementKind.COAT);
    Element element =
        FitGear.element(ElementKind.COAT)
            .inService(MarkedDate.parse(inService))
            .cbrnOption(cbrn)
            .build();
    return new GearCase(element, List.of(), fit.inspections(), List.of(), FitGear.AS_OF)
        .with(inspected(InspectionKind.ADVANCED, ElementKind.COAT, "2024-01-10"));
  }

  /**
   * The frozen rules: the first complete liner inspection at 36 months, 24 with the CBRN option.
   */
  @ParameterizedTest
  @CsvSource({
    "2021-06-15, NO, IN",
    "2021-06-14, NO, OUT",
    "2022-06-15, YES, IN",
    "2022-06-14, YES, OUT",
    "2022-06-14, UNKNOWN, OUT"
  })
  void theFirstLinerInspection(String inService, YesNoUnknown cbrn, Service service) {
    Verdict verdict = coat(inService, cbrn).verdict();
    assertThat(verdict.service()).isEqualTo(service);
    if (service == Service.OUT) {
      assertThat(verdict.actions())
          .extracting(action -> action.effect().text())
          .containsExactly("EVALUATE by LINER_INSPECTION on ELEMENT");
    }
  }

  @Test
  void laterLinerInspectionsEachYear() {
    GearCase given = coat("2020-06-01", YesNoUnknown.NO);
    Event inTime = inspected(InspectionKind.COMPLETE_LINER, ElementKind.COAT, "2023-06-15");
    Event late = inspected(InspectionKind.COMPLETE_LINER, ElementKind.COAT, "2023-06-14");
    assertThat(given.with(inTime).verdict().service()).isEqualTo(Service.IN);
    assertThat(given.with(late).verdict().service()).isEqualTo(Service.OUT);
  }

  private static GearCase used(String on, int order, Occasion occasion, String inspectedOn) {
    MarkedDate day = MarkedDate.parse(inspectedOn);
    InspectionBuilder look =
        Inspection.builder(InspectionKind.ROUTINE, occasion, day, People.WEARER)
            .atHand(EnumSet.allOf(Equipment.class));
    for (CriterionRow row : FitGear.criteria(InspectionKind.ROUTINE, ElementKind.HELMET)) {
      look.outcome(row.key(), Outcome.CLEAR);
    }
    return helmet("2020-06-01", "2024-01-10")
        .inspectedBy(List.of(look.build()))
        .with(new UseEvent.Used(new Moment(MarkedDate.parse(on), order)));
  }

  @ParameterizedTest
  @CsvSource({
    "2024-06-14, 0, PERIODIC, 2024-06-15, IN",
    "2024-06-15, 0, PERIODIC, 2024-06-15, OUT",
    "2024-06-15, 0, AFTER_USE, 2024-06-15, IN",
    "2024-06-15, 3, AFTER_USE, 2024-06-15, IN",
    "2024-06-15, 0, START_OF_DUTY, 2024-06-15, OUT",
    "2024-06-15, 0, AFTER_USE, 2024-06-14, OUT",
    "2024-06, 0, AFTER_USE, 2024-06-15, OUT",
    "2024-05, 0, PERIODIC, 2024-06-15, IN"
  })
  void aLookAfterEachUse(
      String used, int order, Occasion occasion, String inspected, Service service) {
    Verdict verdict = used(used, order, occasion, inspected).verdict();
    assertThat(verdict.service()).isEqualTo(service);
    if (service == Service.OUT) {
      assertThat(kinds(verdict)).containsExactly(ReasonKind.USED_SINCE_INSPECTION);
      assertThat(verdict.actions())
          .extracting(action -> action.effect().text())
          .containsExactly("EVALUATE by ROUTINE_INSPECTION on ELEMENT");
    }
  }

  @Test
  void ofAUseWithoutADateTheDateIsAskedForAsWell() {
    Verdict verdict = used("UNKNOWN", 0, Occasion.AFTER_USE, "2024-06-15").verdict();
    assertThat(kinds(verdict))
        .containsExactly(ReasonKind.USED_SINCE_INSPECTION, ReasonKind.UNDATED);
    assertThat(((WayBack.Steps) verdict.wayBack()).steps())
        .extracting(step -> step.effect().text())
        .containsExactly(
            "EVALUATE by RECORD_CORRECTION on ELEMENT",
            "EVALUATE by ROUTINE_INSPECTION on ELEMENT");
    assertThat(used("2024", 0, Occasion.AFTER_USE, "2024-06-15").verdict().reasons())
        .noneMatch(reason -> reason.kind() == ReasonKind.UNDATED);
  }

  @Test
  void ordersWithinTheDayTellUseFromInspectionOnRecord() {
    Event used = new UseEvent.Used(new Moment(MarkedDate.of(FitGear.AS_OF), 1));
    Inspection made =
        FitGear.inspection(InspectionKind.ADVANCED, ElementKind.HELMET, FitGear.AS_OF).build();
    GearCase given = helmet("2020-06-01", "2024-01-10").with(used);
    assertThat(given.with(new LookEvent.Inspected(made, 2)).verdict().service())
        .isEqualTo(Service.IN);
    assertThat(given.with(new LookEvent.Inspected(made, 1)).verdict().service())
        .isEqualTo(Service.OUT);
  }
}
