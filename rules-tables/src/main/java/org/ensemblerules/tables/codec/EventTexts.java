package org.ensemblerules.tables.codec;

import java.util.Optional;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.tables.json.ObjectCursor;

/** Reads the texts of events, each alone, so that its fault is found beside one of the date. */
final class EventTexts {
  private static final Moment ANY_TIME = Moment.on(MarkedDate.unknown());

  private EventTexts() {}

  /** Reads who has something, or who decided. */
  static Optional<String> name(ObjectCursor event, String field) {
    return event.required(
        field, at -> at.parsed(text -> new UseEvent.Issued(ANY_TIME, text).holder()));
  }

  /** Reads what was done or decided, or why. */
  static Optional<String> words(ObjectCursor event, String field) {
    return event.required(
        field, at -> at.parsed(text -> new EndEvent.Retired(ANY_TIME, text).why()));
  }
}
