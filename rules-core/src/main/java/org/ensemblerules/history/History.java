package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableSet;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.inspection.Inspection;
import org.jspecify.annotations.Nullable;

/**
 * What happened to an element, in order. Events given in any order make the same history; the same
 * event given twice stands once, but for a use or an exposure: two runs of one day read alike.
 *
 * @since 0.1
 */
public final class History {
  private static final Comparator<Event> ORDER =
      Comparator.<Event, LocalDate>comparing(event -> event.when().date().earliestOr(LocalDate.MIN))
          .thenComparing(event -> event.when().orderInDay())
          .thenComparing(Event::name)
          .thenComparing(History::inspection)
          .thenComparing(History::text);

  private static final History EMPTY = new History(List.of());

  private final ImmutableList<Event> events;
  private final ImmutableListMultimap<Class<? extends Event>, Event> byKind;
  private final ImmutableListMultimap<FindingId, Event> byFinding;
  private final ImmutableSet<Doer> vouchedFor;
  private final boolean isOfDaysAlone;
  private final boolean tellsOrders;

  // Looked for when first asked for; whoever looks meanwhile comes to the same.
  private @Nullable IdentityHashMap<Event, Integer> places;

  private History(List<Event> events) {
    Set<Event> said = new HashSet<>();
    this.events =
        events.stream()
            .filter(event -> said.add(event) || mayHappenTwiceADay(event))
            .sorted(ORDER)
            .collect(ImmutableList.toImmutableList());
    this.byKind =
        this.events.stream()
            .collect(ImmutableListMultimap.toImmutableListMultimap(Event::getClass, e -> e));
    ImmutableListMultimap.Builder<FindingId, Event> answering = ImmutableListMultimap.builder();
    this.events.forEach(event -> event.answers().forEach(id -> answering.put(id, event)));
    this.byFinding = answering.build();
    ImmutableSet.Builder<Doer> vouched = ImmutableSet.builder();
    boolean allDays = true;
    boolean anyOrder = false;
    for (Event event : this.events) {
      event.doer().filter(Doer::isVouchedFor).ifPresent(vouched::add);
      allDays &= event.when().date() instanceof MarkedDate.Day;
      anyOrder |= event.when().orderInDay() > 0;
    }
    this.vouchedFor = vouched.build();
    this.isOfDaysAlone = allDays;
    this.tellsOrders = anyOrder;
  }

  /** Two runs of one day read alike in a record that tells no order; one would hide the other. */
  private static boolean mayHappenTwiceADay(Event event) {
    return event instanceof UseEvent.Used || event instanceof ExposureEvent.Exposed;
  }

  /** Inspections of one day seldom need more than this to be told apart. */
  private static String inspection(Event event) {
    return event instanceof LookEvent.Inspected done
        ? done.inspection().kind() + done.inspection().by().map(by -> " by " + by.name()).orElse("")
        : "";
  }

  /** All that an event says, in an order of its own for inspections: it decides the order. */
  private static String text(Event event) {
    if (!(event instanceof LookEvent.Inspected done)) {
      return event.toString();
    }
    Inspection made = done.inspection();
    return List.of(
            made.on(),
            made.occasion(),
            made.by(),
            made.gearClean(),
            made.atHand(),
            made.outcomes(),
            made.signOff(),
            done.completes())
        .toString();
  }

  /**
   * Makes a history.
   *
   * @param events the events, in any order; not null
   * @return the history; never null
   */
  public static History of(List<? extends Event> events) {
    return new History(ImmutableList.copyOf(events));
  }

  /**
   * Returns the history in which nothing happened.
   *
   * @return the empty history; never null
   */
  public static History empty() {
    return EMPTY;
  }

  /**
   * Returns the events.
   *
   * @return the events by their earliest possible day; never null
   */
  public List<Event> events() {
    return events;
  }

