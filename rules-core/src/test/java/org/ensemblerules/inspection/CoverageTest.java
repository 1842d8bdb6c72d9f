package org.ensemblerules.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.ArbitrariesOfInspections;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.People;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whether an inspection looked at all that it must, and whether it counts. */
class CoverageTest {
  private static final Element COAT = FitGear.element(ElementKind.COAT).build();
  private static final CriteriaTable CRITERIA = FrozenRules.rules().tables().criteria();
  private static final RowKey TRIM = new RowKey("frozen/criterion/COAT/TRIM@OUTER_SHELL");
  private static final RowKey WINTER = new RowKey("frozen/criterion/COAT/FABRIC@WINTER_LINER");
  private static final Inspection WHOLE =
      FitGear.inspection(InspectionKind.ADVANCED, ElementKind.COAT, FitGear.AS_OF).build();

  private static Coverage of(Inspection inspection) {
    return Coverage.of(inspection, COAT, CRITERIA, FrozenRules.signOffs());
  }

  private static Inspection said(RowKey key, Outcome outcome) {
    return ArbitrariesOfInspections.adding(
        ArbitrariesOfInspections.without(WHOLE, key), key, outcome);
  }

  private static List<RowKey> keys(List<CriterionRow> rows) {
    return rows.stream().map(CriterionRow::key).toList();
  }

  @Test
  void allLookedAtIsComplete() {
    assertThat(of(WHOLE).isComplete()).isTrue();
    assertThat(of(WHOLE).required()).isEqualTo(6);
    assertThat(of(WHOLE).found()).isEmpty();
  }

  @Test
  void leftOutAndNotDoneAreTheSame() {
    for (Inspection made :
        List.of(ArbitrariesOfInspections.without(WHOLE, TRIM), said(TRIM, Outcome.NOT_DONE))) {
      assertThat(keys(of(made).notDone())).containsExactly(TRIM);
      assertThat(of(made).isComplete()).isFalse();
    }
  }

  /** A half-finished inspection: what is left stands in order, with what must be at hand. */
  @Test
  void whatIsLeftStandsInOrderWithWhatMustBeAtHand() {
    assertThat(of(WHOLE).left()).isEmpty();
    assertThat(of(WHOLE).toBring()).isEmpty();
    InspectionBuilder begun =
        Inspection.builder(WHOLE.kind(), WHOLE.occasion(), WHOLE.on(), WHOLE.by());
    Coverage nothing = of(begun.build());
    assertThat(nothing.left()).isEqualTo(nothing.notDone()).hasSize(nothing.required());
    assertThat(nothing.left()).isSortedAccordingTo(Comparator.comparingInt(CriterionRow::order));
    Inspection dark = ArbitrariesOfInspections.withoutAtHand(WHOLE, Equipment.FOCUSED_FLASHLIGHT);
    assertThat(keys(of(dark).left())).containsExactly(TRIM);
    assertThat(of(dark).toBring())
        .containsExactlyInAnyOrder(Equipment.FOCUSED_FLASHLIGHT, Equipment.NEW_TRIM_SAMPLE);
    Inspection twice = ArbitrariesOfInspections.adding(WHOLE, TRIM, Outcome.FOUND);
    assertThat(keys(of(twice).left())).containsExactly(TRIM);
  }

  @Test
  void somethingFoundIsLookedAt() {
    Coverage coverage = of(said(TRIM, Outcome.FOUND));
    assertThat(keys(coverage.found())).containsExactly(TRIM);
    assertThat(coverage.isComplete()).isTrue();
  }

  @ParameterizedTest
  @EnumSource(
      value = Equipment.class,
      names = {"FOCUSED_FLASHLIGHT", "NEW_TRIM_SAMPLE"})
  void clearWithoutWhatMustBeAtHandDoesNotCount(Equipment missing) {
    Inspection made = ArbitrariesOfInspections.withoutAtHand(WHOLE, missing);
    assertThat(keys(of(made).withoutEquipment())).containsExactly(TRIM);
    assertThat(of(made).isComplete()).isFalse();
  }

  @Test
  void whatWasFoundWasFoundWhateverWasAtHand() {
    Inspection made =
        ArbitrariesOfInspections.withoutAtHand(
            said(TRIM, Outcome.FOUND), Equipment.NEW_TRIM_SAMPLE);
    assertThat(of(made).withoutEquipment()).isEmpty();
  }

  @Test
  void twoDifferentOutcomesContradictEachOtherAndTheSameTwiceDoesNot() {
    Inspection both = ArbitrariesOfInspections.adding(WHOLE, TRIM, Outcome.FOUND);
    assertThat(keys(of(both).contradictory())).containsExactly(TRIM);
    assertThat(of(both).isComplete()).isFalse();
    assertThat(of(ArbitrariesOfInspections.adding(WHOLE, TRIM, Outcome.CLEAR)).isComplete())
        .isTrue();
  }

