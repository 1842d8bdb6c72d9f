package org.ensemblerules.schedule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.history.Moment;

/** The days of a task that is due each time something happens. */
final class TriggeredDays {
  private final RecordOnDay facts;
  private final TaskRow task;
  private final Timing.After after;
  private final List<Occurrence> occurrences;

  TriggeredDays(RecordOnDay facts, TaskRow task, Timing.After after) {
    this.facts = facts;
    this.task = task;
    this.after = after;
    this.occurrences = facts.occurrences().of(after, task.doneBy());
  }

  private Answers answers() {
    return new Answers(facts.evidence(), facts.done(task.doneBy()), after.trigger());
  }

  /** The first that is open; one without a date comes before all others. */
  Optional<Due> due() {
    if (occurrences.isEmpty()) {
      return Optional.empty();
    }
    Answers answers = answers();
    Occurrence first = null;
    for (Occurrence occurrence : occurrences) {
      if (!answers.isAnswered(occurrence.when())
          && (first == null || dayOf(occurrence).isBefore(dayOf(first)))) {
        first = occurrence;
      }
    }
    return Optional.ofNullable(first).map(this::due);
  }

  private static LocalDate dayOf(Occurrence occurrence) {
    return occurrence.when().date().earliestOr(LocalDate.MIN);
  }

  private Due due(Occurrence occurrence) {
    return new Due(
        task.task(),
        Optional.of(task),
        Optional.empty(),
        from(occurrence).map(this::plusDays),
        occurrence.text()
            + ", and no "
            + task.doneBy().text()
            + " is recorded after it"
            + facts.evidence().order().howToTell(occurrence.when(), task.doneBy()::asksFor)
            + facts.notCounting(task.doneBy(), Optional.of(occurrence.when())));
  }

  /** Whatever may have called for something, has: its time runs from the first day it can be. */
  private static Optional<LocalDate> from(Occurrence occurrence) {
    return occurrence.when().date().earliest();
  }

  private LocalDate plusDays(LocalDate day) {
    return day.plusDays(after.withinDays().orElse(0));
  }

  /** The last day by which it was certainly in time; only what is certain is called missed. */
  private Optional<LocalDate> by(Occurrence occurrence) {
    return occurrence.when().date().latest().map(this::plusDays);
  }

  void missed(Optional<LocalDate> end, Consumer<Missed> missed) {
    Answers answers = answers();
    LocalDate last = end.filter(day -> day.isBefore(facts.asOf())).orElse(facts.asOf());
    List<Moment> ordered =
        occurrences.stream().map(Occurrence::when).sorted(Moment.LAST_CERTAIN).toList();
    for (Occurrence occurrence : occurrences) {
      Optional<LocalDate> by = by(occurrence);
      Optional<LocalDate> limit = after.withinDays().isPresent() ? by : again(ordered, occurrence);
      Optional<LocalDate> doneOn = answers.answering(occurrence.when());
      if (limit.isPresent()
          && doneOn.orElse(last).isAfter(limit.get())
          && last.isAfter(limit.get())) {
        missed.accept(new Missed(task.task(), task, by, doneOn, occurrence.text()));
      }
    }
  }

  /** When the same had certainly happened again. */
  private static Optional<LocalDate> again(List<Moment> ordered, Occurrence occurrence) {
    int next = DoneDays.indexOfFirst(ordered, when -> when.certainlyAfter(occurrence.when()));
    return ordered.subList(next, ordered.size()).stream()
        .findFirst()
        .flatMap(when -> when.date().latest());
  }

  void planned(LocalDate from, LocalDate to, Consumer<Planned> planned) {
    Optional<Due> next = due();
    next.flatMap(Due::by)
        .filter(day -> !day.isBefore(from) && !day.isAfter(to))
        .ifPresent(
            day ->
                planned.accept(new Planned(day, task.task(), task, next.orElseThrow().reason())));
  }
}
