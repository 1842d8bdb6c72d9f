package org.ensemblerules.inspection;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * Says how long an element may stay in service without an inspection of a kind; {@link
 * IntervalTable#dueBy} adds the months to days.
 *
 * @param provenance where the row comes from; not null
 * @param inspection the kind of inspection; not null
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param firstMonths months from first placing in service to the first, 1 to 600
 * @param firstMonthsWithCbrnOption the same for an element of an ensemble with the CBRN option, or
 *     not known to be of none, 1 to 600, not above {@code firstMonths}
 * @param repeatMonths months from one to the next, 1 to 600
 * @since 0.1
 */
public record IntervalRow(
    Provenance provenance,
    InspectionKind inspection,
    ElementKind element,
    Use use,
    int firstMonths,
    int firstMonthsWithCbrnOption,
    int repeatMonths)
    implements ComparableRow<IntervalRow> {
  private static final int LONGEST = 600;

  /**
   * Checks the numbers.
   *
   * @throws InvalidValueException if a number is out of range
   */
  public IntervalRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(inspection, "inspection");
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(use, "use");
    requireMonths("IntervalRow.firstMonths", firstMonths, LONGEST);
    requireMonths("IntervalRow.firstMonthsWithCbrnOption", firstMonthsWithCbrnOption, firstMonths);
    requireMonths("IntervalRow.repeatMonths", repeatMonths, LONGEST);
  }

  private static void requireMonths(String field, int months, int longest) {
    InvalidValueException.require(
        months >= 1 && months <= longest, field, months, "1 to " + longest + " months");
  }

  @Override
  public List<String> canonical() {
    return List.of(
        inspection.name(),
        element.name(),
        use.name(),
        Integer.toString(firstMonths),
        Integer.toString(firstMonthsWithCbrnOption),
        Integer.toString(repeatMonths));
  }

  @Override
  public List<String> topic() {
    return List.of(inspection.name(), element.name(), use.name());
  }

  @Override
  public ComparedFields compareFields(IntervalRow other) {
    return ComparedFields.on(
            inspection == other.inspection && element == other.element && use == other.use)
        .with("repeatMonths", Comparison.lessIsStricter(repeatMonths, other.repeatMonths))
        .with("firstMonths", Comparison.lessIsStricter(firstMonths, other.firstMonths))
        .with(
            "firstMonthsWithCbrnOption",
            Comparison.lessIsStricter(firstMonthsWithCbrnOption, other.firstMonthsWithCbrnOption));
  }
}
