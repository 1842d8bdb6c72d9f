package org.ensemblerules.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.EditionOrder;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.People;
import org.junit.jupiter.api.Test;

/** What a sign-off says of each criterion, alone and beside outcomes. */
class SignOffTest {
  private static final Element COAT = FitGear.element(ElementKind.COAT).build();
  private static final CriteriaTable CRITERIA = FrozenRules.rules().tables().criteria();
  private static final RowKey TRIM = new RowKey("frozen/criterion/COAT/TRIM@OUTER_SHELL");

  private static Finding finding(String id, Site site, DefectKind defect) {
    return new Finding(
        new FindingId(id),
        site,
        "",
        defect,
        new Extent.NotMeasured(),
        MarkedDate.of(FitGear.AS_OF));
  }

  private static final Finding AT_THE_TRIM =
      finding("F1", Site.of(Part.TRIM, LayerKind.OUTER_SHELL), DefectKind.TEAR);

  private static InspectionBuilder signed(OriginId edition, String... clearBut) {
    Set<FindingId> ids = new HashSet<>();
    for (String id : clearBut) {
      ids.add(new FindingId(id));
    }
    return Inspection.builder(
            InspectionKind.ADVANCED,
            Occasion.PERIODIC,
            MarkedDate.of(FitGear.AS_OF),
            People.permitted(InspectionKind.ADVANCED.task()))
        .gearClean(YesNoUnknown.YES)
        .allAtHand()
        .signOff(new SignOff(edition, ids));
  }

  private static Coverage of(InspectionBuilder made, Finding... findings) {
    return Coverage.of(made.build(), COAT, CRITERIA, FrozenRules.signOffs(findings));
  }

  private static List<RowKey> keys(List<CriterionRow> rows) {
    return rows.stream().map(CriterionRow::key).toList();
  }

  @Test
  void allIsLookedAtAndClear() {
    Coverage coverage = of(signed(FrozenProvenance.EDITION));
    assertThat(coverage.isComplete()).isTrue();
    assertThat(coverage.clear()).hasSize(coverage.required()).isEqualTo(coverage.signedOff());
    assertThat(coverage.found()).isEmpty();
  }

  @Test
  void anotherEditionSignsOffNothing() {
    Coverage coverage = of(signed(new OriginId("FROZEN_2010")));
    assertThat(coverage.notDone()).hasSize(coverage.required());
    assertThat(coverage.signedOff()).isEmpty();
  }

  @Test
  void whatItNamesWasFoundWhereItStands() {
    Coverage coverage = of(signed(FrozenProvenance.EDITION, "F1"), AT_THE_TRIM);
    assertThat(keys(coverage.found())).containsExactly(TRIM);
    assertThat(keys(coverage.clear())).doesNotContain(TRIM);
    assertThat(coverage.isComplete()).isTrue();
    Coverage noLayer =
        of(
            signed(FrozenProvenance.EDITION, "F1"),
            finding("F1", Site.of(Part.TRIM), DefectKind.TEAR));
    assertThat(keys(noLayer.found())).containsExactly(TRIM);
    Coverage older = of(signed(new OriginId("FROZEN_2010"), "F1"), AT_THE_TRIM);
    assertThat(keys(older.found())).containsExactly(TRIM);
  }

  @Test
  void ofSeveralCriteriaOfAPlaceThoseThatLookForItCount() {
    for (DefectKind defect : DefectKind.values()) {
      List<CriterionRow> found =
          of(
                  signed(FrozenProvenance.EDITION, "F1"),
                  finding("F1", Site.of(Part.TRIM, LayerKind.OUTER_SHELL), defect))
              .found();
      assertThat(keys(found)).containsExactly(TRIM);
    }
  }

  @Test
  void aFindingThatNoEventHasIsNamed() {
    Coverage coverage = of(signed(FrozenProvenance.EDITION, "F2", "F1"), AT_THE_TRIM);
    assertThat(coverage.unknownFindings()).containsExactly(new FindingId("F2"));
    assertThat(coverage.isComplete()).isFalse();
  }

  @Test
  void anOutcomeBesideItCountsAndWhatExcludesItContradicts() {
    for (Outcome outcome : List.of(Outcome.FOUND, Outcome.NOT_DONE)) {
      Coverage coverage = of(signed(FrozenProvenance.EDITION).outcome(TRIM, outcome));
      assertThat(keys(coverage.contradictory())).containsExactly(TRIM);
      assertThat(keys(coverage.clear())).doesNotContain(TRIM);
      assertThat(keys(coverage.signedOff())).doesNotContain(TRIM);
    }
    Coverage clear = of(signed(FrozenProvenance.EDITION).outcome(TRIM, Outcome.CLEAR));
    assertThat(clear.isComplete()).isTrue();
    Coverage named =
        of(signed(FrozenProvenance.EDITION, "F1").outcome(TRIM, Outcome.CLEAR), AT_THE_TRIM);
    assertThat(keys(named.contradictory())).containsExactly(TRIM);
    assertThat(keys(named.found())).containsExactly(TRIM);
    Coverage both =
        of(signed(FrozenProvenance.EDITION, "F1").outcome(TRIM, Outcome.FOUND), AT_THE_TRIM);
    assertThat(both.isComplete()).isTrue();
  }

