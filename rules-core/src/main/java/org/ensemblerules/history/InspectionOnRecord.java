package org.ensemblerules.history;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.source.InvalidValueException;

/**
 * An inspection that answers rest on, or that is newer than that and does not count.
 *
 * @param kind its kind; not null
 * @param on when it was made; not null
 * @param by who made it; empty if nobody is named
 * @param grade how much the record has of it; not null
 * @param counts whether it counts; what is only dated never does
 */
public record InspectionOnRecord(
    InspectionKind kind, MarkedDate on, Optional<String> by, EvidenceGrade grade, boolean counts) {
  /**
   * Checks the values.
   *
   * @throws InvalidValueException if it counts though it is only dated
   */
  public InspectionOnRecord {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(on, "on");
    Objects.requireNonNull(by, "by");
    InvalidValueException.require(
        !counts || grade != EvidenceGrade.DATE_ONLY,
        "InspectionOnRecord.counts",
        counts,
        "false for " + EvidenceGrade.DATE_ONLY);
  }

  static InspectionOnRecord of(Judgment judged) {
    Inspection made = ((Event.Inspected) judged.event()).inspection();
    return new InspectionOnRecord(
        made.kind(),
        made.on(),
        made.by().map(Doer::name),
        judged.standing().orElseThrow().grade(),
        judged.counts());
  }

  /**
   * Returns it on one line.
   *
   * @return the text, as in {@code ADVANCED inspection of 2024-01-10 by Gear room: SIGNED_OFF};
   *     never null
   */
  public String text() {
    return kind
        + " inspection of "
        + on
        + by.map(name -> " by " + name).orElse("")
        + ": "
        + grade
        + (counts ? "" : ", does not count");
  }
}
