package org.ensemblerules.tables.message;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.GearRules;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.schedule.Exempt;
import org.ensemblerules.schedule.Missed;
import org.ensemblerules.schedule.Planned;
import org.ensemblerules.schedule.Schedule;
import org.ensemblerules.schedule.ServiceRecord;
import org.ensemblerules.source.InvalidValueException;

/**
 * What falls due for an element.
 *
 * @param element which element; not null
 * @param asOf the day asked about; not null
 * @param due what is due, the earliest first; not null
 * @param missed what was not done in time so far; not null
 * @param exempt what is not due for now, and why; not null
 * @param from the first day of the calendar; not null
 * @param to the last day of the calendar, not before the first; not null
 * @param calendar what comes from the first to the last day, if each is done on its last day; not
 *     null
 * @since 0.1
 */
public record DueAnswer(
    NamedElement element,
    LocalDate asOf,
    List<Due> due,
    List<Missed> missed,
    List<Exempt> exempt,
    LocalDate from,
    LocalDate to,
    List<Planned> calendar) {
  /** Copies the lists. */
  public DueAnswer {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(asOf, "asOf");
    due = List.copyOf(due);
    missed = List.copyOf(missed);
    exempt = List.copyOf(exempt);
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    calendar = List.copyOf(calendar);
  }

  /**
   * Asks the rules.
   *
   * @param rules the rules; not null
   * @param record the element with what happened to it; not null
   * @param asOf the day asked about; not null
   * @param from the first day of the calendar; not null
   * @param to the last day of the calendar; not null
   * @return the answer; never null
   * @throws InvalidValueException if the last day is before the first, or after the year 2200
   */
  public static DueAnswer of(
      GearRules rules, ServiceRecord record, LocalDate asOf, LocalDate from, LocalDate to) {
    Schedule schedule = rules.schedule();
    return new DueAnswer(
        record.element().named(),
        asOf,
        schedule.due(record, asOf),
        schedule.missed(record, asOf),
        schedule.exempt(record, asOf),
        from,
        to,
        schedule.calendar(record, asOf, from, to));
  }
}
