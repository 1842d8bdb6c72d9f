package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.testkit.ShippedWork;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Parts that were mended or swapped: what is left to do then, and that it is in after that. */
class RemedyDoneTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final FindingId ID = new FindingId("F1");

  private static Moment before(int days) {
    return Moment.on(MarkedDate.of(ShippedGear.AS_OF.minusDays(days)));
  }

  private static ShippedCase found(ElementKind kind, Site site, DefectKind defect) {
    return ShippedCase.fit(RULES, new Kind(kind, Use.STRUCTURAL))
        .with(
            new LookEvent.Found(
                new Finding(
                    ID, site, "", defect, new Extent.Graded(Grade.SLIGHT), before(20).date())));
  }

  /** What is asked for first is done by the manufacturer. */
  private static ShippedCase mended(ShippedCase given) {
    Action asked = given.verdict().actions().get(0);
    return given.with(
        ShippedWork.done(
            RULES,
            before(10),
            asked.effect(),
            ShippedGear.trained(EntityKind.MANUFACTURER),
            Set.of(ID)));
  }

  private static ShippedCase passed(ShippedCase given, Check check) {
    return given.with(ShippedWork.passed(RULES, before(9), check, Set.of(ID)));
  }

  private static ShippedCase inspected(ShippedCase given) {
    return given.with(
        new LookEvent.Inspected(
            ShippedGear.inspection(RULES, InspectionKind.ADVANCED, given.kind(), before(8).date())
                .build(),
            0));
  }

  private static List<String> steps(ShippedCase given) {
    return ((WayBack.Steps) given.verdict().wayBack())
        .steps().stream().map(step -> step.effect().text()).toList();
  }

  private static Site site(String text) {
    String[] parts = text.split("@");
    return parts.length == 1
        ? Site.of(Part.valueOf(parts[0]))
        : Site.of(Part.valueOf(parts[0]), LayerKind.valueOf(parts[1]));
  }

  /** Heat, a blow or a pull reaches further than the part that shows it. */
  @ParameterizedTest
  @CsvSource({
    "HELMET, IMPACT_CAP, CRACKING",
    "HELMET, HEADBAND, CHARRING",
    "COAT, SNAPS@OUTER_SHELL, MELTING",
    "TROUSERS, SUSPENDER_ATTACHMENT@OUTER_SHELL, STRENGTH_LOSS",
    "COAT, FABRIC@OUTER_SHELL, BURN_HOLE",
    "COAT, DRAG_RESCUE_DEVICE, DRAG_RESCUE_DEVICE_LOADED"
  })
  void whatLiesBehindTheNewPartIsInspectedInFull(
      ElementKind kind, String where, DefectKind defect) {
    ShippedCase given = found(kind, site(where), defect);
    ShippedCase checked = mended(given);
    for (Check check : given.verdict().actions().get(0).afterward()) {
      if (check != Check.ADVANCED_INSPECTION) {
        checked = passed(checked, check);
      }
    }
    assertThat(checked.verdict().service()).isEqualTo(Service.OUT);
    assertThat(steps(checked)).containsExactly("EVALUATE by ADVANCED_INSPECTION on ELEMENT");
    assertThat(inspected(checked).verdict().service()).isEqualTo(Service.IN);
  }

  @Test
  void ofARepairWhoseCheckIsMissingTheCheckAloneIsAskedFor() {
    ShippedCase pocket =
        found(
            ElementKind.COAT,
            Site.of(Part.POCKET, LayerKind.OUTER_SHELL),
            DefectKind.CLOSURE_FAILURE);
    assertThat(steps(pocket)).startsWith("REPAIR ADVANCED on PART");
    assertThat(steps(mended(pocket)))
        .containsExactly(
            "EVALUATE by CLOSURE_OPERATION on PART", "EVALUATE by ROUTINE_INSPECTION on ELEMENT");
    assertThat(passed(mended(pocket), Check.CLOSURE_OPERATION).verdict().service())
        .isEqualTo(Service.IN);
  }

  @Test
  void aHelmetWhoseFaceshieldWasReplacedComesBack() {
    ShippedCase cracked = found(ElementKind.HELMET, Site.of(Part.FACESHIELD), DefectKind.CRACKING);
    assertThat(steps(cracked)).startsWith("REPLACE_PART ADVANCED");
    assertThat(steps(mended(cracked)))
        .containsExactly("EVALUATE by ADVANCED_INSPECTION on ELEMENT");
    assertThat(inspected(mended(cracked)).verdict().service()).isEqualTo(Service.IN);
  }
}
