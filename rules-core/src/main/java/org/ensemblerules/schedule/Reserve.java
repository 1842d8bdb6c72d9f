package org.ensemblerules.schedule;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.History;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;

/**
 * Whether an element was in reserve when it was inspected: it had certainly been returned or
 * received into stock by then, and whatever put it to use was certainly before that, or is
 * certainly after the inspection.
 */
final class Reserve {
  private final ImmutableList<Moment> inUseByLast;
  private final ImmutableList<Moment> inUseByFirst;
  private final ImmutableList<Moment> issuedByFirst;
  private final ImmutableList<Moment> lastIssuedUpTo;
  private final ImmutableList<Moment> shelved;
  private final ImmutableList<Moment> firstShelvedFrom;

  /** Placing in service, where it is known, is as good as an issue. */
  Reserve(Element element, History history) {
    List<Moment> placed =
        Stream.of(element.inService())
            .filter(date -> date.earliest().isPresent())
            .map(Moment::on)
            .toList();
    List<Moment> inUse =
        Stream.concat(
                placed.stream(),
                Stream.of(UseEvent.Issued.class, UseEvent.Used.class, ExposureEvent.Exposed.class)
                    .flatMap(kind -> history.events(kind).stream())
                    .map(Event::when))
            .toList();
    this.inUseByLast = ImmutableList.sortedCopyOf(Moment.LAST_CERTAIN, inUse);
    this.inUseByFirst = ImmutableList.sortedCopyOf(Moment.FIRST_CERTAIN, inUse);
    this.issuedByFirst =
        ImmutableList.sortedCopyOf(
            Moment.FIRST_CERTAIN,
            Stream.concat(
                    placed.stream(),
                    history.events(UseEvent.Issued.class).stream().map(Event::when))
                .toList());
    List<Moment> last = new ArrayList<>();
    for (Moment issued : issuedByFirst) {
      boolean later =
          last.isEmpty() || Moment.LAST_CERTAIN.compare(issued, last.get(last.size() - 1)) > 0;
      last.add(later ? issued : last.get(last.size() - 1));
    }
    this.lastIssuedUpTo = ImmutableList.copyOf(last);
    this.shelved =
        ImmutableList.sortedCopyOf(
            Moment.LAST_CERTAIN,
            Stream.of(UseEvent.Returned.class, UseEvent.Stocked.class)
                .flatMap(kind -> history.events(kind).stream())
                .map(Event::when)
                .toList());
    List<Moment> first = new ArrayList<>();
    for (Moment back : shelved.reverse()) {
      boolean earlier =
          first.isEmpty() || Moment.FIRST_CERTAIN.compare(back, first.get(first.size() - 1)) < 0;
      first.add(earlier ? back : first.get(first.size() - 1));
    }
    this.firstShelvedFrom = ImmutableList.copyOf(first).reverse();
  }

  /** Whether it was in reserve at an inspection. */
  boolean at(Moment inspected) {
    int before = before(inUseByFirst, inspected);
    int after = inUseByLast.size() - indexAfter(inUseByLast, inspected);
    if (before + after < inUseByLast.size()) {
      return false;
    }
    int issues = before(issuedByFirst, inspected);
    // That nothing on record says that it was issued does not say that it was on the shelf.
    int since = issues == 0 ? 0 : indexAfter(shelved, lastIssuedUpTo.get(issues - 1));
    if (since == shelved.size()) {
      return false;
    }
    Moment back = firstShelvedFrom.get(since);
    return inspected.certainlyAfter(back) || inspected.date().certainlyNotBefore(back.date());
  }

  /** What put it to use first after an inspection in reserve. */
  Optional<Moment> inUseAfter(Moment inspected) {
    int index = indexAfter(inUseByLast, inspected);
    return inUseByLast.subList(index, inUseByLast.size()).stream().findFirst();
  }

  /** How many of the first are certainly before a moment. */
  private static int before(List<Moment> byFirst, Moment moment) {
    return DoneDays.indexOfFirst(byFirst, when -> !moment.certainlyAfter(when));
  }

  private static int indexAfter(List<Moment> byLast, Moment moment) {
    return DoneDays.indexOfFirst(byLast, when -> when.certainlyAfter(moment));
  }
}
