package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.shipped.ShippedRepairs.finding;
import static org.ensemblerules.shipped.ShippedRepairs.length;
import static org.ensemblerules.shipped.ShippedRepairs.orders;
import static org.ensemblerules.shipped.ShippedRepairs.with;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.repair.FollowUp;
import org.ensemblerules.repair.RepairLevel;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.repair.RepairOrder;
import org.ensemblerules.repair.RepairPlan;
import org.ensemblerules.repair.RepairSubject;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.testkit.ShippedExtents;
import org.ensemblerules.testkit.ShippedGear;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Repair orders by the shipped tables of every edition with a table of defects. */
class ShippedRepairTest {
  private static final Element COAT = ShippedRepairs.element(ElementKind.COAT, Use.STRUCTURAL);

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  private static RepairOrder only(OriginId edition, Element element, Finding... findings) {
    return orders(edition).plan(element, List.of(findings)).orders().get(0);
  }

  private static List<DefectRow> defects(OriginId edition) {
    return ShippedRepairs.tables(edition).defects().rows();
  }

  private static List<Extent> extents(OriginId edition) {
    return ShippedExtents.of(ShippedRepairs.tables(edition).defects());
  }

  private static Extent in(Band band, List<Extent> extents) {
    return extents.stream().filter(band::holds).findFirst().orElseThrow();
  }

  /** No class is said twice: the limits leave every single defect what its own row says it is. */
  @ParameterizedTest
  @MethodSource("editions")
  void theLimitsAgreeWithTheTableOfDefects(OriginId edition) {
    List<Extent> extents = extents(edition);
    List<String> differing = new ArrayList<>();
    int work = 0;
    for (DefectRow row : defects(edition)) {
      RepairOrder order =
          only(
              edition,
              ShippedRepairs.element(row.element(), row.use()),
              finding("F1", row.site(), row.defect(), in(row.band(), extents)));
      if (order.level() != RepairLevel.of(row.effect())) {
        differing.add(row.key() + " " + row.effect().text() + " " + order.level());
      }
      work += order.level().repairClass().isPresent() ? 1 : 0;
      assertThat(order.afterward().stream().map(FollowUp::check)).containsAll(row.afterward());
    }
    assertThat(differing).isEmpty();
    assertThat(work).isGreaterThan(300);
  }

  /**
   * Larger in its band is never of a milder class, and so with grades, of which each scale is in
   * order. What is decided first has no class yet; what is larger than that is work at least.
   */
  @ParameterizedTest
  @MethodSource("editions")
  void aStrongerDefectIsNeverOfAMilderLevel(OriginId edition) {
    List<String> milder = new ArrayList<>();
    for (DefectRow first : defects(edition)) {
      List<DefectRow> bands =
          ShippedRepairs.tables(edition)
              .defects()
              .bands(first.element(), first.use(), first.site(), first.defect());
      for (int i = 0; i < bands.size(); i++) {
        RepairLevel smaller = RepairLevel.of(bands.get(i).effect());
        RepairLevel least =
            smaller == RepairLevel.DECIDE_FIRST ? RepairLevel.BASIC_REPAIR : smaller;
        for (DefectRow larger : bands.subList(i + 1, bands.size())) {
          if (!RepairLevel.of(larger.effect()).isAtLeast(least)) {
            milder.add(larger.key() + " after " + smaller);
          }
        }
      }
    }
    assertThat(milder.stream().distinct()).isEmpty();
  }

  // Restated of NFPA 1851 (2020): missing or broken stitches of the outer shell of up to 1 in
  // (25 mm) are a basic repair; more is an advanced one. The inch is printed first.
  @ParameterizedTest
  @MethodSource("editions")
  void stitchesOfOneInchAreABasicRepair(OriginId edition) {
    for (DefectKind stitches : List.of(DefectKind.BROKEN_STITCHING, DefectKind.MISSING_STITCHING)) {
      for (String seam : List.of("SEAM_MAJOR_A@OUTER_SHELL", "SEAM_MINOR@OUTER_SHELL")) {
        assertThat(stitched(edition, seam, stitches, length("1", Unit.INCH)))
            .isEqualTo(RepairLevel.BASIC_REPAIR);
        assertThat(stitched(edition, seam, stitches, length("25.4", Unit.MILLIMETER)))
            .isEqualTo(RepairLevel.BASIC_REPAIR);
        assertThat(stitched(edition, seam, stitches, length("1.01", Unit.INCH)))
            .isEqualTo(RepairLevel.ADVANCED_REPAIR);
        assertThat(stitched(edition, seam, stitches, length("25.5", Unit.MILLIMETER)))
            .isEqualTo(RepairLevel.ADVANCED_REPAIR);
        assertThat(stitched(edition, seam, stitches, new Extent.NotMeasured()))
            .isEqualTo(RepairLevel.DECIDE_FIRST);
      }
    }
  }

