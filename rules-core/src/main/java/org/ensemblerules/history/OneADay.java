package org.ensemblerules.history;

import static com.google.common.collect.ImmutableSortedMultiset.toImmutableSortedMultiset;

import com.google.common.collect.BoundType;
import com.google.common.collect.ImmutableSortedMultiset;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.ensemblerules.gear.MarkedDate;

/**
 * Whether of a sort of events only one may have been on a day. What is said to have come after "the
 * use" of its day says of two uses nothing of the one or the other.
 */
final class OneADay {
  private final ImmutableSortedMultiset<LocalDate> firstDays;
  private final ImmutableSortedMultiset<LocalDate> lastDays;

  OneADay(History history, Predicate<Event> sort) {
    List<MarkedDate> dates =
        history.events().stream().filter(sort).map(event -> event.when().date()).toList();
    this.firstDays =
        dates.stream()
            .map(OneADay::first)
            .collect(toImmutableSortedMultiset(Comparator.naturalOrder()));
    this.lastDays =
        dates.stream()
            .map(OneADay::last)
            .collect(toImmutableSortedMultiset(Comparator.naturalOrder()));
  }

  private static LocalDate first(MarkedDate date) {
    return date.earliestOr(LocalDate.MIN);
  }

  private static LocalDate last(MarkedDate date) {
    return date.latestOr(LocalDate.MAX);
  }

  /** Whether no other of its sort may have been on any day that one of them may have been on. */
  boolean alone(Moment one) {
    int begun = firstDays.headMultiset(last(one.date()), BoundType.CLOSED).size();
    int over = lastDays.headMultiset(first(one.date()), BoundType.OPEN).size();
    return begun - over == 1;
  }
}
