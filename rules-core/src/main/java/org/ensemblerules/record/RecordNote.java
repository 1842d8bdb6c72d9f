package org.ensemblerules.record;

import java.util.Objects;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Moment;
import org.ensemblerules.source.InvalidValueException;

/**
 * What a file says of an event beyond the history: the condition in which it was issued, what an
 * inspection or a cleaning found, why it was cleaned, what a repair did.
 *
 * @param item the item whose event it is about; not null
 * @param of the moment of that event, as the history has it; not null
 * @param detail what it tells; not null
 * @param text in words, 1 to 500 characters; not null
 * @since 0.1
 */
public record RecordNote(RecordItem item, Moment of, RecordDetail detail, String text) {
  /**
   * Checks the values.
   *
   * @throws InvalidValueException if the detail is not told by notes of the item, or the text is
   *     blank or too long
   */
  public RecordNote {
    Objects.requireNonNull(item, "item");
    Objects.requireNonNull(of, "of");
    Objects.requireNonNull(detail, "detail");
    InvalidValueException.require(
        toldByNotes(item, detail),
        "RecordNote.detail",
        detail + " of " + item,
        "CONDITION of ISSUE_DATE_AND_CONDITION, FINDINGS of ADVANCED_INSPECTIONS or"
            + " ADVANCED_CLEANINGS, REASON of CLEANING_REASON_AND_DOER, DESCRIPTION of REPAIRS");
    requireText(text);
  }

  /**
   * Checks a text alone.
   *
   * @param text the text, 1 to 500 characters; not null
   * @return the text
   * @throws InvalidValueException if it is blank or too long
   */
  public static String requireText(String text) {
    return InvalidValueException.requireText("RecordNote.text", text, 500);
  }

  private static boolean toldByNotes(RecordItem item, RecordDetail detail) {
    return switch (detail) {
      case CONDITION, FINDINGS, REASON, DESCRIPTION -> item.details().contains(detail);
      default -> false;
    };
  }

  /**
   * Tells whether it is about an event.
   *
   * @param event the event; not null
   * @return true if the item records such events and the moments are the same; never for an event
   *     without a date, which nothing can be told apart by
   */
  public boolean isAbout(Event event) {
    return item.records(event) && of.equals(event.when()) && of.date().earliest().isPresent();
  }
}
