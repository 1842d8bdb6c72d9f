package org.ensemblerules.example.department.demo;

import java.util.List;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.LayerKind;

/** What happened to the structural coats. */
final class CoatStories {
  private CoatStories() {}

  static List<Story> all() {
    return List.of(
        Story.ordinary(),
        new Story(
            "A corner of the liner's label curls; the label is still firmly sewn on",
            coat ->
                coat.found("F1", "LABEL@LINER_SYSTEM", "lower corner", DefectKind.EDGES_LIFTING)),
        new Story(
            "Back from a house fire two days ago, full of soot, not washed yet",
            coat -> {
              coat.lookedOverAfterUse("2026-11-23");
              coat.found("F1", "WHOLE_ELEMENT", "all over", DefectKind.COMBUSTION_PRODUCTS);
            }),
        new Story(
            "Somebody else's blood on the right sleeve after a road accident",
            coat -> {
              coat.lookedOverAfterUse("2026-11-24");
              coat.found("F1", "FABRIC@OUTER_SHELL", "right sleeve", DefectKind.BODY_FLUIDS);
            }),
        new Story(
            "A small tear in the left elbow of the shell",
            coat ->
                coat.found(
                    "F1", "FABRIC@OUTER_SHELL", "left elbow", DefectKind.TEAR, Grade.SLIGHT)),
        new Story(
            "Trim hangs loose at the left cuff; still bright",
            coat -> coat.found("F1", "TRIM@OUTER_SHELL", "left cuff", DefectKind.LOOSE)),
        new Story(
            "Zipper was broken last year, replaced by a verified provider and tried out",
            coat ->
                coat.foundBefore("2025-10-02", "F1", "ZIPPER@OUTER_SHELL", "", DefectKind.DAMAGED)
                    .replaced("2025-10-20", RepairClass.ADVANCED, Trades.PROVIDER)
                    .passed("2025-10-27", Check.CLOSURE_OPERATION, Trades.GEAR_ROOM)),
        new Story(
            "Charred patch on the right shoulder; both thumbs pushed, the cloth held",
            coat ->
                coat.found(
                    "F1", "FABRIC@OUTER_SHELL", "right shoulder", DefectKind.CHARRING, Grade.HELD)),
        new Story(
            "Shoulders bleached by sunlight in a window; the thumbs went through",
            coat ->
                coat.found(
                    "F1",
                    "FABRIC@OUTER_SHELL",
                    "both shoulders",
                    DefectKind.DISCOLORATION,
                    Grade.GAVE_WAY)),
        new Story(
            "Liner of another size in the shell, swapped after washing",
            coat -> coat.label(LayerKind.LINER_SYSTEM, label -> label.size("XL"))),
        new Story(
            "The liner is more than ten years old in a younger shell",
            coat -> coat.made(LayerKind.LINER_SYSTEM, "2016-03")),
        new Story(
            "Worn by a member hurt when a ceiling came down; held for the investigators",
            coat -> {
              coat.lookedOverAfterUse("2026-11-21");
              coat.found(
                  "F1", "WHOLE_ELEMENT", "wearer hurt at the neck", DefectKind.INJURY_TO_WEARER);
              coat.found(
                  "F2", "FABRIC@OUTER_SHELL", "left shoulder", DefectKind.RIP, Grade.MODERATE);
            }),
        new Story(
            "Washed by mistake with chlorine bleach at a public laundry",
            coat -> coat.found("F1", "WHOLE_ELEMENT", "", DefectKind.BLEACHED)),
        new Story(
            "Liquid came through the moisture barrier at the leak check",
            coat -> coat.found("F1", "FABRIC@MOISTURE_BARRIER", "back", DefectKind.LEAK)),
        new Story(
            "Made more than ten years ago, spotless, hardly worn", coat -> coat.made("2016-06")),
        new Story(
            "In service since 2021, and nobody has ever opened the liner",
            coat -> {
              coat.made("2021-02");
              coat.linerNeverOpened();
            }),
        new Story(
            "Soot of last winter, washed, found clean and inspected",
            coat ->
                coat.foundBefore(
                        "2026-02-03", "F1", "WHOLE_ELEMENT", "", DefectKind.COMBUSTION_PRODUCTS)
                    .cleaned("2026-02-05", CleaningKind.ADVANCED, Trades.GEAR_ROOM)
                    .passed("2026-02-07", Check.CLEANLINESS, Trades.GEAR_ROOM)));
  }
}