  private static RepairLevel stitched(
      OriginId edition, String seam, DefectKind defect, Extent extent) {
    return only(edition, COAT, finding("F1", Site.parse(seam), defect, extent)).level();
  }

  // Restated of NFPA 1851 (2020): any work on thermal liner or moisture barrier is advanced.
  // Remembered (MEDIUM): a repaired barrier is tested again under pressure.
  @ParameterizedTest
  @MethodSource("editions")
  void everyPlaceOfTheInnerLayersIsLimitedToAdvancedRepair(OriginId edition) {
    Set<LayerKind> inner = Set.of(LayerKind.MOISTURE_BARRIER, LayerKind.THERMAL_LINER);
    for (AnatomyRow place : ShippedRepairs.tables(edition).anatomy().rows()) {
      if (place.site().layer().map(inner::contains).orElse(false)) {
        List<RepairLimitRow> limits =
            ShippedRepairs.tables(edition).limits().at(place.element(), place.use(), place.site());
        assertThat(limits)
            .as("%s", place.key())
            .anyMatch(
                row ->
                    row.subject() instanceof RepairSubject.AnyDamage
                        && row.least() == RepairLevel.ADVANCED_REPAIR
                        && row.before().contains(Check.CLEANLINESS));
        assertThat(limits.stream().flatMap(row -> row.afterward().stream()))
            .as("%s", place.key())
            .hasSize(place.site().layer().orElseThrow() == LayerKind.MOISTURE_BARRIER ? 1 : 0)
            .allMatch(check -> check == Check.BARRIER_UNDER_PRESSURE);
      }
    }
  }

  // Restated of NFPA 1851 (2020): hardware of the outer shell is replaced as a basic repair,
  // positive closure systems are not.
  @ParameterizedTest
  @MethodSource("editions")
  void hardwareIsBasicPositiveClosuresAreNot(OriginId edition) {
    RepairOrder snaps = only(edition, COAT, finding("SNAPS@OUTER_SHELL", DefectKind.DAMAGED));
    assertThat(snaps.level()).isEqualTo(RepairLevel.BASIC_REPLACEMENT);
    for (String closure : List.of("CLOSURE@OUTER_SHELL", "ZIPPER@OUTER_SHELL")) {
      RepairOrder order = only(edition, COAT, finding(closure, DefectKind.DAMAGED));
      assertThat(order.level()).isEqualTo(RepairLevel.ADVANCED_REPLACEMENT);
      assertThat(order.afterward().stream().map(FollowUp::check)).contains(Check.CLOSURE_OPERATION);
    }
  }

  // Restated of NFPA 1851 (2020): sewing a liner shut after its complete inspection is basic.
  @ParameterizedTest
  @MethodSource("editions")
  void aLinerIsSewnShutAsABasicRepair(OriginId edition) {
    for (Use use : Use.values()) {
      Element coat = ShippedRepairs.element(ElementKind.COAT, use);
      Doer trained = with(EntityKind.ORGANIZATION, CredentialScope.BASIC_REPAIR);
      RepairPlan plan = orders(edition).closeLiner(coat, trained, ShippedGear.AS_OF);
      assertThat(plan.level()).isEqualTo(RepairLevel.BASIC_REPAIR);
      assertThat(plan.granted()).isTrue();
      assertThat(plan.orders())
          .allSatisfy(
              order ->
                  assertThat(order.before())
                      .extracting(FollowUp::check)
                      .containsExactly(Check.LINER_INSPECTION));
    }
    Element hood = ShippedRepairs.element(ElementKind.HOOD, Use.STRUCTURAL);
    assertThat(orders(edition).closeLiner(hood).level()).isEqualTo(RepairLevel.DECIDE_FIRST);
  }

