package org.ensemblerules.testkit;

import static org.ensemblerules.testkit.FrozenBands.any;
import static org.ensemblerules.testkit.FrozenBands.area;
import static org.ensemblerules.testkit.FrozenBands.grades;
import static org.ensemblerules.testkit.FrozenBands.length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;

/** What the frozen rules say of defects: every kind of band and of effect occurs. */
final class FrozenDefects {
  private static final Effect NOTE = new Effect.Note();
  private static final Effect MEND_PART = new Effect.Repair(RepairClass.BASIC, Scope.PART);
  private static final Effect MEND_PART_WELL = new Effect.Repair(RepairClass.ADVANCED, Scope.PART);
  private static final Effect ASK_AN_EXPERT =
      new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.PART);
  private static final Effect RETIRE_LAYER = new Effect.Retire(Scope.LAYER);
  private static final Effect RETIRE_ELEMENT = new Effect.Retire(Scope.ELEMENT);

  private final List<DefectRow> rows = new ArrayList<>();
  private ElementKind element = ElementKind.COAT;

  private FrozenDefects() {}

  static List<DefectRow> rows() {
    FrozenDefects table = new FrozenDefects();
    table.shell();
    table.liner();
    table.partsAndLabels();
    for (ElementKind kind : FrozenRules.KINDS) {
      table.element = kind;
      table.contaminationAndIncidents();
    }
    table.helmet();
    table.gloves();
    return table.rows;
  }

  private void shell() {
    String shell = "FABRIC@OUTER_SHELL";
    add(shell, DefectKind.SOILING, grades(Grade.SLIGHT), NOTE);
    add(
        shell,
        DefectKind.SOILING,
        grades(Grade.MODERATE, Grade.SEVERE),
        new Effect.Clean(CleaningKind.ADVANCED, Scope.LAYER),
        Check.CLEANLINESS);
    add(shell, DefectKind.TEAR, length(null, "1 in"), MEND_PART);
    add(shell, DefectKind.TEAR, length("25.4 mm", "10 cm"), MEND_PART_WELL);
    open(shell, DefectKind.TEAR, length("100 mm", null), ASK_AN_EXPERT);
    add(shell, DefectKind.BURN_HOLE, area(null, "1 cm2"), MEND_PART);
    add(shell, DefectKind.BURN_HOLE, area("100 mm2", "10 in2"), MEND_PART_WELL);
    add(shell, DefectKind.BURN_HOLE, area("10 in2", null), RETIRE_LAYER);
    add(shell, DefectKind.CHARRING, any(), RETIRE_LAYER);
    add(
        shell,
        DefectKind.DISCOLORATION,
        grades(Grade.NOT_TRIED),
        new Effect.Evaluate(Check.STRENGTH_BY_THUMBS, Scope.LAYER));
    open(shell, DefectKind.DISCOLORATION, grades(Grade.HELD), ASK_AN_EXPERT);
    add(
        shell,
        DefectKind.DISCOLORATION,
        grades(Grade.GAVE_WAY),
        new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.LAYER));
    String seam = "SEAM_MAJOR_A@OUTER_SHELL";
    add(seam, DefectKind.BROKEN_STITCHING, length(null, "1 in"), MEND_PART);
    add(
        seam,
        DefectKind.BROKEN_STITCHING,
        length("1 in", null),
        new Effect.Repair(RepairClass.ADVANCED, Scope.LAYER),
        Check.SEAM_PULL);
    add(seam, DefectKind.SEVERAL_STITCH_GAPS, new Band.Counts(0, 1), NOTE);
    add(
        seam,
        DefectKind.SEVERAL_STITCH_GAPS,
        new Band.Counts(1, 4),
        new Effect.Evaluate(Check.SEAM_PULL, Scope.PART));
    add(
        seam,
        DefectKind.SEVERAL_STITCH_GAPS,
        new Band.Counts(4, Integer.MAX_VALUE),
        MEND_PART_WELL,
        Check.SEAM_PULL,
        Check.ADVANCED_INSPECTION);
  }

  private void liner() {
    add(
        "FABRIC@MOISTURE_BARRIER",
        DefectKind.LEAK,
        any(),
        new Effect.Evaluate(Check.LINER_LEAKAGE, Scope.LAYER));
    add(
        "FABRIC@MOISTURE_BARRIER",
        DefectKind.TEAR,
        any(),
        new Effect.Repair(RepairClass.ADVANCED, Scope.LAYER),
        Check.BARRIER_UNDER_PRESSURE);
    add("FABRIC@MOISTURE_BARRIER", DefectKind.CHARRING, any(), RETIRE_LAYER);
    add("FABRIC@THERMAL_LINER", DefectKind.CHARRING, any(), RETIRE_LAYER);
    add("FABRIC@THERMAL_LINER", DefectKind.TEAR, length(null, null), MEND_PART);
    add(
        "SEAM_TAPE@MOISTURE_BARRIER",
        DefectKind.LIFTING_TAPE,
        any(),
        new Effect.Evaluate(Check.LINER_INSPECTION, Scope.LAYER));
    add("FABRIC@WINTER_LINER", DefectKind.CHARRING, any(), RETIRE_LAYER);
    add("FABRIC@WINTER_LINER", DefectKind.SOILING, any(), NOTE);
  }

  private void partsAndLabels() {
    String trim = "TRIM@OUTER_SHELL";
    add(trim, DefectKind.LOST_RETROREFLECTIVITY, grades(Grade.SLIGHT), NOTE);
    add(
        trim,
        DefectKind.LOST_RETROREFLECTIVITY,
        grades(Grade.MODERATE),
        new Effect.Evaluate(Check.TRIM_BY_FLASHLIGHT, Scope.PART));
    add(
        trim,
        DefectKind.LOST_RETROREFLECTIVITY,
        grades(Grade.SEVERE),
        new Effect.ReplacePart(RepairClass.BASIC));
    add(
        "CLOSURE@OUTER_SHELL",
        DefectKind.CLOSURE_FAILURE,
        any(),
        new Effect.ReplacePart(RepairClass.ADVANCED),
        Check.CLOSURE_OPERATION);
    add(
        "DRAG_RESCUE_DEVICE",
        DefectKind.MISSING,
        any(),
        new Effect.ReplacePart(RepairClass.BASIC),
        Check.DRAG_RESCUE_ROUTING);
    add(
        "DRAG_RESCUE_DEVICE",
        DefectKind.DRAG_RESCUE_DEVICE_LOADED,
        any(),
        new Effect.Retire(Scope.PART));
    for (String label : List.of("LABEL@OUTER_SHELL", "LABEL@LINER_SYSTEM")) {
      labels(label);
    }
    add("WHOLE_ELEMENT", DefectKind.MISMATCH_OF_ASSEMBLY, any(), ASK_AN_EXPERT);
  }

  private void labels(String label) {
    open(label, DefectKind.ILLEGIBLE, grades(Grade.PARTLY), ASK_AN_EXPERT);
    Effect identify = new Effect.Evaluate(Check.IDENTIFICATION, Scope.LAYER);
    add(label, DefectKind.ILLEGIBLE, grades(Grade.NOT_AT_ALL), identify);
    add(label, DefectKind.MISSING, any(), identify);
    add(label, DefectKind.CERTIFICATION_MARK_MISSING, any(), RETIRE_ELEMENT);
  }

  private void contaminationAndIncidents() {
    String whole = "WHOLE_ELEMENT";
    add(
        whole,
        DefectKind.COMBUSTION_PRODUCTS,
        any(),
        new Effect.Clean(CleaningKind.EXPOSURE_REDUCTION, Scope.ELEMENT));
    handled(
        whole,
        DefectKind.BODY_FLUIDS,
        any(),
        new Effect.Clean(CleaningKind.SANITIZING, Scope.ELEMENT),
        EnumSet.of(HandlingDuty.BIOHAZARD, HandlingDuty.KEEP_OUT_OF_LIVING_AREAS));
    handled(
        whole,
        DefectKind.HAZARDOUS_CHEMICALS,
        any(),
        new Effect.Clean(CleaningKind.SPECIALIZED, Scope.ELEMENT),
        EnumSet.of(HandlingDuty.ISOLATE, HandlingDuty.DO_NOT_WASH),
        Check.CONTAMINATION_CLEARANCE);
    handled(
        whole,
        DefectKind.CBRN_AGENT,
        any(),
        RETIRE_ELEMENT,
        EnumSet.of(HandlingDuty.ISOLATE, HandlingDuty.MARK_FOR_TRAINING));
    handled(
        whole,
        DefectKind.INJURY_TO_WEARER,
        any(),
        new Effect.Evaluate(Check.INCIDENT_RELEASE, Scope.ELEMENT),
        EnumSet.of(HandlingDuty.PRESERVE_AS_FOUND),
        Check.ADVANCED_INSPECTION);
  }

  private void helmet() {
    element = ElementKind.HELMET;
    add(
        "HELMET_SHELL",
        DefectKind.HELMET_STRUCK,
        grades(Grade.NO_MARK),
        new Effect.Evaluate(Check.SUSPENSION_AND_RETENTION, Scope.ELEMENT));
    add("HELMET_SHELL", DefectKind.HELMET_STRUCK, grades(Grade.MARK), RETIRE_ELEMENT);
    add("SUSPENSION", DefectKind.DAMAGED, any(), new Effect.ReplacePart(RepairClass.BASIC));
    add("FACESHIELD", DefectKind.SCRATCHES_LIMITING_SIGHT, area(null, "1 in2"), NOTE);
    add(
        "FACESHIELD",
        DefectKind.SCRATCHES_LIMITING_SIGHT,
        area("645.16 mm2", null),
        new Effect.Retire(Scope.PART));
  }

  private void gloves() {
    element = ElementKind.GLOVES;
    add(
        "GLOVE_BARRIER",
        DefectKind.LEAK,
        any(),
        new Effect.Evaluate(Check.WATER_ENTRY, Scope.ELEMENT));
    add("GLOVE_SHELL", DefectKind.CUT, length(null, "0.5 cm"), NOTE);
    add("GLOVE_SHELL", DefectKind.CUT, length("5 mm", null), MEND_PART);
    add("WHOLE_ELEMENT", DefectKind.INCOMPLETE_PAIR, any(), RETIRE_ELEMENT);
    add(
        "WHOLE_ELEMENT",
        DefectKind.EXTREME_HEAT_EXPOSURE,
        any(),
        new Effect.Evaluate(Check.ADVANCED_INSPECTION, Scope.ELEMENT));
  }

  private void add(String site, DefectKind defect, Band band, Effect effect, Check... afterward) {
    row(site, defect, band, effect, Set.of(), false, afterward);
  }

  private void open(String site, DefectKind defect, Band band, Effect effect) {
    row(site, defect, band, effect, Set.of(), true);
  }

  private void handled(
      String site,
      DefectKind defect,
      Band band,
      Effect effect,
      Set<HandlingDuty> handling,
      Check... afterward) {
    row(site, defect, band, effect, handling, false, afterward);
  }

  private void row(
      String site,
      DefectKind defect,
      Band band,
      Effect effect,
      Set<HandlingDuty> handling,
      boolean open,
      Check... afterward) {
    rows.add(
        new DefectRow(
            FrozenProvenance.of(
                "defect", element, site, defect, band.toString().isEmpty() ? "all" : band),
            element,
            Use.STRUCTURAL,
            Site.parse(site),
            defect,
            band,
            effect,
            handling,
            Set.copyOf(Arrays.asList(afterward)),
            open,
            defect + " calls for " + effect.text() + "."));
  }
}
