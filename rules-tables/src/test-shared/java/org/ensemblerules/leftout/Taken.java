package org.ensemblerules.leftout;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import org.ensemblerules.verdict.Assessment;

/**
 * One thing left out of a record, or told less exactly.
 *
 * @param way where it stood, and what was done to it
 * @param what the thing itself, as it was
 * @param ground whether it is a ground, or a part of one
 * @param record the record without it, as JSON
 * @param assessment the same, as the library takes it
 * @param asOf the day judged for
 */
record Taken(
    LeavingOut.Way way,
    JsonNode what,
    boolean ground,
    JsonNode record,
    Assessment assessment,
    LocalDate asOf) {
  @Override
  public String toString() {
    return way + ", which was " + what;
  }
}
