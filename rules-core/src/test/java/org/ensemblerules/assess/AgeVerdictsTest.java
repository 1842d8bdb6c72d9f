package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.assess.Verdicts.finding;
import static org.ensemblerules.assess.Verdicts.onlyReason;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Caution;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Test;

/** Age, and what is left when layers leave service. */
class AgeVerdictsTest {
  private static GearCase coat(String shell, String liner) {
    Element element =
        FitGear.element(ElementKind.COAT)
            .inService(MarkedDate.unknown())
            .layer(
                LayerKind.OUTER_SHELL,
                FitGear.label().manufactured(MarkedDate.parse(shell)).build())
            .layer(
                LayerKind.LINER_SYSTEM,
                FitGear.label().manufactured(MarkedDate.parse(liner)).build())
            .build();
    return FitGear.fit(ElementKind.COAT).with(element);
  }

  @Test
  void theFirstDayOut() {
    assertThat(coat("2014-06-16", "2020-03-01").verdict().service()).isEqualTo(Service.IN);
    Reason reason = onlyReason(coat("2014-06-15", "2020-03-01"), ReasonKind.AGE_REACHED);
    assertThat(reason.seen()).isEqualTo("OUTER_SHELL: made 2014-06-15; first day out 2024-06-15");
    assertThat(reason.effect()).isEqualTo(new Effect.Retire(Scope.LAYER));
    assertThat(reason.site()).hasToString("WHOLE_ELEMENT@OUTER_SHELL");
    assertThat(reason.rowKey()).map(Object::toString).contains("frozen/age/COAT/OUTER_SHELL");
  }

  @Test
  void anUnknownDateRetiresNothing() {
    Reason reason = onlyReason(coat("UNKNOWN", "2020-03-01"), ReasonKind.AGE_UNKNOWN);
    assertThat(reason.effect().text()).isEqualTo("EVALUATE by READ_LABEL on LAYER");
  }

  @Test
  void agesAreToldOfEachLayerWhateverTheVerdict() {
    assertThat(FitGear.fit(ElementKind.COAT).verdict().ages())
        .extracting(age -> age.layer() + " " + age.manufactured() + " " + age.answer().text())
        .containsExactly(
            "Optional[OUTER_SHELL] 2020-03-01 first day out 2030-03-01",
            "Optional[LINER_SYSTEM] 2020-03-01 first day out 2030-03-01");
    assertThat(FitGear.fit(ElementKind.HELMET).verdict().ages())
        .singleElement()
        .satisfies(
            age -> {
              assertThat(age.layer()).isEmpty();
              assertThat(((AgeAnswer.LeavesOn) age.answer()).lastDay())
                  .isEqualTo(LocalDate.of(2030, 2, 28));
            });
  }

  @Test
  void anElementWithoutLayersRetiresAsAWhole() {
    Element helmet =
        FitGear.element(ElementKind.HELMET)
            .inService(MarkedDate.unknown())
            .label(FitGear.label().manufactured(MarkedDate.parse("2014-06-15")).build())
            .build();
    GearCase given = FitGear.fit(ElementKind.HELMET).with(helmet);
    assertThat(onlyReason(given, ReasonKind.AGE_REACHED).effect())
        .isEqualTo(new Effect.Retire(Scope.ELEMENT));
    assertThat(given.verdict().wayBack())
        .isEqualTo(new WayBack.None("the whole element leaves service for good"));
  }

  @Test
  void whereNoRowSetsALimitAnExpertIsAsked() {
    Tables without =
        Tables.of(
            FrozenRules.tables()
                .map()
                .with(InspectionKinds.AGE_LIMITS, AgeLimitTable.of(List.of()).orElseThrow()));
    GearCase given = FitGear.fit(ElementKind.HELMET);
    Verdict verdict = Assess.assess(FrozenRules.of(without), given.assessment(), given.asOf());
    assertThat(verdict.reasons())
        .singleElement()
        .satisfies(
            reason -> {
              assertThat(reason.kind()).isEqualTo(ReasonKind.AGE_UNKNOWN);
              assertThat(reason.row()).isEmpty();
              assertThat(reason.effect().text())
                  .isEqualTo("EVALUATE by EXPERT_EVALUATION on ELEMENT");
            });
  }

  private static List<String> steps(GearCase given) {
    return ((WayBack.Steps) given.verdict().wayBack())
        .steps().stream().map(step -> step.effect().text() + " " + step.target()).toList();
  }

  @Test
  void whereOneLayerRetiresItIsReplaced() {
    GearCase given = coat("2014-01-01", "2020-03-01");
    assertThat(steps(given))
        .containsExactly(
            "RETIRE LAYER WHOLE_ELEMENT@OUTER_SHELL",
            "EVALUATE by ROUTINE_INSPECTION on ELEMENT WHOLE_ELEMENT");
    assertThat(((WayBack.Steps) given.verdict().wayBack()).steps().get(0).shown())
        .containsExactly("Replaced by one of the same model and size, with a label of its own.");
    assertThat(((WayBack.Steps) given.verdict().wayBack()).steps().get(1).shown())
        .containsExactly("Shown that ROUTINE_INSPECTION was passed.");
  }

  @Test
  void whereEveryLayerRetiresThereIsNoWayBack() {
    assertThat(coat("2014-01-01", "2014-01-01").verdict().wayBack())
        .isEqualTo(new WayBack.None("every labeled layer leaves service for good"));
    GearCase byDamage =
        coat("2014-01-01", "2020-03-01").with(finding("FABRIC@THERMAL_LINER", DefectKind.CHARRING));
    assertThat(byDamage.verdict().wayBack()).isInstanceOf(WayBack.None.class);
  }

