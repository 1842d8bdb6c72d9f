package org.ensemblerules.testkit;

import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Presence;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;

/** The parts of the frozen rule set's coat, gloves and helmet. */
final class FrozenAnatomy {
  private FrozenAnatomy() {}

  static List<AnatomyRow> rows() {
    List<AnatomyRow> rows = new ArrayList<>();
    add(
        rows,
        ElementKind.COAT,
        Presence.REQUIRED,
        "WHOLE_ELEMENT FABRIC@OUTER_SHELL FABRIC@MOISTURE_BARRIER FABRIC@THERMAL_LINER"
            + " SEAM_MAJOR_A@OUTER_SHELL SEAM_MAJOR_B@MOISTURE_BARRIER SEAM_MAJOR_B@THERMAL_LINER"
            + " SEAM_TAPE@MOISTURE_BARRIER TRIM@OUTER_SHELL CLOSURE@OUTER_SHELL"
            + " DRAG_RESCUE_DEVICE LABEL@OUTER_SHELL LABEL@LINER_SYSTEM");
    add(
        rows,
        ElementKind.COAT,
        Presence.OPTIONAL,
        "FABRIC@WINTER_LINER ZIPPER@WINTER_LINER LABEL@MOISTURE_BARRIER LABEL@THERMAL_LINER"
            + " LABEL@WINTER_LINER POCKET@OUTER_SHELL");
    add(
        rows,
        ElementKind.HELMET,
        Presence.REQUIRED,
        "WHOLE_ELEMENT HELMET_SHELL SUSPENSION RETENTION_SYSTEM LABEL");
    add(rows, ElementKind.HELMET, Presence.OPTIONAL, "FACESHIELD GOGGLES");
    add(
        rows,
        ElementKind.GLOVES,
        Presence.REQUIRED,
        "WHOLE_ELEMENT GLOVE_SHELL GLOVE_BARRIER SEAM LABEL");
    return rows;
  }

  private static void add(
      List<AnatomyRow> rows, ElementKind element, Presence presence, String sites) {
    for (String text : sites.split(" ", -1)) {
      Site site = Site.parse(text);
      rows.add(
          new AnatomyRow(
              FrozenProvenance.of("anatomy", element, site),
              element,
              Use.STRUCTURAL,
              site,
              presence));
    }
  }
}
