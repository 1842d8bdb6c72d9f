package org.ensemblerules.example.department.demo;

import java.util.Set;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.inspection.Equipment;

/**
 * What was not as it should be when a form was filled in.
 *
 * @param clean whether the piece was clean
 * @param missing what was not at hand
 * @param skipped parts that nobody looked at
 */
record Remarks(YesNoUnknown clean, Set<Equipment> missing, Set<Part> skipped) {
  /** All as it should be. */
  static final Remarks NONE = new Remarks(YesNoUnknown.YES, Set.of(), Set.of());
}
