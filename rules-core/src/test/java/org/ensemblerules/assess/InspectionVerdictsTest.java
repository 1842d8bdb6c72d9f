package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.assess.Verdicts.finding;
import static org.ensemblerules.assess.Verdicts.kinds;
import static org.ensemblerules.assess.Verdicts.onlyReason;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.ArbitrariesOfFindings;
import org.ensemblerules.testkit.ArbitrariesOfInspections;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Test;

/** What inspections do to a verdict. */
class InspectionVerdictsTest {
  private static final GearCase COAT = FitGear.fit(ElementKind.COAT);
  private static final RowKey SHELL = new RowKey("frozen/criterion/COAT/FABRIC@OUTER_SHELL");
  private static final Effect ADVANCED_AGAIN =
      new Effect.Evaluate(Check.ADVANCED_INSPECTION, Scope.ELEMENT);

  private static InspectionBuilder advanced() {
    return FitGear.inspection(InspectionKind.ADVANCED, ElementKind.COAT, FitGear.AS_OF);
  }

  private static GearCase inspected(Inspection made) {
    return COAT.inspectedBy(List.of(made));
  }

  /** A look serves until the first closer one is due; without its day, that is due at once. */
  @Test
  void newGearThatNobodyLookedAtIsLookedOver() {
    GearCase never = COAT.neverInspected();
    Element coat = never.element();
    assertThat(firstLook(never.with(since(coat, MarkedDate.of(FitGear.AS_OF.minusMonths(11))))))
        .isEqualTo(new Effect.Evaluate(Check.ROUTINE_INSPECTION, Scope.ELEMENT));
    assertThat(firstLook(never.with(since(coat, MarkedDate.of(FitGear.AS_OF.minusMonths(13))))))
        .isEqualTo(ADVANCED_AGAIN);
    assertThat(firstLook(never.with(since(coat, MarkedDate.unknown())))).isEqualTo(ADVANCED_AGAIN);
  }

  private static Element since(Element coat, MarkedDate inService) {
    ElementBuilder since =
        Element.builder(coat.id(), coat.kind(), coat.use())
            .inService(inService)
            .cbrnOption(YesNoUnknown.NO);
    coat.layerLabels().forEach(since::layer);
    return since.build();
  }

