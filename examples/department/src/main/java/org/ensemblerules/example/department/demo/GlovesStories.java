package org.ensemblerules.example.department.demo;

import java.util.List;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Transfer;

/** What happened to the structural gloves. */
final class GlovesStories {
  private GlovesStories() {}

  static List<Story> all() {
    return List.of(
        Story.ordinary(),
        new Story(
            "Palms a little rubbed",
            gloves ->
                gloves.found("F1", "GLOVE_SHELL", "palms", DefectKind.ABRASION, Grade.SLIGHT)),
        new Story(
            "The liner of the right glove came out with the hand",
            gloves -> gloves.found("F1", "GLOVE_LINER", "right hand", DefectKind.INVERTED_LINER)),
        new Story(
            "Two left gloves in the pouch",
            gloves -> gloves.found("F1", "WHOLE_ELEMENT", "", DefectKind.INCOMPLETE_PAIR)),
        new Story(
            "A hole burned into the back of the left glove",
            gloves -> gloves.found("F1", "GLOVE_SHELL", "back of left hand", DefectKind.BURN_HOLE)),
        new Story(
            "A sticky residue from a workshop fire that nobody can name",
            gloves -> gloves.found("F1", "WHOLE_ELEMENT", "", DefectKind.CONTAMINATION_UNKNOWN)),
        new Story(
            "The check for water entry failed, and was repeated until it passed",
            gloves ->
                gloves
                    .foundBefore(
                        "2026-09-01", "F1", "GLOVE_BARRIER", "", DefectKind.LOST_WATER_RESISTANCE)
                    .failed("2026-09-03", Check.WATER_ENTRY, Trades.GEAR_ROOM)
                    .passed("2026-09-10", Check.WATER_ENTRY, Trades.GEAR_ROOM)),
        new Story(
            "Stiff after drying on a radiator",
            gloves -> gloves.found("F1", "GLOVE_SHELL", "", DefectKind.LOST_FLEXIBILITY)),
        new Story(
            "Bought from a web shop: no certification mark anywhere",
            gloves -> gloves.label(label -> label.certificationMark(YesNoUnknown.NO))),
        new Story(
            "A seam sewn up by the wearer with household thread",
            gloves -> gloves.found("F1", "SEAM", "right thumb", DefectKind.RESTITCHED)),
        new Story(
            "Palm worn smooth, written down as worn tread",
            gloves -> gloves.found("F1", "GLOVE_SHELL", "palms", DefectKind.TREAD_WEAR)),
        new Story(
            "Muddy after a flood",
            gloves -> {
              gloves.lookedOverAfterUse("2026-11-22");
              gloves.found("F1", "WHOLE_ELEMENT", "", DefectKind.SOILING);
            }),
        new Story(
            "A solvent that eats into leather; cleaned for good by nobody yet",
            gloves -> {
              gloves.lookedOverAfterUse("2026-11-23");
              gloves.found("F1", "GLOVE_SHELL", "both", DefectKind.HAZARDOUS_CHEMICALS);
            }),
        new Story(
            "Sent away in the fall, and back on the hook without a word in the book",
            gloves -> gloves.takenOut("2026-11-20", "sent away for repair")),
        new Story(
            "Lent to the neighbors for a long fire, and still with them",
            gloves -> gloves.moved("2026-11-21", Transfer.LENT, "the next town")),
        new Story(
            "Lent to the neighbors, and back on the hook before anybody looked at them",
            gloves -> {
              gloves.moved("2026-11-14", Transfer.LENT, "the next town");
              gloves.moved("2026-11-22", Transfer.BACK_FROM_LOAN, "the gear room");
            }),
        new Story(
            "Reflective thumbs glued on at the station, nobody knows when",
            gloves -> gloves.altered("UNKNOWN", "reflective patches glued to both thumbs")));
  }
}
