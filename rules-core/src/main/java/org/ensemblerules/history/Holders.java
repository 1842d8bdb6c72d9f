package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Who held an element before, and who holds it now. */
final class Holders {
  /** Nobody who is known holds it, or the place says nothing of who does. */
  private static final Set<Transfer> NOBODY =
      Sets.immutableEnumSet(Transfer.LOST, Transfer.STOLEN, Transfer.FOUND_AGAIN);

  private Holders() {}

  static List<HolderSpan> of(History history) {
    // Ordered so that those certainly after a moment stand together at the end.
    List<Moment> ends =
        history.events().stream()
            .filter(Holders::ends)
            .map(Event::when)
            .sorted(Moment.LAST_CERTAIN)
            .toList();
    return history.events().stream()
        .flatMap(
            event ->
                holder(event).stream()
                    .map(to -> new HolderSpan(to, event.when(), first(ends, event.when()))))
        .sorted(
            Comparator.comparing(HolderSpan::from, Moment.LAST_CERTAIN)
                .thenComparing(HolderSpan::holder))
        .collect(ImmutableList.toImmutableList());
  }

  private static Optional<String> holder(Event event) {
    if (event instanceof UseEvent.Issued issued) {
      return Optional.of(issued.holder());
    }
    return event instanceof UseEvent.Moved moved && !NOBODY.contains(moved.transfer())
        ? Optional.of(moved.to())
        : Optional.empty();
  }

  private static boolean ends(Event event) {
    return holder(event).isPresent()
        || event instanceof UseEvent.Returned
        || event instanceof UseEvent.Moved
        || event instanceof EndEvent.Retired
        || event instanceof EndEvent.Disposed;
  }

  private static Optional<Moment> first(List<Moment> ends, Moment after) {
    int low = 0;
    int high = ends.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (ends.get(middle).certainlyAfter(after)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low < ends.size() ? Optional.of(ends.get(low)) : Optional.empty();
  }
}
