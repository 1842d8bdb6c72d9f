package org.ensemblerules.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * Says what the law of a place asks of sales on the days from one date to another.
 *
 * @param provenance where the row comes from; not null
 * @param place the place; not null
 * @param from the first day; empty if it was not seen, and then it is asked of every sale
 * @param before the first day on which it is no longer asked; empty if no end was seen
 * @param demand what is asked; not null
 * @since 0.1
 */
public record PfasLawRow(
    Provenance provenance,
    PlaceCode place,
    Optional<LocalDate> from,
    Optional<LocalDate> before,
    PfasDemand demand)
    implements ComparableRow<PfasLawRow> {
  /**
   * Checks the dates.
   *
   * @throws InvalidValueException if the end is not after the beginning
   */
  public PfasLawRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(demand, "demand");
    InvalidValueException.require(
        from.isEmpty() || before.isEmpty() || from.get().isBefore(before.get()),
        "PfasLawRow.before",
        before.orElse(null),
        "a day after the first");
  }

  /**
   * Tells whether the row may be in force on a date.
   *
   * @param date the date; not null
   * @return false only if no reading of the date falls within the row's days
   */
  public boolean mayApply(MarkedDate date) {
    boolean begun =
        from.isEmpty() || date.latest().map(day -> !day.isBefore(from.get())).orElse(true);
    boolean over =
        before.isPresent() && date.earliest().map(day -> !day.isBefore(before.get())).orElse(false);
    return begun && !over;
  }

  @Override
  public List<String> canonical() {
    return List.of(
        place.value(),
        from.map(LocalDate::toString).orElse(""),
        before.map(LocalDate::toString).orElse(""),
        demand.toString());
  }

  @Override
  public List<String> topic() {
    return List.of(place.value(), demand.kind());
  }

  @Override
  public ComparedFields compareFields(PfasLawRow other) {
    return ComparedFields.on(topic().equals(other.topic()))
        .with(
            "from",
            Comparison.lessIsStricter(from.orElse(LocalDate.MIN), other.from.orElse(LocalDate.MIN)))
        .with(
            "before",
            Comparison.moreIsStricter(
                before.orElse(LocalDate.MAX), other.before.orElse(LocalDate.MAX)))
        .with("demand", demand.compareStrictness(other.demand));
  }

  @Override
  public Comparison asOneMore() {
    return Comparison.STRICTER;
  }
}
