package org.ensemblerules.example.department.demo;

import java.util.EnumSet;
import java.util.Set;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.inspection.Equipment;

/**
 * How the last of the yearly inspections was made while its story is told. Untold, the usual
 * inspector looked at every part of a clean piece with all that it takes, and wrote it down.
 */
final class LastInspection {
  private final Set<Equipment> missing = EnumSet.noneOf(Equipment.class);
  private final Set<Part> skipped = EnumSet.noneOf(Part.class);
  private Doer inspector;
  private YesNoUnknown clean = YesNoUnknown.YES;
  private boolean onRecord = true;

  LastInspection(Doer usual) {
    this.inspector = usual;
  }

  void madeBy(Doer doer) {
    inspector = doer;
  }

  void without(Equipment equipment) {
    missing.add(equipment);
  }

  void skipped(Part part) {
    skipped.add(part);
  }

  void clean(YesNoUnknown known) {
    clean = known;
  }

  void notOnRecord() {
    onRecord = false;
  }

  boolean isOnRecord() {
    return onRecord;
  }

  Doer inspector() {
    return inspector;
  }

  Remarks remarks() {
    return new Remarks(clean, missing, skipped);
  }
}
