package org.ensemblerules.history;

import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Doer;

/**
 * Something that happened to an element: in use ({@link UseEvent}), what it met ({@link
 * ExposureEvent}), what somebody looked at ({@link LookEvent}) or did to it ({@link WorkEvent}),
 * what somebody decided ({@link DecisionEvent}), and its end ({@link EndEvent}).
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
}
