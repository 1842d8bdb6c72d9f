package org.ensemblerules.source;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.ruleset.OverlayKind;
import org.ensemblerules.ruleset.OverlayRows;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.strength.UsedGearRow;
import org.ensemblerules.testkit.FrozenProvenance;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Rows that are impossible in themselves are refused with field, value given and allowed. */
class InvalidRowsTest {
  private static final Provenance FROM = FrozenProvenance.of("row");
  private static final Set<InspectionKind> KINDS = EnumSet.of(InspectionKind.ROUTINE);
  private static final List<Site> SITES = List.of(Site.of(Part.SUSPENSION));
  private static final Set<DefectKind> DEFECTS = EnumSet.of(DefectKind.DAMAGED);

  static Stream<Arguments> refused() {
    String text500 = "1 to 500 characters, not blank, no control characters";
    return Stream.of(
        of("Edition.order: given 0, allowed: 1 or more", () -> edition(0, "title")),
        of("Edition.title: given \"\", allowed: 1 to 200", () -> edition(1, "")),
        of("Provenance.note: given \" \", allowed: " + text500, () -> note(" ")),
        of("CheckRow.shown: given \"\", allowed: 1 to 400", () -> shown("")),
        of("DefectRow.wording: given \"\", allowed: " + text500, () -> defect(false, "")),
        of(
            "DefectRow.open: given true, allowed: false, or an effect EVALUATE",
            () -> defect(true, "x")),
        of(
            "UsedGearRow.percent: given 0, allowed: above 0, up to 100",
            () -> new UsedGearRow(FROM, Optional.of(BigDecimal.ZERO))),
        of(
            "Discharge.by: given [], allowed: at least one kind of doer",
            () -> new Discharge.InspectedBy(KINDS, Set.of())),
        of(
            "Discharge.cleanings: given [], allowed: at least one kind",
            () -> new Discharge.CleanedAs(Set.of())),
        of(
            "OverlayRows.rows: given \"1 rows of other kinds\", allowed: rows of intervals",
            () -> OverlayRows.of(List.of(new CautionRow(FROM, Set.of(), Set.of(), Set.of(), "x")))),
        of(
            "Overlay.rows: given \"frozen/row of FROZEN_2020\", allowed: rows of origin OTHER",
            () ->
                new Overlay(
                    new OriginId("OTHER"),
                    OverlayKind.LAW_OF_PLACE,
                    "Other",
                    Optional.empty(),
                    Optional.empty(),
                    OverlayRows.of(
                        List.of(
                            new ForbidRow(
                                FROM, Task.BASIC_REPAIR, EntityKind.MEMBER, Optional.empty()))))),
        of("CautionRow.text: given \"\", allowed: " + text500, () -> caution("")),
        of("Finding.place: given \" \", allowed: 1 to 300", () -> finding(" ")),
        of(
            "CriterionRow.kinds: given [], allowed: at least one",
            () -> criterion(Set.of(), 1, SITES, DEFECTS, "x")),
        of(
            "CriterionRow.order: given 0, allowed: 1 or more",
            () -> criterion(KINDS, 0, SITES, DEFECTS, "x")),
        of(
            "CriterionRow.sites: given [], allowed: at least one",
            () -> criterion(KINDS, 1, List.of(), DEFECTS, "x")),
        of(
            "CriterionRow.lookFor: given [], allowed: at least one",
            () -> criterion(KINDS, 1, SITES, Set.of(), "x")),
        of(
            "CriterionRow.way: given \"\", allowed: " + text500,
            () -> criterion(KINDS, 1, SITES, DEFECTS, "")),
        of("IntervalRow.firstMonths: given 0, allowed: 1 to 600 months", () -> interval(0, 1, 1)),
        of(
            "IntervalRow.firstMonths: given 601, allowed: 1 to 600 months",
            () -> interval(601, 1, 1)),
        of(
            "IntervalRow.firstMonthsWithCbrnOption: given 13, allowed: 1 to 12 months",
            () -> interval(12, 13, 1)),
        of(
            "IntervalRow.repeatMonths: given 601, allowed: 1 to 600 months",
            () -> interval(12, 12, 601)));
  }

  private static Arguments of(String message, Executable call) {
    return Arguments.of(message, call);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("refused")
  void theMessageNamesFieldGivenAndAllowed(String message, Executable call) {
    assertThatThrownBy(call::execute)
        .isInstanceOf(InvalidValueException.class)
        .hasMessageStartingWith(message);
  }

  private static Object edition(int order, String title) {
    OriginId id = new OriginId("E");
    return new Edition(FROM, id, order, title, Optional.empty(), Optional.empty());
  }

  private static Object note(String text) {
    return new Provenance(
        FROM.key(), FROM.origin(), FROM.basis(), FROM.reviewedThrough(), Optional.of(text));
  }

  private static Object shown(String text) {
    return new CheckRow(FROM, Check.SEAM_PULL, Task.ADVANCED_INSPECTION, true, text);
  }

  private static Object defect(boolean open, String wording) {
    return new DefectRow(
        FROM,
        ElementKind.HELMET,
        Use.STRUCTURAL,
        Site.of(Part.SUSPENSION),
        DefectKind.DAMAGED,
        new Band.Presence(),
        new Effect.Note(),
        Set.of(),
        Set.of(),
        open,
        wording);
  }

  private static Object caution(String text) {
    return new CautionRow(FROM, Set.of(), Set.of(), Set.of(), text);
  }

  private static Object finding(String place) {
    return new Finding(
        new FindingId("F"),
        Site.of(Part.SUSPENSION),
        place,
        DefectKind.DAMAGED,
        new Extent.NotMeasured(),
        MarkedDate.unknown());
  }

  private static Object criterion(
      Set<InspectionKind> kinds, int order, List<Site> sites, Set<DefectKind> defects, String way) {
    return new CriterionRow(
        FROM,
        kinds,
        ElementKind.HELMET,
        Use.STRUCTURAL,
        order,
        sites,
        defects,
        Set.of(),
        Set.of(),
        way);
  }

  private static Object interval(int first, int withCbrn, int repeat) {
    return new IntervalRow(
        FROM, InspectionKind.ADVANCED, ElementKind.HELMET, Use.STRUCTURAL, first, withCbrn, repeat);
  }
}
