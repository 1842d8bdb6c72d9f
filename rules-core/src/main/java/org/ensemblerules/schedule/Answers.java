package org.ensemblerules.schedule;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.Lists;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;

/**
 * What was done, as far as it counts, that answers what called for a task: certainly later, or on
 * its day where it was made for the very occasion. Whether something counts is asked only where the
 * answer hangs on it.
 */
final class Answers {
  private final Evidence evidence;
  private final List<Event> done;
  private final Trigger trigger;
  private final Optional<Occasion> occasion;
  private final Supplier<Optional<Moment>> last = Suppliers.memoize(() -> last(event -> true));
  private final Supplier<Optional<Moment>> lastOnThatOccasion =
      Suppliers.memoize(() -> last(this::isOnThatOccasion));
  private final Supplier<ImmutableList<Moment>> all = Suppliers.memoize(() -> of(event -> true));
  private final Supplier<ImmutableList<Moment>> onThatOccasion =
      Suppliers.memoize(() -> of(this::isOnThatOccasion));

  /** {@code done}: all that discharges the task, in the order of the history. */
  Answers(Evidence evidence, List<Event> done, Trigger trigger) {
    this.evidence = evidence;
    this.done = evidence.history().lastCertainLast(done);
    this.trigger = trigger;
    this.occasion = occasion(trigger);
  }

  private static Optional<Occasion> occasion(Trigger trigger) {
    return switch (trigger) {
      case ISSUE -> Optional.of(Occasion.ON_ISSUE);
      case DUTY_PERIOD -> Optional.of(Occasion.START_OF_DUTY);
      case USE -> Optional.of(Occasion.AFTER_USE);
      default -> Optional.empty();
    };
  }

  private boolean isOnThatOccasion(Event event) {
    return event instanceof LookEvent.Inspected done
        && (Optional.of(done.inspection().occasion()).equals(occasion)
            || opensWhatWasSuspected(done));
  }

  /** A liner opened on the day of what spoke against it is the one that was suspected. */
  private boolean opensWhatWasSuspected(LookEvent.Inspected done) {
    return trigger == Trigger.LINER_SUSPECTED
        && done.inspection().kind() == InspectionKind.COMPLETE_LINER;
  }

  /** Whether the occasion says that it came after what called for it, not only on its day. */
  private boolean saysAfter() {
    return trigger == Trigger.USE;
  }

  private boolean saysAfter(Moment occurrence) {
    return evidence.order().namesOne(Occasion.AFTER_USE, occurrence);
  }

  private ImmutableList<Moment> of(Predicate<Event> sort) {
    ImmutableList.Builder<Moment> found = ImmutableList.builder();
    for (Event event : done) {
      if (sort.test(event) && evidence.counts(event)) {
        found.add(event.when());
      }
    }
    return found.build();
  }

  private Optional<Moment> last(Predicate<Event> sort) {
    for (Event event : Lists.reverse(done)) {
      if (sort.test(event) && evidence.counts(event)) {
        return Optional.of(event.when());
      }
    }
    return Optional.empty();
  }

  /** Whether anything answers an occurrence: the last that counts tells it as a rule. */
  boolean isAnswered(Moment occurrence) {
    if (last.get().filter(when -> when.certainlyAfter(occurrence)).isPresent()) {
      return true;
    }
    Optional<Moment> onItsDay =
        lastOnThatOccasion.get().filter(when -> when.date().certainlyNotBefore(occurrence.date()));
    return onItsDay.isPresent()
        && (!saysAfter()
            || (onItsDay.get().follows(occurrence, true) && saysAfter(occurrence))
            || answering(occurrence).isPresent());
  }

  /** The day on which the first of those was done that answer an occurrence. */
  Optional<LocalDate> answering(Moment occurrence) {
    return Stream.of(
            first(all.get(), done -> done.certainlyAfter(occurrence)),
            saysAfter() ? firstThatSaysAfter(occurrence) : from(occurrence.date()))
        .flatMap(Optional::stream)
        .flatMap(when -> when.date().earliest().stream())
        .min(LocalDate::compareTo);
  }

  private Optional<Moment> from(MarkedDate day) {
    return first(onThatOccasion.get(), done -> done.date().certainlyNotBefore(day));
  }

  /** Never against an order that the record tells; what has none comes first on its day. */
  private Optional<Moment> firstThatSaysAfter(Moment occurrence) {
    if (!saysAfter(occurrence)) {
      return Optional.empty();
    }
    return from(occurrence.date())
        .filter(done -> done.orderInDay() == 0)
        .or(() -> first(onThatOccasion.get(), done -> done.follows(occurrence, true)));
  }

  private static Optional<Moment> first(List<Moment> ordered, Predicate<Moment> fulfills) {
    int index = DoneDays.indexOfFirst(ordered, fulfills);
    return index < ordered.size() ? Optional.of(ordered.get(index)) : Optional.empty();
  }
}
