package org.ensemblerules.schedule;

import com.google.common.base.Suppliers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.UseEvent;

/** From when the time of tasks counts, as far as a record tells it by a day. */
final class StartDays {
  /**
   * Since when time counts: known, not known, or not yet; {@code assumed} where nothing states it
   * and the earliest day counts that is possible.
   */
  record Since(boolean begun, Optional<LocalDate> day, boolean assumed) {}

  private final Evidence evidence;
  private final Supplier<Optional<LocalDate>> made = Suppliers.memoize(this::made);
  private final Supplier<Since> issue = Suppliers.memoize(this::sinceIssue);

  StartDays(Evidence evidence) {
    this.evidence = evidence;
  }

  Since since(Start start) {
    return switch (start) {
      case IN_SERVICE -> new Since(true, evidence.element().inService().earliest(), false);
      case MANUFACTURE -> new Since(true, made.get(), false);
      case ISSUE -> issue.get();
    };
  }

  private Since sinceIssue() {
    List<MarkedDate> uses = new ArrayList<>();
    uses(UseEvent.Issued.class, uses);
    uses(UseEvent.Used.class, uses);
    uses(ExposureEvent.Exposed.class, uses);
    MarkedDate placed = evidence.element().inService();
    if (uses.isEmpty() && placed.earliest().isEmpty() && !stocked().isEmpty()) {
      return new Since(false, Optional.empty(), false);
    }
    Optional<LocalDate> first = begun(placed, uses);
    for (MarkedDate use : uses) {
      first = earlier(first, begun(use, uses));
    }
    return new Since(true, first, placed.earliest().isEmpty());
  }

  private void uses(Class<? extends Event> kind, List<MarkedDate> uses) {
    for (Event event : evidence.history().events(kind)) {
      if (event.when().date().possiblyBy(evidence.asOf())) {
        uses.add(event.when().date());
      }
    }
  }

  /** What has no date may have been on the first day that there can be. */
  private Optional<LocalDate> begun(MarkedDate date, List<MarkedDate> uses) {
    Optional<LocalDate> first = firstDay(date);
    return first.isPresent() ? first : firstPossible(uses);
  }

  /** A day that nobody knows may be before any other. */
  private static Optional<LocalDate> earlier(Optional<LocalDate> one, Optional<LocalDate> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return Optional.empty();
    }
    return other.get().isBefore(one.get()) ? other : one;
  }

  /** The earliest day that a date can mean; of a month or a year, none before it was made. */
  private Optional<LocalDate> firstDay(MarkedDate date) {
    Optional<LocalDate> first = date.earliest();
    if (date instanceof MarkedDate.Day || first.isEmpty()) {
      return first;
    }
    return made.get()
        .filter(day -> day.isAfter(first.get()) && !date.certainlyBy(day.minusDays(1)))
        .or(() -> first);
  }

  /** When it was received into stock, certainly by the day. */
  private List<UseEvent.Stocked> stocked() {
    return evidence.history().events(UseEvent.Stocked.class).stream()
        .filter(event -> event.when().date().certainlyBy(evidence.asOf()))
        .toList();
  }

  /** The first day on which it may have left the shelf, or the maker; empty if nobody can say. */
  private Optional<LocalDate> firstPossible(List<MarkedDate> uses) {
    return stocked().stream()
        .map(event -> event.when().date())
        .filter(date -> uses.stream().allMatch(use -> use.certainlyNotBefore(date)))
        .flatMap(date -> date.earliest().stream())
        .max(Comparator.naturalOrder())
        .or(made);
  }

  /** The earliest manufacture that the labels show; empty if one of them may show another. */
  private Optional<LocalDate> made() {
    Optional<LocalDate> first = Optional.empty();
    for (Optional<LayerKind> layer : evidence.labeledLayers()) {
      Optional<LocalDate> made =
          evidence.element().label(layer).flatMap(label -> label.manufactured().earliest());
      if (made.isEmpty()) {
        return Optional.empty();
      }
      first = first.isEmpty() ? made : earlier(first, made);
    }
    return first;
  }
}
