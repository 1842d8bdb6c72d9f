package org.ensemblerules.testkit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.ruleset.CautionRow;

/** What the frozen rules have looked at and how often, how old gear may get, and their cautions. */
final class FrozenSchedules {
  private static final Set<InspectionKind> EVERY_LOOK =
      EnumSet.of(InspectionKind.ROUTINE, InspectionKind.ADVANCED);
  private static final Set<InspectionKind> ADVANCED = EnumSet.of(InspectionKind.ADVANCED);
  private static final Set<InspectionKind> LINER = EnumSet.of(InspectionKind.COMPLETE_LINER);

  private FrozenSchedules() {}

  static List<CriterionRow> criteria() {
    List<CriterionRow> rows = new ArrayList<>();
    Set<Equipment> light = EnumSet.of(Equipment.GOOD_LIGHT);
    criterion(rows, ElementKind.COAT, EVERY_LOOK, "FABRIC@OUTER_SHELL", DefectKind.TEAR, light);
    criterion(
        rows, ElementKind.COAT, EVERY_LOOK, "CLOSURE@OUTER_SHELL", DefectKind.DAMAGED, Set.of());
    criterion(
        rows,
        ElementKind.COAT,
        ADVANCED,
        "TRIM@OUTER_SHELL",
        DefectKind.LOST_RETROREFLECTIVITY,
        EnumSet.of(Equipment.FOCUSED_FLASHLIGHT, Equipment.NEW_TRIM_SAMPLE));
    criterion(
        rows,
        ElementKind.COAT,
        ADVANCED,
        "SEAM_MAJOR_A@OUTER_SHELL SEAM_MAJOR_B@THERMAL_LINER",
        DefectKind.BROKEN_STITCHING,
        light);
    criterion(
        rows, ElementKind.COAT, EVERY_LOOK, "DRAG_RESCUE_DEVICE", DefectKind.MISSING, Set.of());
    criterion(rows, ElementKind.COAT, ADVANCED, "FABRIC@WINTER_LINER", DefectKind.TEAR, Set.of());
    criterion(
        rows,
        ElementKind.COAT,
        LINER,
        "FABRIC@MOISTURE_BARRIER SEAM_TAPE@MOISTURE_BARRIER",
        DefectKind.LEAK,
        EnumSet.of(Equipment.PRESSURE_TESTER));
    criterion(rows, ElementKind.COAT, LINER, "FABRIC@THERMAL_LINER", DefectKind.TEAR, Set.of());
    criterion(rows, ElementKind.HELMET, EVERY_LOOK, "HELMET_SHELL", DefectKind.CRACKING, Set.of());
    criterion(rows, ElementKind.HELMET, ADVANCED, "SUSPENSION", DefectKind.DAMAGED, light);
    criterion(
        rows,
        ElementKind.HELMET,
        EVERY_LOOK,
        "FACESHIELD GOGGLES",
        DefectKind.SCRATCHES_LIMITING_SIGHT,
        Set.of());
    criterion(rows, ElementKind.GLOVES, EVERY_LOOK, "GLOVE_SHELL", DefectKind.CUT, Set.of());
    criterion(rows, ElementKind.GLOVES, ADVANCED, "GLOVE_BARRIER", DefectKind.LEAK, light);
    return rows;
  }

  private static void criterion(
      List<CriterionRow> rows,
      ElementKind element,
      Set<InspectionKind> kinds,
      String sites,
      DefectKind defect,
      Set<Equipment> atHand) {
    List<Site> where = Arrays.stream(sites.split(" ", -1)).map(Site::parse).toList();
    rows.add(
        new CriterionRow(
            FrozenProvenance.of("criterion", element, where.get(0)),
            kinds,
            element,
            Use.STRUCTURAL,
            rows.size() + 1,
            where,
            EnumSet.of(defect),
            atHand,
            defect == DefectKind.LEAK ? EnumSet.of(Check.BARRIER_UNDER_PRESSURE) : Set.of(),
            "Look at " + sites + " for " + defect + "."));
  }

  static List<IntervalRow> intervals() {
    List<IntervalRow> rows = new ArrayList<>();
    for (ElementKind element : FrozenRules.KINDS) {
      rows.add(
          new IntervalRow(
              FrozenProvenance.of("interval", InspectionKind.ADVANCED, element),
              InspectionKind.ADVANCED,
              element,
              Use.STRUCTURAL,
              12,
              12,
              12));
    }
    rows.add(
        new IntervalRow(
            FrozenProvenance.of("interval", InspectionKind.COMPLETE_LINER, ElementKind.COAT),
            InspectionKind.COMPLETE_LINER,
            ElementKind.COAT,
            Use.STRUCTURAL,
            36,
            24,
            12));
    return rows;
  }

  static List<AgeLimitRow> ageLimits() {
    List<AgeLimitRow> rows = new ArrayList<>();
    for (LayerKind layer : LayerKind.values()) {
      rows.add(
          age(
              ElementKind.COAT,
              Optional.of(layer),
              layer == LayerKind.WINTER_LINER ? new AgeLimit.NoneSet() : new AgeLimit.Years(10)));
    }
    rows.add(age(ElementKind.HELMET, Optional.empty(), new AgeLimit.Years(10)));
    rows.add(age(ElementKind.GLOVES, Optional.empty(), new AgeLimit.Years(5)));
    return rows;
  }

  private static AgeLimitRow age(ElementKind element, Optional<LayerKind> layer, AgeLimit limit) {
    return new AgeLimitRow(
        FrozenProvenance.of("age", element, layer.map(Enum::name).orElse("OWN")),
        element,
        Use.STRUCTURAL,
        layer,
        limit);
  }

  static List<CautionRow> cautions() {
    return List.of(
        new CautionRow(
            FrozenProvenance.of("caution", "ALWAYS"),
            Set.of(),
            Set.of(),
            Set.of(),
            "These rules are invented."),
        new CautionRow(
            FrozenProvenance.of("caution", "HELMET"),
            EnumSet.of(ElementKind.HELMET),
            EnumSet.of(Use.STRUCTURAL),
            Set.of(),
            "Helmets show little of what struck them."),
        new CautionRow(
            FrozenProvenance.of("caution", "RETIRE"),
            Set.of(),
            Set.of(),
            EnumSet.of(EffectKind.RETIRE),
            "Retired gear is destroyed or marked."));
  }
}
