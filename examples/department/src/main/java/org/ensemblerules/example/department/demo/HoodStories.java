package org.ensemblerules.example.department.demo;

import java.util.List;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.YesNoUnknown;

/** What happened to the structural hoods. */
final class HoodStories {
  private HoodStories() {}

  static List<Story> all() {
    return List.of(
        Story.ordinary(),
        new Story(
            "Gray with soot after a training burn",
            hood -> {
              hood.lookedOverAfterUse("2026-11-20");
              hood.found("F1", "WHOLE_ELEMENT", "", DefectKind.COMBUSTION_PRODUCTS);
            }),
        new Story(
            "Soot on record; only rinsed at the scene, never washed for it",
            hood -> {
              hood.met("2026-11-22", Exposure.PRODUCTS_OF_COMBUSTION);
              hood.lookedOverAfterUse("2026-11-22");
              hood.found("F1", "WHOLE_ELEMENT", "", DefectKind.COMBUSTION_PRODUCTS)
                  .cleaned("2026-11-22", CleaningKind.EXPOSURE_REDUCTION, Trades.GEAR_ROOM);
            }),
        new Story(
            "A small hole burned by an ember beside the face opening",
            hood -> hood.found("F1", "FABRIC", "left cheek", DefectKind.BURN_HOLE, Grade.SLIGHT)),
        new Story(
            "The face opening has lost part of its stretch",
            hood ->
                hood.found("F1", "FACE_OPENING", "", DefectKind.LOST_ELASTICITY, Grade.MODERATE)),
        new Story(
            "Light shines through a hole in the particulate-blocking layer",
            hood -> hood.found("F1", "PARTICULATE_BLOCKING_LAYER", "nape", DefectKind.PUNCTURE)),
        new Story(
            "The label was cut out because it scratched",
            hood ->
                hood.label(
                    label ->
                        label
                            .legibility(Legibility.MISSING)
                            .certificationMark(YesNoUnknown.UNKNOWN))),
        new Story("Made in early 2016; time is up", hood -> hood.made("2016-02")),
        new Story(
            "Issued after this year's inspections; nobody has looked at it yet",
            hood -> hood.placedInService("2026-11-16")),
        new Story(
            "Stitches broken for a finger's width at the bib",
            hood -> hood.found("F1", "SEAM", "bib", DefectKind.BROKEN_STITCHING)),
        new Story(
            "Blood last spring; sanitized, found clean, inspected",
            hood ->
                hood.foundBefore("2026-03-30", "F1", "FABRIC", "collar", DefectKind.BODY_FLUIDS)
                    .cleaned("2026-04-01", CleaningKind.SANITIZING, Trades.GEAR_ROOM)
                    .passed("2026-04-02", Check.CLEANLINESS, Trades.GEAR_ROOM)),
        new Story(
            "Shrunk in the dryer; does not reach under the collar any more",
            hood -> hood.found("F1", "FABRIC", "", DefectKind.SHRINKAGE)),
        new Story(
            "Passes every criterion; the inspector still wants an expert to see the cloth",
            hood ->
                hood.decided(
                    "2026-11-10",
                    "D1",
                    new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT),
                    "the cloth feels thinner than that of its twins")),
        new Story(
            "Over a year late for its inspection; the chief would let it serve",
            hood -> {
              hood.lastCaredFor(2024);
              hood.authorityDecided(
                  "2026-11-12",
                  "Chief Z. Placeholder",
                  "may serve until the next round",
                  "no other hood of this size is left");
            }));
  }
}