  @Test
  void onlyWhatNotEveryElementHasMayBeNotFitted() {
    assertThat(of(said(WINTER, Outcome.NOT_FITTED)).isComplete()).isTrue();
    assertThat(keys(of(said(TRIM, Outcome.NOT_FITTED)).contradictory())).containsExactly(TRIM);
  }

  @Test
  void aLayerWithALabelOfItsOwnIsFitted() {
    Element withWinterLiner =
        FitGear.element(ElementKind.COAT)
            .layer(LayerKind.WINTER_LINER, FitGear.label().build())
            .build();
    Coverage coverage =
        Coverage.of(
            said(WINTER, Outcome.NOT_FITTED), withWinterLiner, CRITERIA, FrozenRules.signOffs());
    assertThat(keys(coverage.contradictory())).containsExactly(WINTER);
    assertThat(
            Coverage.of(
                    said(WINTER, Outcome.CLEAR), withWinterLiner, CRITERIA, FrozenRules.signOffs())
                .isComplete())
        .isTrue();
  }

  @Test
  void criteriaOfOtherInspectionsAreUnknown() {
    RowKey liner = new RowKey("frozen/criterion/COAT/FABRIC@THERMAL_LINER");
    RowKey never = new RowKey("a-never-heard-of");
    Inspection made =
        ArbitrariesOfInspections.adding(
            ArbitrariesOfInspections.adding(WHOLE, liner, Outcome.CLEAR), never, Outcome.CLEAR);
    assertThat(of(made).unknown()).containsExactly(never, liner);
    assertThat(of(made).isComplete()).isFalse();
  }

  private static InspectionStanding standing(Inspection made) {
    return InspectionStanding.of(
        made, COAT, CRITERIA, FrozenRules.signOffs(), FrozenRules.rules().tables().permissions());
  }

  @Test
  void itCountsIfCompletePermittedAndClean() {
    assertThat(standing(WHOLE).counts()).isTrue();
    assertThat(standing(ArbitrariesOfInspections.without(WHOLE, TRIM)).counts()).isFalse();
    assertThat(standing(ArbitrariesOfInspections.by(WHOLE, People.UNTRAINED)).counts()).isFalse();
  }

  @ParameterizedTest
  @EnumSource(YesNoUnknown.class)
  void onlyARoutineLookMayBeAtDirtyGear(YesNoUnknown clean) {
    for (InspectionKind kind : FitGear.inspections(ElementKind.COAT)) {
      Inspection made =
          FitGear.inspection(kind, ElementKind.COAT, FitGear.AS_OF).gearClean(clean).build();
      assertThat(standing(made).counts())
          .isEqualTo(clean == YesNoUnknown.YES || kind == InspectionKind.ROUTINE);
    }
  }

  @Test
  void inspectionsAreEqualOnlyInAllTheirParts() {
    InspectionBuilder plain = builder(InspectionKind.ADVANCED, Occasion.PERIODIC, "2024");
    assertThat(plain.build()).isEqualTo(builder(WHOLE.kind(), Occasion.PERIODIC, "2024").build());
    assertThat(plain.build())
        .hasSameHashCodeAs(builder(WHOLE.kind(), Occasion.PERIODIC, "2024").build())
        .asString()
        .startsWith("Inspection[ADVANCED, 2024, Doer[name=Verified provider,");
    List<Inspection> others =
        List.of(
            builder(InspectionKind.ROUTINE, Occasion.PERIODIC, "2024").build(),
            builder(InspectionKind.ADVANCED, Occasion.SUSPICION, "2024").build(),
            builder(InspectionKind.ADVANCED, Occasion.PERIODIC, "2023").build(),
            ArbitrariesOfInspections.by(plain.build(), People.MAKER),
            builder(WHOLE.kind(), Occasion.PERIODIC, "2024").gearClean(YesNoUnknown.NO).build(),
            builder(WHOLE.kind(), Occasion.PERIODIC, "2024")
                .atHand(EnumSet.of(Equipment.RULER))
                .build(),
            builder(WHOLE.kind(), Occasion.PERIODIC, "2024").outcome(TRIM, Outcome.CLEAR).build());
    assertThat(others).doesNotContain(plain.build()).doesNotHaveDuplicates();
    assertThat(plain.build().atHand()).isEqualTo(Set.of());
  }

  private static InspectionBuilder builder(InspectionKind kind, Occasion occasion, String on) {
    return Inspection.builder(kind, occasion, MarkedDate.parse(on), People.PROVIDER);
  }
}
