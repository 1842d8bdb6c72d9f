package org.ensemblerules.inspection;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * Says how much a record must have of inspections of a kind for them to count: a policy beside an
 * edition. What is only dated counts for nothing whatever is asked.
 *
 * @param provenance where the row comes from; its origin names the policy; not null
 * @param inspection the kind of inspection; not null
 * @param least the least grade of evidence that counts, {@code SIGNED_OFF} or {@code ITEMIZED}; not
 *     null
 * @param from from which day on; what was certainly inspected before counts as it did; empty if
 *     ever
 * @since 0.1
 */
public record GradeRow(
    Provenance provenance, InspectionKind inspection, EvidenceGrade least, Optional<LocalDate> from)
    implements ComparableRow<GradeRow> {
  /**
   * Checks the grade.
   *
   * @throws InvalidValueException if the grade is that of a date alone
   */
  public GradeRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(inspection, "inspection");
    Objects.requireNonNull(from, "from");
    InvalidValueException.require(
        least != EvidenceGrade.DATE_ONLY,
        "GradeRow.least",
        least,
        EvidenceGrade.SIGNED_OFF + " or " + EvidenceGrade.ITEMIZED);
  }

  /**
   * Says what it asks for.
   *
   * @return the text; never null
   */
  public String text() {
    return "signed off, and " + provenance.origin() + " asks for " + least;
  }

  /** Whether it asks for more than a record has of an inspection. */
  boolean asksMore(Inspection made, EvidenceGrade grade) {
    return made.kind() == inspection
        && grade.compareTo(least) < 0
        && !from.filter(day -> made.on().certainlyBy(day.minusDays(1))).isPresent();
  }

  @Override
  public List<String> canonical() {
    return List.of(inspection.name(), least.name(), from.map(LocalDate::toString).orElse(""));
  }

  @Override
  public List<String> topic() {
    return List.of(inspection.name());
  }

  @Override
  public ComparedFields compareFields(GradeRow other) {
    return ComparedFields.on(inspection == other.inspection)
        .with("least", Comparison.moreIsStricter(least, other.least))
        .with(
            "from",
            Comparison.lessIsStricter(
                from.orElse(LocalDate.MIN), other.from.orElse(LocalDate.MIN)));
  }

  @Override
  public Comparison asOneMore() {
    return Comparison.STRICTER;
  }
}
