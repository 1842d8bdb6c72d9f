package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.assess.Verdicts.finding;

import java.time.LocalDate;
import java.util.List;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.History;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.testkit.ArbitrariesOfInspections;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.AssessmentBuilder;
import org.ensemblerules.verdict.LayerAge;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Test;

/** What a verdict lists, in which order, and on which target. */
class VerdictDetailsTest {
  private static final GearCase COAT = FitGear.fit(ElementKind.COAT);
  private static final Finding CHARRED = finding("FABRIC@OUTER_SHELL", DefectKind.CHARRING);

  private static Finding find(String id, String site, DefectKind defect) {
    return finding(id, site, defect, new Extent.NotMeasured(), "2024-06-15");
  }

  @Test
  void serviceAloneIsTheSame() {
    for (GearCase given : List.of(COAT, COAT.with(CHARRED), COAT.inspectedBy(List.of()))) {
      assertThat(Assess.service(FrozenRules.rules(), given.assessment(), given.asOf()))
          .isEqualTo(given.verdict().service());
    }
  }

  @Test
  void actionsOfOneKindStandByTheirTextAndThenTheirTarget() {
    GearCase given =
        COAT.with(find("F1", "TRIM@OUTER_SHELL", DefectKind.ASBESTOS))
            .with(find("F2", "CLOSURE@OUTER_SHELL", DefectKind.ASBESTOS))
            .with(find("F3", "FABRIC@MOISTURE_BARRIER", DefectKind.LEAK));
    assertThat(given.verdict().actions())
        .extracting(action -> action.effect().text() + " " + action.target())
        .containsExactly(
            "EVALUATE by EXPERT_EVALUATION on PART CLOSURE@OUTER_SHELL",
            "EVALUATE by EXPERT_EVALUATION on PART TRIM@OUTER_SHELL",
            "EVALUATE by LINER_LEAKAGE on LAYER WHOLE_ELEMENT@LINER_SYSTEM");
  }

  @Test
  void openFindingsOfOneIdStandByWhatTheySay() {
    Finding one = find("F1", "TRIM@OUTER_SHELL", DefectKind.ASBESTOS);
    Finding other = find("F1", "CLOSURE@OUTER_SHELL", DefectKind.ASBESTOS);
    Finding earlier = find("A1", "TRIM@OUTER_SHELL", DefectKind.ASBESTOS);
    assertThat(COAT.with(one).with(other).with(earlier).verdict().openFindings())
        .extracting(open -> open.finding())
        .containsExactly(earlier, other, one);
  }

  @Test
  void aLayerWithoutALabelIsItsOwnTarget() {
    Element unlabeled =
        Element.builder(new ElementId("C1"), ElementKind.COAT, Use.STRUCTURAL)
            .layer(LayerKind.LINER_SYSTEM, FitGear.label().build())
            .build();
    assertThat(COAT.with(unlabeled).with(CHARRED).verdict().actions())
        .extracting(action -> action.effect().text() + " " + action.target())
        .contains("RETIRE LAYER WHOLE_ELEMENT@OUTER_SHELL");
  }

  @Test
  void aLabelOfTheWholeHasAnAgeOfItsOwn() {
    Element labeled = FitGear.element(ElementKind.COAT).label(FitGear.label().build()).build();
    assertThat(COAT.with(labeled).verdict().ages())
        .extracting(LayerAge::layer)
        .anyMatch(layer -> layer.isEmpty());
  }

  @Test
  void checksNotDoneAreThoseAlone() {
    var made = FitGear.inspection(InspectionKind.ADVANCED, ElementKind.COAT, FitGear.AS_OF).build();
    var criterion = FitGear.criteria(InspectionKind.ADVANCED, ElementKind.COAT).get(0).key();
    GearCase given =
        COAT.with(CHARRED).inspectedBy(List.of(ArbitrariesOfInspections.without(made, criterion)));
    assertThat(given.verdict().checksNotDone()).containsExactly(criterion);
  }

  @Test
  void theWayBackSaysWhatMustBeShownAfterward() {
    GearCase given = COAT.with(find("F1", "CLOSURE@OUTER_SHELL", DefectKind.CLOSURE_FAILURE));
    Step step = ((WayBack.Steps) given.verdict().wayBack()).steps().get(0);
    assertThat(step.shown()).containsExactly("Shown that CLOSURE_OPERATION was passed.");
  }

  private static List<String> stale(GearCase given) {
    return given.verdict().cautions().stream()
        .filter(caution -> caution.text().startsWith("Stale"))
        .map(caution -> caution.row().value())
        .toList();
  }

  @Test
  void staleRowsAreThoseOfReasonsAndOfAges() {
    LocalDate past = FrozenProvenance.REVIEWED_THROUGH.plusDays(1);
    Element winter =
        FitGear.element(ElementKind.COAT)
            .layer(LayerKind.WINTER_LINER, FitGear.label().build())
            .build();
    GearCase given =
        COAT.with(winter).with(find("F1", "FABRIC@WINTER_LINER", DefectKind.SOILING)).on(past);
    assertThat(stale(given))
        .contains(
            "frozen/defect/COAT/FABRIC@WINTER_LINER/SOILING/any",
            "frozen/age/COAT/OUTER_SHELL",
            "frozen/age/COAT/LINER_SYSTEM",
            "frozen/age/COAT/WINTER_LINER")
        .doesNotHaveDuplicates();
    assertThat(stale(given.on(past.minusDays(1)))).isEmpty();
  }

  @Test
  void assessmentsAreEqualOnlyInAllTheirParts() {
    Element element = FitGear.element(ElementKind.HELMET).build();
    Assessment empty = Assessment.builder(element).build();
    assertThat(Assessment.builder(element).build()).isEqualTo(empty).hasSameHashCodeAs(empty);
    List<Assessment> others =
        List.of(
            Assessment.builder(FitGear.element(ElementKind.COAT).build()).build(),
            Assessment.builder(element).history(History.of(COAT.events())).build(),
            Assessment.builder(element).history(History.of(COAT.happened())).build(),
            Assessment.builder(element).finding(CHARRED).build());
    assertThat(others).doesNotContain(empty).doesNotHaveDuplicates();
    assertThat(others.stream().map(Assessment::toString))
        .doesNotContain(empty.toString())
        .doesNotHaveDuplicates();
    assertThat(empty)
        .hasToString("Assessment[" + element + ", History of 0 events[], findings=[]]");
    assertThat(others.get(3).toString()).endsWith(", findings=[" + CHARRED + "]]");
  }

  /** One by one or as a history: what was handed over is the same. */
  @Test
  void eventsMayBeAddedOneByOne() {
    Assessment given = COAT.assessment();
    AssessmentBuilder builder = Assessment.builder(given.element());
    given.history().events().forEach(builder::event);
    assertThat(builder.build()).isEqualTo(given);
    assertThat(builder.history(History.empty()).build().history().events()).isEmpty();
  }
}
