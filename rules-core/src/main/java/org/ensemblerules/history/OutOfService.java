package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** When an element was out of service for the time being. */
public final class OutOfService {
  private OutOfService() {}

  /**
   * Lists what took an element out of service and was not undone by a day. Only what came certainly
   * later, and certainly by that day, undoes it.
   *
   * @param history what happened to it; not null
   * @param asOf the day asked about; not null
   * @return the events that took it out, or may have by that day, in the order of the history
   */
  public static List<Event.TakenOut> openAt(History history, LocalDate asOf) {
    Optional<When> back =
        history.events(Event.BackInService.class).stream()
            .map(Event::when)
            .filter(when -> when.date().latest().map(day -> !day.isAfter(asOf)).orElse(false))
            .max(When.LAST_CERTAIN);
    return history.events(Event.TakenOut.class).stream()
        .filter(out -> out.when().date().earliest().map(day -> !day.isAfter(asOf)).orElse(true))
        .filter(out -> !back.map(when -> when.certainlyAfter(out.when())).orElse(false))
        .collect(ImmutableList.toImmutableList());
  }
}
