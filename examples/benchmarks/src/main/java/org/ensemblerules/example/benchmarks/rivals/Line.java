package org.ensemblerules.example.benchmarks.rivals;

import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.ExtentKind;

/**
 * One line of the table that the rivals are given.
 *
 * @param place the place as text; not null
 * @param placeNumber its number
 * @param defect what is wrong; not null
 * @param by by what its size is told; not null
 * @param over the size it lies above
 * @param upTo the size it reaches, included
 * @param row the key of the row that says what is called for; not null
 */
public record Line(
    String place,
    int placeNumber,
    DefectKind defect,
    ExtentKind by,
    long over,
    long upTo,
    String row) {
  /** Tells whether the line answers. */
  boolean holds(Asked asked) {
    long size = asked.told().whole();
    return placeNumber == asked.placeNumber()
        && defect == asked.defect()
        && by == asked.told().by()
        && size > over
        && size <= upTo;
  }
}
