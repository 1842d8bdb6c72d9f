package org.ensemblerules.testkit;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.ensemblerules.history.Event;

/** All that can happen to an element. */
public final class EventKinds {
  private EventKinds() {}

  /**
   * Lists the records of events, by what they are about.
   *
   * @return the records
   */
  public static List<Class<? extends Event>> all() {
    return below(Event.class)
        .<Class<? extends Event>>map(type -> type.asSubclass(Event.class))
        .toList();
  }

  private static Stream<Class<?>> below(Class<?> type) {
    return type.isSealed()
        ? Arrays.stream(type.getPermittedSubclasses()).flatMap(EventKinds::below)
        : Stream.of(type);
  }
}
