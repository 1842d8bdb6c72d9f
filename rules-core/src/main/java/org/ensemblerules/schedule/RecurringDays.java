package org.ensemblerules.schedule;

import com.google.common.base.Joiner;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Moment;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.source.Row;

/** The days of a task that is due a number of times in every span of months. */
final class RecurringDays {
  /** When one is due: on a day, now and not known since when, or not for the time being. */
  private record Deadline(boolean exempt, Optional<LocalDate> by) {}

  private final RecordOnDay facts;
  private final TaskRow task;
  private final Row row;
  private final Timing.Every every;
  private final StartDays.Since since;
  private final List<Moment> done;
  private final List<LocalDate> days;

  RecurringDays(RecordOnDay facts, TaskRow task, Row row, Timing.Every every) {
    // What is due next hangs on no more of the last days than are asked for in each span.
    this(
        facts,
        task,
        row,
        every,
        new DoneDays(facts.evidence(), facts.done(task.doneBy())).lastDistinctDays(every.times()));
  }

  /** By a row; none for what has no interval: what follows a trigger, or what no row covers. */
  static List<RecurringDays> of(RecordOnDay facts, TaskRow row) {
    if (row.timing() instanceof Timing.Every every) {
      return List.of(new RecurringDays(facts, row, row, every));
    }
    if (row.timing() instanceof Timing.ByInterval
        && row.doneBy() instanceof Discharge.Inspected inspected) {
      List<RecurringDays> rounds = new ArrayList<>();
      for (IntervalRow interval :
          facts.tables().intervals().rows(inspected.kind(), facts.element())) {
        rounds.add(new RecurringDays(facts, row, interval, every(interval, facts)));
      }
      return rounds;
    }
    return List.of();
  }

  private static Timing.Every every(IntervalRow interval, RecordOnDay facts) {
    int first =
        facts.element().cbrnOption() == YesNoUnknown.NO
            ? interval.firstMonths()
            : interval.firstMonthsWithCbrnOption();
    return new Timing.Every(Start.IN_SERVICE, first, 1, interval.repeatMonths());
  }

  private RecurringDays(
      RecordOnDay facts, TaskRow task, Row row, Timing.Every every, List<Moment> done) {
    this.facts = facts;
    this.task = task;
    this.row = row;
    this.every = every;
    this.since = facts.startDays().since(every.start());
    this.done = done;
    this.days = new ArrayList<>(done.size());
    done.forEach(when -> when.date().earliest().ifPresent(days::add));
  }

  /** Why nothing is due, if nothing is. */
  Optional<String> exempt() {
    if (!since.begun()) {
      return Optional.of("in stock and not issued since; the time begins with the first issue");
    }
    return deadline(days.size()).exempt()
        ? Optional.of(
            "in reserve: inspected "
                + done.get(done.size() - 1)
                + " and not issued since; due once it is issued")
        : Optional.empty();
  }

  Optional<Due> due() {
    Deadline next = deadline(days.size());
    return !since.begun() || next.exempt()
        ? Optional.empty()
        : Optional.of(due(next.by(), grade(), byDateOnly()));
  }

  private Due due(
      Optional<LocalDate> by, Optional<EvidenceGrade> grade, Optional<LocalDate> byDateOnly) {
    return new Due(
        task.task(),
        Optional.of(row),
        Optional.empty(),
        by,
        reason(grade, byDateOnly),
        grade,
        byDateOnly);
  }

  private Optional<EvidenceGrade> grade() {
    return done.isEmpty()
        ? Optional.empty()
        : facts.grade(task.doneBy(), done.get(done.size() - 1));
  }

  /** What would be due if what is only dated counted. */
  private Optional<LocalDate> byDateOnly() {
    return facts
        .dateOnly(task.doneBy())
        .filter(day -> days.isEmpty() || day.isAfter(days.get(days.size() - 1)))
        .flatMap(
            day -> {
              List<LocalDate> counted = new ArrayList<>(days);
              counted.add(day);
              return by(counted.size(), counted);
            });
  }

