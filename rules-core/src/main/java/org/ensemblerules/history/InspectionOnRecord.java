package org.ensemblerules.history;

import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.inspection.Coverage;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.RowKey;

/**
 * An inspection that answers rest on, or that is newer than that and does not count.
 *
 * @param kind its kind; not null
 * @param on when it was made; not null
 * @param by who made it; empty if nobody is named
 * @param grade how much the record has of it; not null
 * @param counts whether it counts; what is only dated never does
 * @param left the criteria left to look at before it is complete, in the order of the inspection;
 *     empty of what counts; not null
 * @param toBring what must be at hand for these; not null
 * @since 0.1
 */
public record InspectionOnRecord(
    InspectionKind kind,
    MarkedDate on,
    Optional<String> by,
    EvidenceGrade grade,
    boolean counts,
    List<RowKey> left,
    Set<Equipment> toBring) {
  /**
   * Checks the values.
   *
   * @throws InvalidValueException if it counts though it is only dated or something is left
   */
  public InspectionOnRecord {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(on, "on");
    Objects.requireNonNull(by, "by");
    left = List.copyOf(left);
    toBring = Sets.immutableEnumSet(toBring);
    InvalidValueException.require(
        !counts || left.isEmpty(), "InspectionOnRecord.left", left, "nothing of what counts");
    InvalidValueException.require(
        !counts || grade != EvidenceGrade.DATE_ONLY,
        "InspectionOnRecord.counts",
        counts,
        "false for " + EvidenceGrade.DATE_ONLY);
  }

  static InspectionOnRecord of(Judgment judged) {
    Inspection made = ((LookEvent.Inspected) judged.event()).inspection();
    Coverage coverage = judged.standing().orElseThrow().coverage();
    boolean begun = made.hasResult() && !judged.counts();
    return new InspectionOnRecord(
        made.kind(),
        made.on(),
        made.by().map(Doer::name),
        judged.standing().orElseThrow().grade(),
        judged.counts(),
        begun ? coverage.left().stream().map(CriterionRow::key).toList() : List.of(),
        begun ? coverage.toBring() : Set.of());
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
        + (counts ? "" : ", does not count")
        + (left.isEmpty() ? "" : ", " + left.size() + " criteria left to look at");
  }
}
