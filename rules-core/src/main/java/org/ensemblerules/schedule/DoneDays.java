package org.ensemblerules.schedule;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Moment;

/**
 * When a task was done by a day, as far as it counts, in the order in which one is certainly after
 * more than another.
 */
final class DoneDays {
  private final ImmutableList<Moment> all;
  private final ImmutableList<Moment> onThatOccasion;
  private final Optional<Predicate<Moment>> afterIt;

  /**
   * {@code onThatOccasion}: those made for the very occasion, so that the same day is late enough.
   * {@code afterIt}: of an occasion that says that they came after what called for them, whether
   * they say so of what called at a moment; others are on its day, before or after it.
   */
  DoneDays(Stream<Moment> all, Stream<Moment> onThatOccasion, Optional<Predicate<Moment>> afterIt) {
    this.all = all.sorted(Moment.LAST_CERTAIN).collect(ImmutableList.toImmutableList());
    this.onThatOccasion =
        onThatOccasion.sorted(Moment.LAST_CERTAIN).collect(ImmutableList.toImmutableList());
    this.afterIt = afterIt;
  }

  /** One for each day that counts as done on. */
  List<Moment> onDistinctDays() {
    return Moment.onDistinctDays(all);
  }

  /** The day on which the first of those was done that answer an occurrence. */
  Optional<LocalDate> answering(Moment occurrence) {
    return Stream.of(
            first(all, done -> done.certainlyAfter(occurrence)),
            afterIt.isPresent() ? saysAfter(occurrence) : from(occurrence.date()))
        .flatMap(Optional::stream)
        .flatMap(when -> when.date().earliest().stream())
        .min(LocalDate::compareTo);
  }

  private Optional<Moment> from(MarkedDate day) {
    return first(onThatOccasion, done -> done.date().certainlyNotBefore(day));
  }

  /** Never against an order that the record tells; what has none comes first on its day. */
  private Optional<Moment> saysAfter(Moment occurrence) {
    if (!afterIt.orElseThrow().test(occurrence)) {
      return Optional.empty();
    }
    return from(occurrence.date())
        .filter(done -> done.orderInDay() == 0)
        .or(() -> first(onThatOccasion, done -> done.follows(occurrence, true)));
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
