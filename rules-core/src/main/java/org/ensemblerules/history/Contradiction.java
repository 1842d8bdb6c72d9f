package org.ensemblerules.history;

import java.util.Objects;

/**
 * Something that no reading of a history's dates makes possible.
 *
 * @param kind what is wrong; not null
 * @param event the event that cannot be; not null
 * @param found what was found, in words; not null
 * @param allowed what would be possible, in words; not null
 * @since 0.1
 */
public record Contradiction(Kind kind, Event event, String found, String allowed) {
  /** The kinds of contradiction. */
  public enum Kind {
    /** Something happened to it before its first part was made. */
    BEFORE_MADE,
    /** Something happened to it after it was disposed of. */
    AFTER_DISPOSAL,
    /** It went on being used or cared for after it was retired. */
    AFTER_RETIREMENT,
    /** It was issued to somebody while somebody else held it. */
    SECOND_HOLDER,
    /** It was put back in service, and had not been taken out. */
    BACK_WITHOUT_TAKEN_OUT,
    /** It is said to have come after something of its day, and to have been before it in order. */
    STATED_ORDER
  }

  /** Checks for nulls. */
  public Contradiction {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(event, "event");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(allowed, "allowed");
  }

  /**
   * Returns where it was found.
   *
   * @return the history and the name of the event; never null
   */
  public String field() {
    return "history " + event.name();
  }

  /**
   * Returns it on one line.
   *
   * @return the text, as in {@code AFTER_DISPOSAL, 2025-06-01; possible: nothing after it was
   *     disposed of, 2025-03-03}; never null
   */
  public String text() {
    return kind + ", " + found + "; possible: " + allowed;
  }
}
