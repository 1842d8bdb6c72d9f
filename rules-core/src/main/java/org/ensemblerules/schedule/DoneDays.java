package org.ensemblerules.schedule;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.Lists;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Moment;

/**
 * When a task was done by a day, as far as it counts, in the order in which one is certainly after
 * more than another. Whether something counts is asked only where the answer hangs on it.
 */
final class DoneDays {
  private record Done(Event event, Moment when) {}

  private static final Comparator<Done> LAST_CERTAIN =
      Comparator.comparing(Done::when, Moment.LAST_CERTAIN);
  private static final Comparator<Done> BY_LATEST =
      Comparator.comparing(done -> done.when().date().latestOr(LocalDate.MAX));

  static final DoneDays NONE =
      new DoneDays(List.of(), event -> false, event -> false, Optional.empty());

  private final List<Done> done;
  private final Predicate<Event> counts;
  private final Optional<Predicate<Moment>> afterIt;
  private final Supplier<ImmutableList<Moment>> all = Suppliers.memoize(() -> of(event -> true));
  private final Supplier<ImmutableList<Moment>> onThatOccasion;
  private final Supplier<Optional<Moment>> last = Suppliers.memoize(() -> last(event -> true));
  private final Supplier<Optional<Moment>> lastOnThatOccasion;

  /**
   * {@code done}: all of the sort, in any order. {@code thatOccasion}: those made for the very
   * occasion, so that the same day is late enough. {@code afterIt}: of an occasion that says that
   * they came after what called for them, whether they say so of what called at a moment; others
   * are on its day, before or after it.
   */
  DoneDays(
      List<? extends Event> done,
      Predicate<Event> counts,
      Predicate<Event> thatOccasion,
      Optional<Predicate<Moment>> afterIt) {
    this.done = new ArrayList<>(done.size());
    done.forEach(event -> this.done.add(new Done(event, event.when())));
    this.done.sort(LAST_CERTAIN);
    this.counts = counts;
    this.afterIt = afterIt;
    this.onThatOccasion = Suppliers.memoize(() -> of(thatOccasion));
    this.lastOnThatOccasion = Suppliers.memoize(() -> last(thatOccasion));
  }

  private ImmutableList<Moment> of(Predicate<Event> sort) {
    ImmutableList.Builder<Moment> found = ImmutableList.builder();
    for (Done each : done) {
      if (sort.test(each.event()) && counts.test(each.event())) {
        found.add(each.when());
      }
    }
    return found.build();
  }

  private Optional<Moment> last(Predicate<Event> sort) {
    for (Done each : Lists.reverse(done)) {
      if (sort.test(each.event()) && counts.test(each.event())) {
        return Optional.of(each.when());
      }
    }
    return Optional.empty();
  }

  /** One for each day that counts as done on. */
  List<Moment> onDistinctDays() {
    return Moment.onDistinctDays(all.get());
  }

  /** The last of those for the days that count as done on: all of them, or at least so many. */
  List<Moment> lastDistinctDays(int atLeast) {
    List<Done> byLatest = new ArrayList<>(done);
    byLatest.sort(BY_LATEST);
    List<Moment> days = new ArrayList<>();
    List<Moment> newer = new ArrayList<>();
    LocalDate first = LocalDate.MAX;
    for (Done each : Lists.reverse(byLatest)) {
      // What is certainly before all of them shares no day with any.
      if (!newer.isEmpty() && each.when().date().latestOr(LocalDate.MAX).isBefore(first)) {
        days.addAll(0, Moment.onDistinctDays(Lists.reverse(newer)));
        newer.clear();
        if (days.size() >= atLeast) {
          return days;
        }
      }
      if (counts.test(each.event())) {
        newer.add(each.when());
        LocalDate earliest = each.when().date().earliestOr(LocalDate.MIN);
        first = earliest.isBefore(first) ? earliest : first;
      }
    }
    days.addAll(0, Moment.onDistinctDays(Lists.reverse(newer)));
    return days;
  }

  /** Whether anything answers an occurrence: the last that counts tells it as a rule. */
  boolean isAnswered(Moment occurrence) {
    if (last.get().filter(when -> when.certainlyAfter(occurrence)).isPresent()) {
      return true;
    }
    Optional<Moment> onItsDay =
        lastOnThatOccasion.get().filter(when -> when.date().certainlyNotBefore(occurrence.date()));
    return onItsDay.isPresent()
        && (afterIt.isEmpty()
            || (onItsDay.get().follows(occurrence, true) && afterIt.get().test(occurrence))
            || answering(occurrence).isPresent());
  }

  /** The day on which the first of those was done that answer an occurrence. */
  Optional<LocalDate> answering(Moment occurrence) {
    return Stream.of(
            first(all.get(), done -> done.certainlyAfter(occurrence)),
            afterIt.isPresent() ? saysAfter(occurrence) : from(occurrence.date()))
        .flatMap(Optional::stream)
        .flatMap(when -> when.date().earliest().stream())
        .min(LocalDate::compareTo);
  }

  private Optional<Moment> from(MarkedDate day) {
    return first(onThatOccasion.get(), done -> done.date().certainlyNotBefore(day));
  }

  /** Never against an order that the record tells; what has none comes first on its day. */
  private Optional<Moment> saysAfter(Moment occurrence) {
    if (!afterIt.orElseThrow().test(occurrence)) {
      return Optional.empty();
    }
    return from(occurrence.date())
        .filter(done -> done.orderInDay() == 0)
        .or(() -> first(onThatOccasion.get(), done -> done.follows(occurrence, true)));
  }

  private static Optional<Moment> first(List<Moment> ordered, Predicate<Moment> fulfills) {
    int index = indexOfFirst(ordered, fulfills);
    return index < ordered.size() ? Optional.of(ordered.get(index)) : Optional.empty();
  }

  /** Where the first stands that fulfills what all that come after it fulfill as well. */
  static int indexOfFirst(List<Moment> ordered, Predicate<Moment> fulfills) {
    int low = 0;
    int high = ordered.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (fulfills.test(ordered.get(middle))) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