  private String reason(Optional<EvidenceGrade> grade, Optional<LocalDate> byDateOnly) {
    int given = days.size();
    String last =
        given == 0
            ? "none on record counts"
            : "done "
                + Joiner.on(" and ").join(days.subList(Math.max(0, given - every.times()), given))
                + grade
                    .filter(EvidenceGrade.SIGNED_OFF::equals)
                    .map(signed -> " (" + signed + ")")
                    .orElse("");
    return task.doneBy().text()
        + ": "
        + last
        + "; "
        + every.text()
        + since.day().map(day -> " (" + day + ")").orElse(", which is not known")
        + (since.assumed()
            ? "; the record does not state when it was placed in service, so the earliest day that"
                + " is possible counts"
            : "")
        + facts.notCounting(task.doneBy(), Optional.empty())
        + byDateOnly.map(day -> "; by its date alone due by " + day).orElse("");
  }

  /** By when the next was due after so many had been done. */
  private Deadline deadline(int given) {
    Optional<LocalDate> by = by(given, days);
    if (task.exemptInReserve() && given > 0 && facts.inReserve(done.get(given - 1))) {
      Optional<Moment> issued =
          facts.inUseAfter(done.get(given - 1)).filter(facts::mayHaveHappened);
      Optional<LocalDate> not = issued.flatMap(when -> when.date().earliest());
      return new Deadline(issued.isEmpty(), later(by, not));
    }
    return new Deadline(false, by);
  }

  /** The formula of {@link Timing.Every}; empty if no day is known from which to count. */
  private Optional<LocalDate> by(int given, List<LocalDate> counted) {
    return later(
        since.day().map(day -> day.plusMonths(every.firstMonths())),
        given < every.times()
            ? Optional.empty()
            : Optional.of(counted.get(given - every.times()).plusMonths(every.withinMonths())));
  }

  private static Optional<LocalDate> later(Optional<LocalDate> one, Optional<LocalDate> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.isPresent() ? one : other;
    }
    return one.get().isBefore(other.get()) ? other : one;
  }

  /** Every last day in time that passed; while one is missing, each that followed it as well. */
  void missed(Optional<LocalDate> end, Consumer<Missed> missed) {
    List<Moment> all = new DoneDays(facts.evidence(), facts.done(task.doneBy())).onDistinctDays();
    new RecurringDays(facts, task, row, every, all).passed(end, missed);
  }

  private void passed(Optional<LocalDate> end, Consumer<Missed> missed) {
    LocalDate last = end.filter(day -> day.isBefore(facts.asOf())).orElse(facts.asOf());
    for (int given = 0; since.begun() && given <= days.size(); given++) {
      Deadline deadline = deadline(given);
      Optional<LocalDate> doneOn =
          given < days.size() ? Optional.of(days.get(given)) : Optional.empty();
      LocalDate until = doneOn.filter(day -> day.isBefore(last)).orElse(last);
      int months = 0;
      Optional<LocalDate> by = deadline.exempt() ? Optional.empty() : deadline.by();
      while (by.isPresent() && by.get().isBefore(until)) {
        missed.accept(new Missed(task.task(), row, by, doneOn, "not " + task.doneBy().text()));
        months += every.withinMonths();
        int more = months;
        by = every.times() > 1 ? Optional.empty() : shifted(given, deadline, more);
      }
    }
  }

  /** Counted from where the first was, so that a short month shortens no later one. */
  private Optional<LocalDate> shifted(int given, Deadline deadline, int more) {
    if (given > 0) {
      LocalDate repeated = days.get(given - 1).plusMonths(every.withinMonths());
      if (deadline.by().equals(Optional.of(repeated))) {
        return Optional.of(days.get(given - 1).plusMonths(every.withinMonths() + more));
      }
    }
    return since
        .day()
        .filter(day -> deadline.by().equals(Optional.of(day.plusMonths(every.firstMonths()))))
        .map(day -> day.plusMonths((long) every.firstMonths() + more))
        .or(() -> deadline.by().map(day -> day.plusMonths(more)));
  }

  /** What comes, if each is done on its last day in time, and what is overdue on the day itself. */
  void planned(LocalDate from, LocalDate to, Consumer<Planned> planned) {
    if (!since.begun() || deadline(days.size()).exempt()) {
      return;
    }
    List<LocalDate> counted = new ArrayList<>(days);
    Optional<LocalDate> by = deadline(counted.size()).by();
    while (by.isPresent() && !by.get().isAfter(to)) {
      LocalDate day = by.get();
      if (!day.isBefore(from)) {
        planned.accept(new Planned(day, task.task(), row, every.text()));
      }
      counted.add(day.isBefore(facts.asOf()) ? facts.asOf() : day);
      by = by(counted.size(), counted);
    }
  }
}
