package org.ensemblerules.example.department.demo;

import java.util.List;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Grade;

/** What happened to the coveralls on the reserve rack. */
final class CoverallStories {
  private CoverallStories() {}

  static List<Story> structural() {
    return List.of(
        Story.ordinary(),
        new Story(
            "Asbestos boards came down on the wearer",
            coverall -> coverall.found("F1", "WHOLE_ELEMENT", "", DefectKind.ASBESTOS)),
        new Story(
            "A terrorism agent, confirmed by the laboratory",
            coverall -> coverall.found("F1", "WHOLE_ELEMENT", "", DefectKind.CBRN_AGENT)),
        new Story(
            "Caught in a flashover",
            coverall ->
                coverall.found("F1", "WHOLE_ELEMENT", "", DefectKind.EXTREME_HEAT_EXPOSURE)),
        new Story(
            "Hook-and-loop of the front flap worn and full of lint",
            coverall ->
                coverall.found("F1", "HOOK_AND_LOOP@OUTER_SHELL", "front", DefectKind.ABRASION)),
        new Story(
            "The shell is brittle all over",
            coverall ->
                coverall.found(
                    "F1", "FABRIC@OUTER_SHELL", "", DefectKind.EMBRITTLEMENT, Grade.SEVERE)));
  }

  static List<Story> proximity() {
    return List.of(
        Story.ordinary(),
        new Story(
            "Reflective film rubbed at the knees, a little",
            coverall ->
                coverall.found(
                    "F1",
                    "REFLECTIVE_SURFACE@OUTER_SHELL",
                    "knees",
                    DefectKind.LOST_RADIANT_REFLECTIVITY,
                    Grade.SLIGHT)),
        new Story(
            "Foam and fuel after a drill on the apron",
            coverall -> {
              coverall.lookedOverAfterUse("2026-11-23");
              coverall.found("F1", "WHOLE_ELEMENT", "", DefectKind.FUEL_OR_OIL);
            }));
  }
}
