package org.ensemblerules.history;

import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.source.InvalidValueException;

/**
 * Something that happened to an element: in use ({@link UseEvent}), what it met ({@link
 * ExposureEvent}), what somebody looked at ({@link LookEvent}) or did to it ({@link WorkEvent}),
 * what somebody decided ({@link DecisionEvent}), and its end ({@link EndEvent}).
 *
 * @since 0.1
 */
public sealed interface Event
    permits DecisionEvent, EndEvent, ExposureEvent, LookEvent, UseEvent, WorkEvent {
  /**
   * Returns the name of this kind of event. It orders events of one day and stands in answers, so
   * it stays as it is whatever the type is called.
   *
   * @return the name, as in {@code Inspected}; never null
   */
  String name();

  /**
   * Returns when it happened.
   *
   * @return the moment; never null
   */
  Moment when();

  /**
   * Returns who did it, where the record has to say so.
   *
   * @return the doer; empty for what needs none
   */
  default Optional<Doer> doer() {
    return Optional.empty();
  }

  /**
   * Returns the findings that it was done for.
   *
   * @return an unmodifiable set; empty for what is done for no finding
   */
  default Set<FindingId> answers() {
    return Set.of();
  }

  /**
   * Checks the name of somebody or of a place that an event tells.
   *
   * @param field what it is called in the refusal; not null
   * @param name the name, 1 to 200 characters; not null
   * @return the name
   * @throws InvalidValueException if it is blank or too long
   */
  static String requireName(String field, String name) {
    return InvalidValueException.requireText(field, name, 200);
  }

  /**
   * Checks what an event tells in words: what was done or decided, or why.
   *
   * @param field what it is called in the refusal; not null
   * @param words the words, 1 to 300 characters; not null
   * @return the words
   * @throws InvalidValueException if they are blank or too long
   */
  static String requireWords(String field, String words) {
    return InvalidValueException.requireText(field, words, 300);
  }
}
