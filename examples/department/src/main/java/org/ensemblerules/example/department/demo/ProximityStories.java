package org.ensemblerules.example.department.demo;

import java.util.List;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;

/** What happened to the proximity gear of the airfield crew. */
final class ProximityStories {
  private ProximityStories() {}

  static List<Story> of(ElementKind kind) {
    return switch (kind) {
      case COAT -> coats();
      case TROUSERS -> trousers();
      case SHROUD -> shrouds();
      case HELMET_COVER -> covers();
      case GLOVES -> gloves();
      case HELMET -> helmets();
      case HOOD, FOOTWEAR, DRAG_RESCUE_DEVICE, COVERALL -> List.of(Story.ordinary());
    };
  }

  private static List<Story> coats() {
    return List.of(
        Story.ordinary(),
        new Story(
            "The reflective shell is more than five years old, its liner younger",
            coat -> coat.made(LayerKind.OUTER_SHELL, "2021-09")),
        new Story(
            "Reflective film cracked over the back",
            coat ->
                coat.found(
                    "F1",
                    "REFLECTIVE_SURFACE@OUTER_SHELL",
                    "back",
                    DefectKind.CRACKING,
                    Grade.SEVERE)),
        new Story(
            "The sheet of a structural coat was used: dim trim on a coat that has none",
            coat ->
                coat.found("F1", "TRIM@OUTER_SHELL", "sleeves", DefectKind.LOST_RETROREFLECTIVITY)),
        new Story(
            "Jet fuel on the sleeves",
            coat -> {
              coat.lookedOverAfterUse("2026-11-24");
              coat.found("F1", "FABRIC@OUTER_SHELL", "sleeves", DefectKind.FUEL_OR_OIL);
            }));
  }

  private static List<Story> trousers() {
    return List.of(
        Story.ordinary(),
        new Story(
            "A small cut through the reflective surface",
            trousers ->
                trousers.found(
                    "F1",
                    "REFLECTIVE_SURFACE@OUTER_SHELL",
                    "right knee",
                    DefectKind.CUT,
                    Grade.SLIGHT)),
        new Story(
            "Came back from stores; the sheet of this year's inspection is lost",
            trousers -> trousers.lastInspection().notOnRecord()));
  }

  private static List<Story> shrouds() {
    return List.of(
        Story.ordinary(),
        new Story(
            "Two snaps do not hold",
            shroud -> shroud.found("F1", "SNAPS", "back", DefectKind.CLOSURE_FAILURE)),
        new Story(
            "Fifteen stitches missing along the hem",
            shroud -> shroud.found("F1", "SEAM", "hem", DefectKind.MISSING_STITCHING)),
        new Story("More than five years old", shroud -> shroud.made("2021-10")),
        new Story(
            "Soot from a burning aircraft trainer",
            shroud -> {
              shroud.lookedOverAfterUse("2026-11-24");
              shroud.found("F1", "WHOLE_ELEMENT", "", DefectKind.COMBUSTION_PRODUCTS);
            }));
  }

  private static List<Story> covers() {
    return List.of(
        Story.ordinary(),
        new Story(
            "Reflective film peels at the front",
            cover ->
                cover.found(
                    "F1", "REFLECTIVE_SURFACE", "front", DefectKind.DELAMINATION, Grade.MODERATE)),
        new Story(
            "Torn on a hook, past mending",
            cover -> cover.found("F1", "WHOLE_ELEMENT", "", DefectKind.BEYOND_REPAIR)));
  }

  private static List<Story> gloves() {
    return List.of(
        Story.ordinary(),
        new Story(
            "Reflective backs scratched a little",
            gloves ->
                gloves.found(
                    "F1", "REFLECTIVE_SURFACE", "backs", DefectKind.ABRASION, Grade.SLIGHT)));
  }

  private static List<Story> helmets() {
    return List.of(
        Story.ordinary(),
        new Story(
            "The reflective visor is scratched so that sight is limited",
            helmet ->
                helmet.found(
                    "F1", "REFLECTIVE_SURFACE", "visor", DefectKind.SCRATCHES_LIMITING_SIGHT)));
  }
}
