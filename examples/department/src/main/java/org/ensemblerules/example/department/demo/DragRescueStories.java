package org.ensemblerules.example.department.demo;

import java.util.List;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.Legibility;

/** What happened to the drag rescue devices of structural coats. */
final class DragRescueStories {
  private DragRescueStories() {}

  static List<Story> all() {
    return List.of(
        Story.ordinary(),
        new Story(
            "A member was dragged out by it",
            device ->
                device.found("F1", "WHOLE_ELEMENT", "", DefectKind.DRAG_RESCUE_DEVICE_LOADED)),
        new Story(
            "Laid wrongly after the wash, found in April, laid again and checked",
            device ->
                device
                    .foundBefore("2026-04-28", "F1", "WHOLE_ELEMENT", "", DefectKind.MISROUTED)
                    .passed("2026-04-29", Check.DRAG_RESCUE_ROUTING, Trades.GEAR_ROOM)),
        new Story(
            "Laid wrongly after the wash",
            device -> device.found("F1", "WHOLE_ELEMENT", "", DefectKind.MISROUTED)),
        new Story(
            "A cut across the strap",
            device -> device.found("F1", "DRAG_RESCUE_STRAP", "near handle", DefectKind.CUT)),
        new Story(
            "The strap is fluffy along one edge",
            device ->
                device.found("F1", "DRAG_RESCUE_STRAP", "edge", DefectKind.ABRASION, Grade.SLIGHT)),
        new Story(
            "The label cannot be read any more",
            device -> device.label(label -> label.legibility(Legibility.UNREADABLE))),
        new Story(
            "Taken from the coat of another model",
            device -> device.found("F1", "WHOLE_ELEMENT", "", DefectKind.MISMATCH_OF_ASSEMBLY)),
        new Story(
            "Dusty from a collapsed wall",
            device -> {
              device.lookedOverAfterUse("2026-11-22");
              device.found("F1", "WHOLE_ELEMENT", "", DefectKind.SOILING);
            }));
  }
}