  private static InspectionStanding standing(Inspection made, GradeRow... policies) {
    return InspectionStanding.of(
        made,
        COAT,
        CRITERIA,
        new SignOffReading(
            FrozenRules.rules().evidenceTables().editions(), List.of(), List.of(policies)),
        FrozenRules.rules().tables().permissions());
  }

  @Test
  void theGradeIsThatOfTheLeastThatItRestsOn() {
    Inspection whole =
        FitGear.inspection(InspectionKind.ADVANCED, ElementKind.COAT, FitGear.AS_OF).build();
    assertThat(standing(whole).grade()).isEqualTo(EvidenceGrade.ITEMIZED);
    Inspection signed = signed(FrozenProvenance.EDITION).build();
    assertThat(standing(signed).grade()).isEqualTo(EvidenceGrade.SIGNED_OFF);
    assertThat(standing(signed).counts()).isTrue();
    Inspection silent = whole.toBuilder().build();
    assertThat(silent).isEqualTo(whole);
    Inspection nobody =
        Inspection.builder(whole.kind(), whole.occasion(), whole.on(), Optional.empty())
            .gearClean(YesNoUnknown.YES)
            .allAtHand()
            .signOff(new SignOff(FrozenProvenance.EDITION, Set.of()))
            .build();
    assertThat(standing(nobody).grade()).isEqualTo(EvidenceGrade.DATE_ONLY);
    assertThat(standing(nobody).counts()).isFalse();
    assertThat(standing(nobody).permission().text()).isEqualTo("nobody is named who did it");
    assertThat(nobody.lacks()).isEqualTo("only its date is on record: nobody is named who made it");
    assertThat(signed.lacks()).isEmpty();
  }

  @Test
  void aPolicyMayAskForEachCriterionByItself() {
    GradeRow itemized =
        new GradeRow(
            FrozenProvenance.of("grade"),
            InspectionKind.ADVANCED,
            EvidenceGrade.ITEMIZED,
            Optional.of(FitGear.AS_OF));
    Inspection signed = signed(FrozenProvenance.EDITION).build();
    assertThat(standing(signed, itemized).askingMore()).containsExactly(itemized);
    assertThat(standing(signed, itemized).counts()).isFalse();
    assertThat(itemized.text()).contains("signed off, and ").contains(" asks for ITEMIZED");
    GradeRow later =
        new GradeRow(
            FrozenProvenance.of("grade"),
            InspectionKind.ADVANCED,
            EvidenceGrade.ITEMIZED,
            Optional.of(FitGear.AS_OF.plusDays(1)));
    assertThat(standing(signed, later).counts()).isTrue();
    assertThatThrownBy(
            () ->
                new GradeRow(
                    FrozenProvenance.of("grade"),
                    InspectionKind.ADVANCED,
                    EvidenceGrade.DATE_ONLY,
                    Optional.empty()))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("SIGNED_OFF or ITEMIZED");
  }

  @Test
  void anEditionHasWhatWasWrittenByThen() {
    EditionOrder order =
        new EditionOrder(
            List.of(FrozenProvenance.EDITION, new OriginId("LATER_1"), new OriginId("LATER_2")));
    assertThat(order.has(FrozenProvenance.EDITION, FrozenProvenance.of("row"))).isTrue();
    assertThat(order.has(new OriginId("LATER_1"), FrozenProvenance.of("row"))).isTrue();
    assertThat(order.has(new OriginId("NEVER_1"), FrozenProvenance.of("row"))).isFalse();
    EditionOrder first = new EditionOrder(List.of(new OriginId("EARLIER_1"), new OriginId("X")));
    assertThat(first.has(new OriginId("X"), FrozenProvenance.of("row"))).isTrue();
    assertThat(first.has(new OriginId("EARLIER_1"), FrozenProvenance.of("row"))).isFalse();
  }

  @Test
  void allClearIsASignOffThatNamesNoFinding() {
    OriginId edition = new OriginId("NFPA_1851_2020");
    assertThat(signed(edition).allClear(edition).build()).isEqualTo(signed(edition).build());
  }
}
