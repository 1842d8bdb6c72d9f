package org.ensemblerules.tables.codec;

import java.util.Optional;
import org.ensemblerules.history.Event;
import org.ensemblerules.tables.json.ObjectCursor;

/** Reads the texts of events, each alone, so that its fault is found beside one of the date. */
final class EventTexts {
  private EventTexts() {}

  /** Reads who has something, or who decided. */
  static Optional<String> name(ObjectCursor event, String field) {
    return event.required(field, at -> at.parsed(text -> Event.requireName(field, text)));
  }

  /** Reads what was done or decided, or why. */
  static Optional<String> words(ObjectCursor event, String field) {
    return event.required(field, at -> at.parsed(text -> Event.requireWords(field, text)));
  }
}
