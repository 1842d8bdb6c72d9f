package org.ensemblerules.example.department.demo;

import java.util.List;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.YesNoUnknown;

/** What happened to the structural helmets. */
final class HelmetStories {
  private HelmetStories() {}

  static List<Story> all() {
    return List.of(
        Story.ordinary(),
        new Story(
            "Struck by a falling tile; no mark to be seen",
            helmet ->
                helmet.found("F1", "HELMET_SHELL", "", DefectKind.HELMET_STRUCK, Grade.NO_MARK)),
        new Story(
            "Struck by a beam; a crack in the crown",
            helmet -> {
              helmet.found("F1", "HELMET_SHELL", "crown", DefectKind.HELMET_STRUCK, Grade.MARK);
              helmet.found("F2", "HELMET_SHELL", "crown", DefectKind.CRACKING);
            }),
        new Story(
            "Faceshield scratched so that lamps glare",
            helmet -> helmet.found("F1", "FACESHIELD", "", DefectKind.SCRATCHES_LIMITING_SIGHT)),
        new Story(
            "The buckle of the chin strap is gone",
            helmet -> helmet.found("F1", "RETENTION_SYSTEM", "chin strap", DefectKind.MISSING)),
        new Story(
            "Stitches of the ear covers broken",
            helmet -> helmet.found("F1", "EAR_COVERS", "left", DefectKind.BROKEN_STITCHING)),
        new Story(
            "The shell has bubbles on one side",
            helmet -> helmet.found("F1", "HELMET_SHELL", "left side", DefectKind.BUBBLING)),
        new Story(
            "Trim much dimmer than the new sample",
            helmet -> helmet.found("F1", "TRIM", "both sides", DefectKind.LOST_RETROREFLECTIVITY)),
        new Story(
            "Last advanced inspection two years ago; only looked over by its wearer since",
            helmet -> {
              helmet.lastCaredFor(2024);
              helmet.lookedOverAfterUse("2026-11-08");
            }),
        new Story(
            "The list leaves open whether its label can be read; the inspector read it",
            helmet ->
                helmet.label(
                    label ->
                        label
                            .legibility(Legibility.UNKNOWN)
                            .certificationMark(YesNoUnknown.UNKNOWN))),
        new Story(
            "Retired last spring, and still on the list",
            helmet -> {
              helmet.retired("2026-04-20", "shell crazed all over");
              helmet.disposed("2026-04-27", "cut to pieces");
            }),
        new Story(
            "Headband replaced by a verified provider, then worked by hand",
            helmet ->
                helmet
                    .foundBefore("2026-01-12", "F1", "HEADBAND", "", DefectKind.CRACKING)
                    .replaced("2026-01-20", RepairClass.ADVANCED, Trades.PROVIDER)
                    .passed("2026-01-26", Check.SUSPENSION_AND_RETENTION, Trades.GEAR_ROOM)),
        new Story(
            "Paint-on name and a lamp bracket that the maker does not know",
            helmet ->
                helmet.found(
                    "F1", "WHOLE_ELEMENT", "lamp bracket", DefectKind.UNAPPROVED_ALTERATION)),
        new Story(
            "Bought abroad; never certified to the edition in force when it was made",
            helmet -> helmet.found("F1", "WHOLE_ELEMENT", "", DefectKind.NEVER_CERTIFIED)),
        new Story(
            "Released after an inquiry, then inspected: the wearer of 2025 was hurt elsewhere",
            helmet ->
                helmet
                    .foundBefore(
                        "2025-07-14", "F1", "WHOLE_ELEMENT", "", DefectKind.INJURY_TO_WEARER)
                    .passed("2025-09-30", Check.INCIDENT_RELEASE, Trades.GEAR_ROOM)));
  }
}