  @Test
  void aWinterLinerNeitherSavesNorCondemnsACoat() {
    Element withWinter =
        FitGear.element(ElementKind.COAT)
            .inService(MarkedDate.unknown())
            .layer(
                LayerKind.OUTER_SHELL,
                FitGear.label().manufactured(MarkedDate.parse("2014")).build())
            .layer(
                LayerKind.LINER_SYSTEM,
                FitGear.label().manufactured(MarkedDate.parse("2014")).build())
            .layer(LayerKind.WINTER_LINER, FitGear.label().build())
            .build();
    assertThat(FitGear.fit(ElementKind.COAT).with(withWinter).verdict().wayBack())
        .isInstanceOf(WayBack.None.class);
    Element onlyWinter =
        Element.builder(new ElementId("C1"), ElementKind.COAT, Use.STRUCTURAL)
            .layer(LayerKind.WINTER_LINER, FitGear.label().build())
            .build();
    assertThat(FitGear.fit(ElementKind.COAT).with(onlyWinter).verdict().wayBack())
        .isInstanceOf(WayBack.Steps.class);
  }

  @Test
  void aRetiredPartIsNotItsLayer() {
    GearCase given =
        FitGear.fit(ElementKind.COAT)
            .with(finding("DRAG_RESCUE_DEVICE", DefectKind.DRAG_RESCUE_DEVICE_LOADED))
            .with(
                finding(
                    "F2",
                    "FABRIC@THERMAL_LINER",
                    DefectKind.CHARRING,
                    new Extent.NotMeasured(),
                    "2024-06-15"));
    assertThat(given.verdict().wayBack()).isInstanceOf(WayBack.Steps.class);
  }

  @Test
  void stepsComeInTheirOrder() {
    GearCase given =
        coat("2014-01-01", "UNKNOWN")
            .inspectedBy(
                List.of(
                    Inspection.builder(
                            InspectionKind.ADVANCED,
                            Occasion.PERIODIC,
                            MarkedDate.of(FitGear.AS_OF),
                            People.permitted(Task.ADVANCED_INSPECTION))
                        .gearClean(YesNoUnknown.YES)
                        .build()))
            .with(finding("CLOSURE@OUTER_SHELL", DefectKind.CLOSURE_FAILURE))
            .with(find("F2", "WHOLE_ELEMENT", DefectKind.INJURY_TO_WEARER))
            .with(find("F3", "WHOLE_ELEMENT", DefectKind.BODY_FLUIDS))
            .with(find("F4", "GLOVE_SHELL", DefectKind.CUT))
            .with(find("F5", "FABRIC@MOISTURE_BARRIER", DefectKind.LEAK));
    assertThat(steps(given))
        .containsExactly(
            "EVALUATE by INCIDENT_RELEASE on ELEMENT WHOLE_ELEMENT",
            "EVALUATE by RECORD_CORRECTION on ELEMENT WHOLE_ELEMENT",
            "EVALUATE by READ_LABEL on LAYER WHOLE_ELEMENT@LINER_SYSTEM",
            "CLEAN SANITIZING on ELEMENT WHOLE_ELEMENT",
            "CLEAN ADVANCED on ELEMENT WHOLE_ELEMENT",
            "EVALUATE by LINER_LEAKAGE on LAYER WHOLE_ELEMENT@LINER_SYSTEM",
            "RETIRE LAYER WHOLE_ELEMENT@OUTER_SHELL",
            "REPLACE_PART ADVANCED CLOSURE@OUTER_SHELL",
            "EVALUATE by ADVANCED_INSPECTION on ELEMENT WHOLE_ELEMENT");
  }

  private static Finding find(String id, String site, DefectKind defect) {
    return finding(id, site, defect, new Extent.NotMeasured(), "2024-06-15");
  }

  @Test
  void aRowPastItsReviewIsStaleAndNothingElse() {
    LocalDate past = FrozenProvenance.REVIEWED_THROUGH.plusDays(1);
    GearCase young =
        coat("2030-06-01", "2030-06-01")
            .inspectedBy(
                List.of(
                    FitGear.inspection(InspectionKind.ADVANCED, ElementKind.COAT, past).build()))
            .on(past);
    GearCase onTheDay = young.on(FrozenProvenance.REVIEWED_THROUGH);
    assertThat(young.verdict().cautions())
        .filteredOn(caution -> caution.text().startsWith("Stale"))
        .extracting(Caution::text)
        .contains("Stale: this row was reviewed only through 2030-12-31.");
    assertThat(onTheDay.verdict().cautions())
        .noneMatch(caution -> caution.text().startsWith("Stale"));
  }

  @Test
  void cautionsFollowTheElementAndItsActions() {
    assertThat(FitGear.fit(ElementKind.HELMET).verdict().cautions())
        .extracting(caution -> caution.row().value())
        .containsExactly("frozen/caution/ALWAYS", "frozen/caution/HELMET");
    assertThat(coat("2014-01-01", "2020-03-01").verdict().cautions())
        .extracting(Caution::text)
        .containsExactly("These rules are invented.", "Retired gear is destroyed or marked.");
    assertThat(Optional.of(coat("2020-03-01", "2020-03-01").verdict().identity()))
        .contains(FrozenRules.rules().identity());
  }
}
