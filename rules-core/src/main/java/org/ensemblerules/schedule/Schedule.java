package org.ensemblerules.schedule;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.source.InvalidValueException;

/**
 * Answers what falls due when, what has been missed, and what comes.
 *
 * <p>A duty is created at the earliest day that an imprecise date can mean, since whatever may have
 * called for something has, and discharged at the earliest too, by what is certainly later than
 * what called for it. Only what was certainly late is listed as missed. Where nothing states when
 * gear was placed in service, its time counts from the earliest day that is possible. Time out of
 * service, on loan or at another station stops no clock. Once an element may have been retired or
 * disposed of, nothing is due. Layers are dated by their own labels. The order in which events are
 * given never matters. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class Schedule {
  private final ScheduleTables tables;

  /**
   * Makes the schedule over its tables.
   *
   * @param tables what it is made by; not null
   */
  public Schedule(ScheduleTables tables) {
    this.tables = Objects.requireNonNull(tables, "tables");
  }

  /**
   * Lists what falls due next: for each row the next, for each layer its age, and each check that a
   * repair or a cleaning still waits for. Of several for one task the first counts.
   *
   * @param record what is asked about; not null
   * @param asOf the day asked about; what happened later does not count; not null
   * @return what is due, the earliest first, what is due since nobody knows when before all; never
   *     null
   */
  public List<Due> due(ServiceRecord record, LocalDate asOf) {
    return new NextDue(facts(record, asOf)).due();
  }

  /**
   * Lists what falls due next, as {@link #due(ServiceRecord, LocalDate)} does, by evidence that was
   * judged already.
   *
   * @param evidence what counts, by the tables of this schedule, on the day asked about; not null
   * @param record what is asked about; not null
   * @return what is due, the earliest first, what is due since nobody knows when before all; never
   *     null
   */
  public List<Due> due(Evidence evidence, ServiceRecord record) {
    return next(evidence, record).due();
  }

  /**
   * Finds what falls due next by evidence that was judged already.
   *
   * @param evidence what counts, by the tables of this schedule, on the day asked about; not null
   * @param record what is asked about; not null
   * @return what is due; never null
   */
  public NextDue next(Evidence evidence, ServiceRecord record) {
    return new NextDue(facts(evidence, record));
  }

  /**
   * Lists which tasks are not due for the time being although a row asks for them.
   *
   * @param record what is asked about; not null
   * @param asOf the day asked about; not null
   * @return the exemptions in table order; never null
   */
  public List<Exempt> exempt(ServiceRecord record, LocalDate asOf) {
    RecordOnDay facts = facts(record, asOf);
    ImmutableList.Builder<Exempt> exempt = ImmutableList.builder();
    for (TaskRow row : tables.tasks().rows(record.element())) {
      RecurringDays.of(facts, row).stream()
          .flatMap(rounds -> rounds.exempt().stream())
          .distinct()
          .forEach(why -> exempt.add(new Exempt(row, why)));
    }
    return exempt.build();
  }

  /**
   * Lists what was not done in time, whether or not it was done after all. While an interval is
   * exceeded, each further last day that passed is listed as well.
   *
   * @param record what is asked about; not null
   * @param asOf the day asked about; not null
   * @return what was missed by that day, the earliest first; never null
   */
  public List<Missed> missed(ServiceRecord record, LocalDate asOf) {
    RecordOnDay facts = facts(record, asOf);
    Optional<LocalDate> end = facts.end();
    List<Missed> missed = new ArrayList<>();
    for (TaskRow row : tables.tasks().rows(record.element())) {
      if (row.timing() instanceof Timing.After after) {
        new TriggeredDays(facts, row, after).missed(end, missed::add);
      } else {
        RecurringDays.of(facts, row).forEach(rounds -> rounds.missed(end, missed::add));
      }
    }
    return missed.stream().sorted(Missed.ORDER).collect(ImmutableList.toImmutableList());
  }

  /**
   * Lists what comes due in a span of days, if each thing is done on its last day in time, and what
   * is overdue on the day asked about.
   *
   * @param record what is asked about; not null
   * @param asOf the day asked about; not null
   * @param from the first day of the span; not null
   * @param to its last day, not before the first nor after the year 2200; not null
   * @return what comes, the earliest first; never null
   * @throws InvalidValueException if the span is not one
   */
  public List<Planned> calendar(
      ServiceRecord record, LocalDate asOf, LocalDate from, LocalDate to) {
    InvalidValueException.require(
        !to.isBefore(from) && to.getYear() <= MarkedDate.LAST_YEAR,
        "Schedule.calendar.to",
        to,
        "a day from " + from + " to the year " + MarkedDate.LAST_YEAR);
    RecordOnDay facts = facts(record, asOf);
    if (facts.end().isPresent()) {
      return List.of();
    }
    List<Planned> planned = new ArrayList<>();
    for (Due due : new ChecksAndAgesDue(facts).ages()) {
      due.by()
          .filter(day -> !day.isBefore(from) && !day.isAfter(to))
          .ifPresent(
              day ->
                  due.row()
                      .ifPresent(
                          row -> planned.add(new Planned(day, due.task(), row, due.reason()))));
    }
    for (TaskRow row : tables.tasks().rows(record.element())) {
      if (row.timing() instanceof Timing.After after) {
        new TriggeredDays(facts, row, after).planned(from, to, planned::add);
      } else {
        RecurringDays.of(facts, row).forEach(rounds -> rounds.planned(from, to, planned::add));
      }
    }
    return planned.stream().sorted(Planned.ORDER).collect(ImmutableList.toImmutableList());
  }

  private RecordOnDay facts(ServiceRecord record, LocalDate asOf) {
    return facts(tables.evidence().of(record.element(), record.history(), asOf), record);
  }

  private RecordOnDay facts(Evidence evidence, ServiceRecord record) {
    return new RecordOnDay(tables, Objects.requireNonNull(evidence, "evidence"), record);
  }
}
