package org.ensemblerules.schedule;

import com.google.common.base.Suppliers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.History;
import org.ensemblerules.history.Judgment;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.inspection.InspectionStanding;

/** What one record says by a day: what was done and counts, what called for tasks, since when. */
final class RecordOnDay {
  private final ScheduleTables tables;
  private final Evidence evidence;
  private final Occurrences occurrences;
  private final StartDays startDays;
  private final Supplier<Reserve> reserve;

  RecordOnDay(ScheduleTables tables, Evidence evidence, ServiceRecord record) {
    this.tables = tables;
    this.evidence = evidence;
    this.occurrences = new Occurrences(tables, evidence, record);
    this.startDays = new StartDays(evidence);
    this.reserve = Suppliers.memoize(() -> new Reserve(evidence.element(), evidence.history()));
  }

  ScheduleTables tables() {
    return tables;
  }

  Evidence evidence() {
    return evidence;
  }

  Element element() {
    return evidence.element();
  }

  History history() {
    return evidence.history();
  }

  LocalDate asOf() {
    return evidence.asOf();
  }

  /** What called for tasks. */
  Occurrences occurrences() {
    return occurrences;
  }

  /** From when the time of tasks counts. */
  StartDays startDays() {
    return startDays;
  }

  /** Whether it was in reserve at an inspection; what never was on a shelf never was. */
  boolean inReserve(Moment inspected) {
    boolean shelved =
        !history().events(UseEvent.Returned.class).isEmpty()
            || !history().events(UseEvent.Stocked.class).isEmpty();
    return shelved && reserve.get().at(inspected);
  }

  /** What put it to use first after an inspection in reserve. */
  Optional<Moment> inUseAfter(Moment inspected) {
    return reserve.get().inUseAfter(inspected);
  }

  boolean mayHaveHappened(Moment when) {
    return when.date().possiblyBy(asOf());
  }

  /** The first day on which it may have left service for good, if it may have by the day. */
  Optional<LocalDate> end() {
    List<EndEvent.Retired> retired = history().events(EndEvent.Retired.class);
    List<EndEvent.Disposed> disposed = history().events(EndEvent.Disposed.class);
    return retired.isEmpty() && disposed.isEmpty()
        ? Optional.empty()
        : Stream.concat(retired.stream(), disposed.stream())
            .filter(event -> mayHaveHappened(event.when()))
            .map(event -> event.when().date().earliestOr(LocalDate.MIN))
            .min(Comparator.naturalOrder());
  }

  /** Everything that discharges a task if it counts, in the order of the history. */
  List<Event> done(Discharge doneBy) {
    List<Event> done = new ArrayList<>();
    for (Event event : history().events(kind(doneBy))) {
      if (discharges(event, doneBy)) {
        done.add(event);
      }
    }
    return done;
  }

  private static Class<? extends Event> kind(Discharge doneBy) {
    if (doneBy instanceof Discharge.Checked) {
      return LookEvent.Checked.class;
    }
    return doneBy instanceof Discharge.Cleaned || doneBy instanceof Discharge.CleanedAs
        ? WorkEvent.Cleaned.class
        : LookEvent.Inspected.class;
  }

  /** How much the record has of the inspection by which a task was done; the most of several. */
  Optional<EvidenceGrade> grade(Discharge doneBy, Moment when) {
    Optional<EvidenceGrade> most = Optional.empty();
    for (LookEvent.Inspected event : history().events(LookEvent.Inspected.class)) {
      if (event.inspection().on().equals(when.date())
          && event.orderInDay() == when.orderInDay()
          && discharges(event, doneBy)
          && evidence.counts(event)) {
        Optional<EvidenceGrade> grade =
            evidence.judgment(event).flatMap(Judgment::standing).map(InspectionStanding::grade);
        most = most.isEmpty() || grade.orElseThrow().compareTo(most.get()) > 0 ? grade : most;
      }
    }
    return most;
  }

  /** The last day of an inspection that would do, of which only the date is on record. */
  Optional<LocalDate> dateOnly(Discharge doneBy) {
    Optional<LocalDate> last = Optional.empty();
    for (LookEvent.Inspected event : history().events(LookEvent.Inspected.class)) {
      if (event.inspection().isDateOnly()
          && discharges(event, doneBy)
          && event.when().date().certainlyBy(asOf())) {
        Optional<LocalDate> day = event.when().date().earliest();
        last = last.isEmpty() || last.get().isBefore(day.orElseThrow()) ? day : last;
      }
    }
    return last;
  }

  /** An inspection discharges what it covers as well: the fuller one the lesser. */
  private boolean discharges(Event event, Discharge doneBy) {
    return doneBy.asksFor(event)
        || (doneBy instanceof Discharge.Inspected asked
            && event instanceof LookEvent.Inspected made
            && tables
                .evidence()
                .criteria()
                .covers(made.inspection().kind(), asked.kind(), element().kind(), element().use()));
  }

  /** What of a sort does not count, newest first back to the last that does, unless before. */
  String notCounting(Discharge doneBy, Optional<Moment> before) {
    List<Judgment> notCounting = evidence.notCounting(doneBy::asksFor);
    return notCounting.isEmpty()
        ? ""
        : Judgment.text(
                notCounting.stream()
                    .filter(
                        each ->
                            before.isEmpty() || !before.get().certainlyAfter(each.event().when()))
                    .toList())
            .map(text -> "; " + text)
            .orElse("");
  }
}
