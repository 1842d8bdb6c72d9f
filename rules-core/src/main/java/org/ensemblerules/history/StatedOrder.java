package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.inspection.Occasion;

/** Says of a check or an inspection that it came after something of its day, beside its order. */
final class StatedOrder {
  private StatedOrder() {}

  /** Adds what is said to have come after something of its day and has its order before all it. */
  static void contradictions(History history, ImmutableList.Builder<Contradiction> faults) {
    if (!history.tellsOrders()) {
      return;
    }
    ImmutableListMultimap.Builder<MarkedDate, Event> ordered = ImmutableListMultimap.builder();
    for (Event event : history.events()) {
      if (event.when().orderInDay() > 0 && event.when().date() instanceof MarkedDate.Day) {
        ordered.put(event.when().date(), event);
      }
    }
    ImmutableListMultimap<MarkedDate, Event> byDay = ordered.build();
    for (Event event : byDay.values()) {
      stated(event).forEach(after -> contradiction(event, after, history, faults, byDay));
    }
  }

  /** The days on which anything states what it came after and has an order as well. */
  static Set<MarkedDate> days(History history) {
    return history.events().stream()
        .filter(event -> event.when().orderInDay() > 0 && stated(event).findAny().isPresent())
        .map(event -> event.when().date())
        .collect(ImmutableSet.toImmutableSet());
  }

  private static void contradiction(
      Event event,
      Predicate<Event> after,
      History history,
      ImmutableList.Builder<Contradiction> faults,
      ImmutableListMultimap<MarkedDate, Event> byDay) {
    List<Event> later =
        byDay.get(event.when().date()).stream()
            .filter(after)
            .filter(other -> other.when().certainlyAfter(event.when()))
            .toList();
    boolean others =
        !later.isEmpty()
            && history.events().stream()
                .filter(other -> other.when().date().equals(event.when().date()))
                .anyMatch(other -> after.test(other) && !later.contains(other));
    if (!later.isEmpty() && !others) {
      faults.add(
          new Contradiction(
              Contradiction.Kind.STATED_ORDER,
              event,
              event.when() + ", said to be after a thing of its day",
              "an order after that of " + later.get(0).name() + ", " + later.get(0).when()));
    }
  }

  /** What an event says that it came after, each thing by itself. */
  private static Stream<Predicate<Event>> stated(Event event) {
    if (event instanceof LookEvent.Inspected done) {
      Stream<Predicate<Event>> begun =
          done.completes().stream()
              .map(
                  when ->
                      other ->
                          other instanceof LookEvent.Inspected earlier
                              && Completions.isNamed(earlier, done));
      return Stream.concat(stated(done.inspection().occasion()).stream(), begun);
    }
    if (event instanceof DecisionEvent.DecisionWithdrawn done) {
      return Stream.of(
          other ->
              other instanceof DecisionEvent.InspectorDecided decided
                  && decided.id().equals(done.decision()));
    }
    Stream<Predicate<Event>> failures =
        event.answers().stream()
            .filter(id -> id.value().startsWith(FindingId.OF_FAILURES))
            .map(id -> other -> isFailure(other, id));
    return event instanceof LookEvent.Checked done && done.afterWork()
        ? Stream.concat(
            failures,
            Stream.of(
                other -> isWork(other) && !Collections.disjoint(done.answers(), other.answers())))
        : failures;
  }

  private static boolean isFailure(Event event, FindingId id) {
    return (event instanceof LookEvent.Checked done
            && done.result() == CheckResult.FAILED
            && done.failure().equals(id))
        || (event instanceof LookEvent.Tested tested && tested.failure().equals(id));
  }

  /** After which events an inspection of an occasion says that it came. */
  static Optional<Predicate<Event>> stated(Occasion occasion) {
    return switch (occasion) {
      case AFTER_USE ->
          Optional.of(
              other -> other instanceof UseEvent.Used || other instanceof ExposureEvent.Exposed);
      case AFTER_RETURN ->
          Optional.of(
              other -> other instanceof UseEvent.Moved moved && moved.transfer().comesBack());
      case AFTER_WORK -> Optional.of(other -> isWork(other) || other instanceof LookEvent.Checked);
      default -> Optional.empty();
    };
  }

  /** What was done to it, whatever for. */
  static boolean isWork(Event event) {
    return event instanceof WorkEvent.Cleaned || event instanceof WorkEvent.Repaired;
  }
}
