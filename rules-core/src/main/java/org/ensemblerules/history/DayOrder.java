package org.ensemblerules.history;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableListMultimap;
import java.time.LocalDate;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.inspection.Occasion;

/**
 * What came after what on one day: what an occasion says of it, and how a record may tell what it
 * does not.
 *
 * @since 0.1
 */
public final class DayOrder {
  private final Evidence evidence;
  private final Supplier<ImmutableListMultimap<LocalDate, Event>> byDay =
      Suppliers.memoize(this::eventsByDay);
  private final Supplier<OneADay> uses = Suppliers.memoize(() -> ofItsDay(Occasion.AFTER_USE));
  private final Supplier<OneADay> returns =
      Suppliers.memoize(() -> ofItsDay(Occasion.AFTER_RETURN));

  DayOrder(Evidence evidence) {
    this.evidence = evidence;
  }

  /**
   * Tells whether an inspection that names its occasion says by it that it came after what was at a
   * moment. A use and what the element met are one sort; where two of a sort may have been on one
   * day, only their order tells which of them the inspection came after.
   *
   * @param occasion the occasion; not null
   * @param moment when that was of which it may be the occasion; not null
   * @return true if nothing else of its sort may have been on its day; of an occasion that names no
   *     such thing, or all work of its day, always
   */
  public boolean namesOne(Occasion occasion, Moment moment) {
    return switch (occasion) {
      case AFTER_USE -> uses.get().alone(moment);
      case AFTER_RETURN -> returns.get().alone(moment);
      default -> true;
    };
  }

  private OneADay ofItsDay(Occasion occasion) {
    return new OneADay(evidence.history(), StatedOrder.stated(occasion).orElseThrow());
  }

  /**
   * Says how the record may tell that something of a sort came after a moment, where it may have.
   *
   * @param moment the moment; not null
   * @param sort which events; not null
   * @return a text that begins with a semicolon; empty if nothing of the sort counts and is of that
   *     very day without an order told
   */
  public String howToTell(Moment moment, Predicate<Event> sort) {
    return howToTell(moment, sort, event -> "");
  }

  /**
   * Says how the record may tell that something of a sort came after a moment, where it may have:
   * by an order, or by a statement that such an event can make.
   *
   * @param moment the moment; not null
   * @param sort which events; not null
   * @param statement what else an event may state, in words that go on; empty if nothing; not null
   * @return a text that begins with a semicolon; empty if nothing of the sort counts and is of that
   *     very day without an order told
   */
  public String howToTell(Moment moment, Predicate<Event> sort, Function<Event, String> statement) {
    return moment
        .date()
        .earliest()
        .map(day -> byDay.get().get(day).stream())
        .orElseGet(Stream::empty)
        .filter(event -> sort.test(event) && maySay(event))
        .flatMap(
            event ->
                event
                    .when()
                    .howToOrder(moment)
                    .map(how -> event.name() + " " + how + statement.apply(event))
                    .stream())
        .findFirst()
        .map(text -> "; " + text)
        .orElse("");
  }

  /** What is not judged, as a transfer, counts as it stands. */
  private boolean maySay(Event event) {
    return evidence.judgment(event).map(Judgment::counts).orElse(true);
  }

  private ImmutableListMultimap<LocalDate, Event> eventsByDay() {
    return evidence.history().events().stream()
        .filter(event -> event.when().date() instanceof MarkedDate.Day)
        .collect(
            ImmutableListMultimap.toImmutableListMultimap(
                event -> event.when().date().earliest().orElseThrow(), event -> event));
  }
}