  /** Common practice: what burned or melted is not sewn on again, whatever else is wrong there. */
  @ParameterizedTest
  @MethodSource("editions")
  void trimThatBurnedOrMeltedIsNotSewnOnAgain(OriginId edition) {
    Site trim = Site.parse("TRIM@OUTER_SHELL");
    Finding loose = finding("F1", trim, DefectKind.LOOSE, new Extent.NotMeasured());
    assertThat(only(edition, COAT, loose).level()).isEqualTo(RepairLevel.ADVANCED_REPAIR);
    for (DefectKind heat : List.of(DefectKind.MELTING, DefectKind.CHARRING, DefectKind.BURN_HOLE)) {
      Finding burned = finding("F2", trim, heat, new Extent.NotMeasured());
      RepairPlan plan = orders(edition).plan(COAT, List.of(loose, burned));
      assertThat(plan.orders())
          .hasSize(2)
          .allMatch(order -> order.level() == RepairLevel.ADVANCED_REPLACEMENT)
          .allMatch(
              order ->
                  order.afterward().stream()
                      .anyMatch(check -> check.check() == Check.TRIM_BY_FLASHLIGHT));
    }
  }

  /** Remembered (HIGH): gear of an incident is preserved as found; nothing on it is repaired. */
  @ParameterizedTest
  @MethodSource("editions")
  void nothingIsRepairedOnGearThatIsPreserved(OriginId edition) {
    RepairPlan plan =
        orders(edition)
            .plan(
                COAT,
                List.of(
                    finding(
                        "F1",
                        Site.parse("SNAPS@OUTER_SHELL"),
                        DefectKind.DAMAGED,
                        new Extent.NotMeasured()),
                    finding(
                        "F2",
                        Site.of(Part.WHOLE_ELEMENT),
                        DefectKind.INJURY_TO_WEARER,
                        new Extent.NotMeasured()),
                    finding(
                        "F3",
                        Site.parse("SEAM_MAJOR_A@OUTER_SHELL"),
                        DefectKind.BROKEN_STITCHING,
                        new Extent.NotMeasured())));
    assertThat(plan.orders())
        .allMatch(order -> order.level() == RepairLevel.DECIDE_FIRST)
        .allMatch(order -> order.decidedBy().equals(Optional.of(Check.INCIDENT_RELEASE)));
    assertThat(plan.orders().get(0).because())
        .hasValueSatisfying(why -> assertThat(why).contains("INJURY_TO_WEARER"));
  }

  /** What leaves service is not repaired first. */
  @ParameterizedTest
  @MethodSource("editions")
  void nothingIsRepairedOnALayerThatLeaves(OriginId edition) {
    Finding beyond =
        finding(
            "F1",
            Site.parse("FABRIC@MOISTURE_BARRIER"),
            DefectKind.BEYOND_REPAIR,
            new Extent.NotMeasured());
    Finding tape =
        finding(
            "F2",
            Site.parse("SEAM_TAPE@MOISTURE_BARRIER"),
            DefectKind.LIFTING_TAPE,
            new Extent.NotMeasured());
    Finding snap =
        finding(
            "F3", Site.parse("SNAPS@OUTER_SHELL"), DefectKind.DAMAGED, new Extent.NotMeasured());
    assertThat(orders(edition).plan(COAT, List.of(snap, tape, beyond)).orders())
        .extracting(RepairOrder::level)
        .containsExactly(
            RepairLevel.NOT_REPAIRABLE, RepairLevel.NOT_REPAIRABLE, RepairLevel.BASIC_REPLACEMENT);
  }

  /** The edition of 2001 has limits for garments, and no orders, since it has no defects here. */
  @Test
  void theEditionOf2001HasLimitsOnly() {
    assertThat(
            ShippedEditions.loaded()
                .tables(ShippedEditions.EDITION_2001)
                .find(CareKinds.REPAIR_LIMITS)
                .orElseThrow()
                .rows())
        .isNotEmpty()
        .allMatch(row -> row.use() == Use.STRUCTURAL);
    assertThat(
            ShippedEditions.loaded()
                .tables(ShippedEditions.EDITION_2001)
                .find(InspectionKinds.DEFECTS))
        .isEmpty();
  }
}