  private static Effect firstLook(GearCase given) {
    return given.verdict().reasons().stream()
        .filter(reason -> reason.kind() == ReasonKind.NOT_INSPECTED)
        .map(Reason::effect)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void notInspected() {
    assertThat(COAT.neverInspected().verdict().reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.NOT_INSPECTED)
        .singleElement()
        .satisfies(
            reason -> {
              assertThat(reason.effect()).isEqualTo(ADVANCED_AGAIN);
              assertThat(reason.seen()).isEqualTo("no inspection that counts is on record");
            });
  }

  @Test
  void theLatestOneThatCountsServes() {
    assertThat(COAT.inspectedBy(List.of()).verdict().service()).isEqualTo(Service.IN);
  }

  @Test
  void oneBegunLaterAndIncompleteKeepsOutUntilAnotherCounts() {
    LocalDate before = FitGear.AS_OF.minusDays(1);
    Inspection begun =
        ArbitrariesOfInspections.without(
            FitGear.inspection(InspectionKind.ADVANCED, ElementKind.COAT, before).build(), SHELL);
    Inspection wearers =
        FitGear.inspection(InspectionKind.ROUTINE, ElementKind.COAT, FitGear.AS_OF).build();
    GearCase given = COAT.inspectedBy(List.of(begun));
    onlyReason(given, ReasonKind.CHECK_NOT_DONE);
    onlyReason(COAT.inspectedBy(List.of(begun, wearers)), ReasonKind.CHECK_NOT_DONE);
    assertThat(COAT.inspectedBy(List.of(begun, advanced().build())).verdict().service())
        .isEqualTo(Service.IN);
    assertThat(given.with(new LookEvent.Inspected(advanced().build(), 0)).verdict().service())
        .isEqualTo(Service.IN);
  }

  @Test
  void whatTheWearerBeganAWholeLookMakesGood() {
    LocalDate before = FitGear.AS_OF.minusDays(1);
    Inspection begun =
        Inspection.builder(
                InspectionKind.ROUTINE, Occasion.AFTER_USE, MarkedDate.of(before), People.WEARER)
            .build();
    assertThat(COAT.inspectedBy(List.of(begun)).verdict().service()).isEqualTo(Service.OUT);
    Inspection whole =
        FitGear.inspection(InspectionKind.ROUTINE, ElementKind.COAT, FitGear.AS_OF).build();
    assertThat(COAT.inspectedBy(List.of(begun, whole)).verdict().service()).isEqualTo(Service.IN);
  }

  @Test
  void ofOneDayOnlyTheOrderTellsWhichWasLater() {
    Inspection begun = ArbitrariesOfInspections.without(advanced().build(), SHELL);
    GearCase first = COAT.inspectedBy(List.of()).with(new LookEvent.Inspected(begun, 1));
    assertThat(first.with(new LookEvent.Inspected(advanced().build(), 0)).verdict().service())
        .isEqualTo(Service.OUT);
    assertThat(first.with(new LookEvent.Inspected(advanced().build(), 2)).verdict().service())
        .isEqualTo(Service.IN);
  }

  @Test
  void oneOfAKindThatTheElementDoesNotHaveIsMadeGoodByAnAdvancedOne() {
    GearCase helmet = FitGear.fit(ElementKind.HELMET);
    Inspection opened =
        Inspection.builder(
                InspectionKind.COMPLETE_LINER,
                Occasion.PERIODIC,
                MarkedDate.of(FitGear.LAST_ADVANCED.plusDays(1)),
                People.PROVIDER)
            .gearClean(YesNoUnknown.YES)
            .build();
    GearCase given = helmet.with(new LookEvent.Inspected(opened, 0));
    assertThat(kinds(given.verdict())).contains(ReasonKind.NO_RULE);
    Inspection whole =
        FitGear.inspection(InspectionKind.ADVANCED, ElementKind.HELMET, FitGear.AS_OF).build();
    assertThat(given.with(new LookEvent.Inspected(whole, 0)).verdict().service())
        .isEqualTo(Service.IN);
  }

  @Test
  void whatAnOlderOneFoundStandsAmongTheFindingsToo() {
    Inspection found =
        ArbitrariesOfInspections.adding(
            ArbitrariesOfInspections.without(
                FitGear.inspection(InspectionKind.ADVANCED, ElementKind.COAT, FitGear.LAST_ADVANCED)
                    .build(),
                SHELL),
            SHELL,
            Outcome.FOUND);
    GearCase given = COAT.with(new LookEvent.Inspected(found, 0));
    assertThat(onlyReason(given, ReasonKind.CONTRADICTION).seen())
        .contains("something was found, and no finding says what");
  }

  @Test
  void aCriterionNotLookedAt() {
    GearCase given = inspected(ArbitrariesOfInspections.without(advanced().build(), SHELL));
    Reason reason = onlyReason(given, ReasonKind.CHECK_NOT_DONE);
    assertThat(reason.seen())
        .isEqualTo(
            "ADVANCED inspection of 2024-06-15: not looked at: Look at FABRIC@OUTER_SHELL for"
                + " TEAR.");
    assertThat(reason.site()).hasToString("FABRIC@OUTER_SHELL");
    assertThat(reason.effect()).isEqualTo(ADVANCED_AGAIN);
    assertThat(given.verdict().checksNotDone()).containsExactly(SHELL);
  }

  /** Else a record of a few lines could ask for an answer without end. */
  @Test
  void whatManyLeftOutIsToldOnceForEachCriterion() {
    Inspection begun =
        Inspection.builder(
                InspectionKind.ADVANCED,
                Occasion.PERIODIC,
                MarkedDate.of(FitGear.AS_OF),
                People.PROVIDER)
            .gearClean(YesNoUnknown.YES)
            .outcome(SHELL, Outcome.CLEAR)
            .build();
    GearCase given = COAT;
    for (int order = 1; order <= 300; order++) {
      given = given.with(new LookEvent.Inspected(begun, order));
    }
    List<Reason> notDone =
        given.verdict().reasons().stream()
            .filter(reason -> reason.kind() == ReasonKind.CHECK_NOT_DONE)
            .toList();
    assertThat(notDone).hasSize(given.verdict().checksNotDone().size()).isNotEmpty();
    assertThat(notDone)
        .allSatisfy(
            reason ->
                assertThat(reason.seen())
                    .startsWith("ADVANCED inspection of 2024-06-15 (300), and 299 more: "));
  }

  @Test
  void aCriterionSaidToBeClearWithoutWhatItNeeds() {
    Inspection made =
        ArbitrariesOfInspections.withoutAtHand(advanced().build(), Equipment.NEW_TRIM_SAMPLE);
    Reason reason = onlyReason(inspected(made), ReasonKind.CHECK_NOT_DONE);
    assertThat(reason.seen()).contains("clear without all of FOCUSED_FLASHLIGHT, NEW_TRIM_SAMPLE");
  }

  @Test
  void anInspectorWithoutTheRole() {
    Inspection made = ArbitrariesOfInspections.by(advanced().build(), People.WEARER);
    Reason reason = onlyReason(inspected(made), ReasonKind.INSPECTION_DOES_NOT_COUNT);
    assertThat(reason.seen()).endsWith("by Member 7: MEMBER may not do ADVANCED_INSPECTION");
    assertThat(reason.effect()).isEqualTo(ADVANCED_AGAIN);
  }

  @Test
  void dirtyGearIsCleanedAndInspectedAgain() {
    GearCase given = inspected(advanced().gearClean(YesNoUnknown.NO).build());
    onlyReason(given, ReasonKind.INSPECTED_DIRTY);
    assertThat(given.verdict().actions())
        .extracting(Action::effect)
        .containsExactly(ADVANCED_AGAIN, new Effect.Clean(CleaningKind.ADVANCED, Scope.ELEMENT));
    assertThat(((WayBack.Steps) given.verdict().wayBack()).steps())
        .extracting(step -> step.effect().text())
        .containsExactly("CLEAN ADVANCED on ELEMENT", "EVALUATE by ADVANCED_INSPECTION on ELEMENT");
  }

  @Test
  void gearNotKnownToBeCleanIsInspectedAgain() {
    GearCase given = inspected(advanced().gearClean(YesNoUnknown.UNKNOWN).build());
    Reason reason = onlyReason(given, ReasonKind.INSPECTED_DIRTY);
    assertThat(reason.seen()).endsWith("it is not known that the element was clean");
    assertThat(given.verdict().actions()).hasSize(1);
  }

  @Test
  void aCheckListedTwiceWithDifferentOutcomes() {
    Inspection made =
        ArbitrariesOfInspections.adding(advanced().build(), SHELL, Outcome.NOT_FITTED);
    Reason reason = onlyReason(inspected(made), ReasonKind.CONTRADICTION);
    assertThat(reason.seen()).contains("contradict each other");
    assertThat(reason.effect())
        .isEqualTo(new Effect.Evaluate(Check.RECORD_CORRECTION, Scope.ELEMENT));
  }

  @Test
  void aCriterionThatDoesNotExist() {
    Inspection made =
        ArbitrariesOfInspections.adding(advanced().build(), new RowKey("x"), Outcome.CLEAR);
    Reason reason = onlyReason(inspected(made), ReasonKind.CONTRADICTION);
    assertThat(reason.seen())
        .endsWith("found criterion x, allowed: a criterion of this inspection");
  }

  private static GearCase somethingFoundAtTheShell() {
    return inspected(
        ArbitrariesOfInspections.adding(
            ArbitrariesOfInspections.without(advanced().build(), SHELL), SHELL, Outcome.FOUND));
  }

  @Test
  void somethingFoundAndNoFindingThatSaysWhat() {
    Reason reason = onlyReason(somethingFoundAtTheShell(), ReasonKind.CONTRADICTION);
    assertThat(reason.seen()).contains("something was found, and no finding says what");
    Finding elsewhere = finding("FABRIC@WINTER_LINER", DefectKind.SOILING);
    assertThat(kinds(somethingFoundAtTheShell().with(elsewhere).verdict()))
        .contains(ReasonKind.CONTRADICTION);
  }

  /** A finding takes nothing away but the correction that it was missing for, which it may end. */
  @Test
  void theFindingThatComesLaterPutsTheRecordRight() {
    GearCase given = somethingFoundAtTheShell();
    assertThat(given.verdict().actions())
        .extracting(action -> action.effect().text())
        .containsExactly("EVALUATE by RECORD_CORRECTION on ELEMENT");
    Finding noted =
        ArbitrariesOfFindings.covered(
            FrozenRules.rules().tables().defects().rows().stream()
                .filter(row -> row.element() == ElementKind.COAT && !row.effect().keepsOut())
                .filter(row -> row.site().toString().equals("FABRIC@OUTER_SHELL"))
                .findFirst()
                .orElseThrow(),
            "F1",
            MarkedDate.of(FitGear.AS_OF));
    assertThat(given.with(noted).verdict().service()).isEqualTo(Service.IN);
    GearCase torn = given.with(finding("FABRIC@OUTER_SHELL", DefectKind.CHARRING));
    assertThat(torn.verdict().service()).isEqualTo(Service.OUT);
    assertThat(torn.verdict().actions())
        .extracting(action -> action.effect().text())
        .doesNotContain("EVALUATE by RECORD_CORRECTION on ELEMENT");
  }

  @Test
  void somethingFoundAndTheFindingThatSaysWhat() {
    for (String site : List.of("FABRIC@OUTER_SHELL", "FABRIC")) {
      GearCase given = somethingFoundAtTheShell().with(finding(site, DefectKind.CHARRING));
      assertThat(kinds(given.verdict())).doesNotContain(ReasonKind.CONTRADICTION);
    }
    Finding onRecord =
        finding(
            "F1", "FABRIC@OUTER_SHELL", DefectKind.CHARRING, new Extent.NotMeasured(), "2024-06");
    assertThat(kinds(somethingFoundAtTheShell().with(new LookEvent.Found(onRecord)).verdict()))
        .doesNotContain(ReasonKind.CONTRADICTION);
  }

  @Test
  void anOldFindingDoesNotSayWhatWasFoundNow() {
    Finding old =
        finding(
            "F1",
            "FABRIC@OUTER_SHELL",
            DefectKind.CHARRING,
            new Extent.NotMeasured(),
            "2022-01-01");
    GearCase given =
        somethingFoundAtTheShell()
            .with(new LookEvent.Found(old))
            .with(
                new WorkEvent.Repaired(
                    Moment.on(MarkedDate.parse("2022-02-01")),
                    RepairClass.ADVANCED,
                    true,
                    People.PROVIDER,
                    Set.of(old.id())));
    onlyReason(given, ReasonKind.CONTRADICTION);
  }

  @Test
  void anElementWithoutCriteriaOrIntervals() {
    Element hood =
        Element.builder(new ElementId("H1"), ElementKind.HOOD, Use.STRUCTURAL)
            .label(FitGear.label().build())
            .build();
    Inspection made =
        Inspection.builder(
                InspectionKind.ROUTINE,
                Occasion.AFTER_USE,
                MarkedDate.of(FitGear.AS_OF),
                People.WEARER)
            .build();
    Verdict verdict =
        new GearCase(hood, List.of(), List.of(made), List.of(), FitGear.AS_OF).verdict();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(verdict.reasons())
        .extracting(Reason::seen)
        .anyMatch(seen -> seen.endsWith("no criteria for such an element"))
        .contains("no row says how often ADVANCED inspection is due")
        .contains(
            "element: found HOOD STRUCTURAL, allowed: a kind of element that exists for that use")
        .noneMatch(seen -> seen.contains("COMPLETE_LINER"));
  }

  @Test
  void anotherDaysInspectionSaysWhichDay() {
    Inspection made =
        FitGear.inspection(InspectionKind.ROUTINE, ElementKind.COAT, LocalDate.of(2024, 7, 1))
            .build();
    Reason reason = onlyReason(inspected(made), ReasonKind.CONTRADICTION);
    assertThat(reason.seen())
        .isEqualTo("history Inspected: found 2024-07-01, allowed: a date not after 2024-06-15");
  }
}