  /**
   * Returns the events of one kind.
   *
   * @param kind the kind; not null
   * @param <E> the kind
   * @return the events by their earliest possible day; never null
   */
  public <E extends Event> List<E> events(Class<E> kind) {
    ImmutableList<Event> found = kind == Event.class ? events : byKind.get(kind);
    // An immutable list of events that are all of this kind is one of that kind.
    @SuppressWarnings("unchecked")
    ImmutableList<E> ofThatKind = (ImmutableList<E>) found;
    return ofThatKind;
  }

  /**
   * Puts events in the order in which one is certainly after whatever those before it are certainly
   * after.
   *
   * @param events some events of this history, in its order; not null
   * @param <E> their kind
   * @return the events by {@link Moment#LAST_CERTAIN}; never null
   */
  public <E extends Event> List<E> lastCertainLast(List<E> events) {
    return inOrder(events, Moment.LAST_CERTAIN);
  }

  /**
   * Puts events in the order of the last days on which each may have been.
   *
   * @param events some events of this history, in its order; not null
   * @param <E> their kind
   * @return the events by their latest possible day; never null
   */
  public <E extends Event> List<E> latestLast(List<E> events) {
    return inOrder(events, Moment.BY_LATEST);
  }

  /** Events that have a day each stand in any such order already. */
  private <E extends Event> List<E> inOrder(List<E> events, Comparator<Moment> order) {
    return isOfDaysAlone
        ? events
        : ImmutableList.sortedCopyOf(Comparator.comparing(Event::when, order), events);
  }

  /** Whether any event has a place among the events of its day. */
  boolean tellsOrders() {
    return tellsOrders;
  }

  /** Where each event stands among all, by the very object. */
  IdentityHashMap<Event, Integer> places() {
    IdentityHashMap<Event, Integer> found = places;
    if (found == null) {
      found = new IdentityHashMap<>(events.size());
      for (int place = 0; place < events.size(); place++) {
        found.put(events.get(place), place);
      }
      places = found;
    }
    return found;
  }

  /**
   * Returns the events that were done for a finding.
   *
   * @param finding the finding; not null
   * @return the events that name it, by their earliest possible day; never null
   */
  public List<Event> answering(FindingId finding) {
    return byFinding.get(finding);
  }

  /**
   * Returns everybody who did something.
   *
   * @return the doers, each once, in the order of the events; never null
   */
  public List<Doer> doers() {
    return events.stream()
        .flatMap(event -> event.doer().stream())
        .distinct()
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * Returns whoever did something and rests on the word of the organization.
   *
   * @return the doers, each once, in the order of the events; mostly empty; never null
   */
  public Set<Doer> vouchedFor() {
    return vouchedFor;
  }

  /**
   * Lists who held the element. Each issue and each transfer begins a span; the first return,
   * transfer, issue, retirement or disposal that certainly came later ends it. Two spans overlap
   * where the record does not tell which came first.
   *
   * @return the spans by the earliest day on which each can have begun, those without a date first;
   *     never null
   */
  public List<HolderSpan> holders() {
    return Holders.of(this);
  }

  /**
   * Lists in what the history contradicts itself. A fault is named only if no reading of the dates
   * makes the history possible; what is not dated neither contradicts nor explains anything.
   *
   * @param manufactured when the element's parts were made, as far as known; not null
   * @return the contradictions by kind, each kind in the order of the history; never null
   */
  public List<Contradiction> contradictions(Collection<MarkedDate> manufactured) {
    return Contradictions.in(this, manufactured);
  }

  /**
   * Lists the days on which an event states what it came after and has an order in its day as well:
   * whether the two agree hangs on all that happened on that day.
   *
   * @return the days; never null
   */
  public Set<MarkedDate> daysOfStatedOrder() {
    return StatedOrder.days(this);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof History other && events.equals(other.events);
  }

  @Override
  public int hashCode() {
    return events.hashCode();
  }

  @Override
  public String toString() {
    return "History of " + events.size() + (events.size() == 1 ? " event" : " events") + events;
  }
}
