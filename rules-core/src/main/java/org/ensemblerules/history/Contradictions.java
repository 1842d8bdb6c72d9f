package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.Stream;
import org.ensemblerules.gear.MarkedDate;

/**
 * Does a history contradict itself? A fault is named only if no reading of the dates makes the
 * history possible; what is not dated neither contradicts nor explains anything.
 */
final class Contradictions {
  private Contradictions() {}

  static List<Contradiction> in(History history, Collection<MarkedDate> manufactured) {
    ImmutableList.Builder<Contradiction> faults = ImmutableList.builder();
    beforeMade(history, manufactured, faults);
    afterTheEnd(history, faults);
    secondHolder(history, faults);
    backWithoutTakenOut(history, faults);
    StatedOrder.contradictions(history, faults);
    return faults.build();
  }

  private static void beforeMade(
      History history,
      Collection<MarkedDate> manufactured,
      ImmutableList.Builder<Contradiction> faults) {
    Optional<LocalDate> made = MarkedDate.earliestOf(manufactured);
    if (made.isEmpty()) {
      return;
    }
    for (Event event : history.events()) {
      // A history is in the order of the earliest days that its events can have.
      if (!event.when().date().earliestOr(LocalDate.MIN).isBefore(made.get())) {
        break;
      }
      if (event.when().date().latestOr(LocalDate.MAX).isBefore(made.get())) {
        faults.add(
            new Contradiction(
                Contradiction.Kind.BEFORE_MADE,
                event,
                event.when().toString(),
                "a date not before its manufacture, " + made.get()));
      }
    }
  }

  /** Whatever is certainly after any end of service is certainly after the first of them. */
  private static void afterTheEnd(History history, ImmutableList.Builder<Contradiction> faults) {
    Optional<Moment> disposed = first(history.events(EndEvent.Disposed.class));
    Optional<Moment> retired = first(history.events(EndEvent.Retired.class));
    if (disposed.isEmpty() && retired.isEmpty()) {
      return;
    }
    for (Event event : history.events()) {
      if (disposed.isPresent() && event.when().certainlyAfter(disposed.get())) {
        faults.add(
            new Contradiction(
                Contradiction.Kind.AFTER_DISPOSAL,
                event,
                event.when().toString(),
                "nothing after it was disposed of, " + disposed.get()));
      } else if (retired.isPresent()
          && !followsRetirement(event)
          && event.when().certainlyAfter(retired.get())) {
        faults.add(
            new Contradiction(
                Contradiction.Kind.AFTER_RETIREMENT,
                event,
                event.when().toString(),
                "nothing but custody and disposal after it was retired, " + retired.get()));
      }
    }
  }

  private static Optional<Moment> first(List<? extends Event> events) {
    return events.isEmpty()
        ? Optional.empty()
        : events.stream().map(Event::when).min(Moment.FIRST_CERTAIN);
  }

  /** What may still happen to an element that is retired: who keeps it changes, or it goes. */
  private static boolean followsRetirement(Event event) {
    return event instanceof EndEvent.Retired
        || event instanceof EndEvent.Disposed
        || event instanceof UseEvent.Moved
        || event instanceof UseEvent.Returned;
  }

  private static void secondHolder(History history, ImmutableList.Builder<Contradiction> faults) {
    List<UseEvent.Issued> all = history.events(UseEvent.Issued.class);
    if (all.size() < 2) {
      return;
    }
    Between given =
        new Between(
            Stream.of(UseEvent.Returned.class, UseEvent.Moved.class)
                .flatMap(kind -> history.events(kind).stream())
                .map(Event::when)
                .toList());
    Optional<UseEvent.Issued> before = Optional.empty();
    for (UseEvent.Issued issued : dated(all)) {
      if (before.isPresent()
          && !before.get().holder().equals(issued.holder())
          && !given.take(before.map(Event::when), issued.when())) {
        faults.add(
            new Contradiction(
                Contradiction.Kind.SECOND_HOLDER,
                issued,
                issued.when() + " to " + issued.holder(),
                "returned or moved on since " + before.get().when() + ", when another got it"));
      }
      before = Optional.of(issued);
    }
  }

  private static void backWithoutTakenOut(
      History history, ImmutableList.Builder<Contradiction> faults) {
    List<UseEvent.BackInService> all = history.events(UseEvent.BackInService.class);
    if (all.isEmpty()) {
      return;
    }
    Between taken =
        new Between(history.events(UseEvent.TakenOut.class).stream().map(Event::when).toList());
    Optional<Moment> before = Optional.empty();
    for (UseEvent.BackInService back : dated(all)) {
      if (!taken.take(before, back.when())) {
        faults.add(
            new Contradiction(
                Contradiction.Kind.BACK_WITHOUT_TAKEN_OUT,
                back,
                back.when().toString(),
                "taken out of service before"
                    + before.map(when -> ", and since " + when).orElse("")));
      }
      before = Optional.of(back.when());
    }
  }

  private static <E extends Event> List<E> dated(List<E> events) {
    return events.stream().filter(event -> event.when().date().earliest().isPresent()).toList();
  }

  /** Moments, each of which explains one later event; asked about from early to late. */
  private static final class Between {
    private final List<Moment> byEarliest = new ArrayList<>();
    private final PriorityQueue<Moment> reached = new PriorityQueue<>(Moment.FIRST_CERTAIN);
    private int next;

    Between(List<Moment> moments) {
      moments.stream()
          .filter(when -> when.date().earliest().isPresent())
          .sorted(Moment.LAST_CERTAIN)
          .forEach(byEarliest::add);
    }

    /** Takes a moment that may lie after one event and before another; false if there is none. */
    boolean take(Optional<Moment> after, Moment before) {
      while (next < byEarliest.size() && !byEarliest.get(next).certainlyAfter(before)) {
        reached.add(byEarliest.get(next++));
      }
      while (!reached.isEmpty()
          && after.isPresent()
          && after.get().certainlyAfter(reached.element())) {
        reached.remove();
      }
      return reached.poll() != null;
    }
  }
}
