package org.ensemblerules.retirement;

import java.util.Objects;
import org.ensemblerules.history.Moment;
import org.ensemblerules.source.InvalidValueException;

/**
 * An element under custody went from one to another.
 *
 * @param when when; not null
 * @param from from whom, 1 to 200 characters; not null
 * @param to to whom, 1 to 200 characters; not null
 * @since 0.1
 */
public record Handover(Moment when, String from, String to) {
  /**
   * Checks the texts.
   *
   * @throws InvalidValueException if a name is blank or too long
   */
  public Handover {
    Objects.requireNonNull(when, "when");
    CustodyRecord.requireName("Handover.from", from);
    CustodyRecord.requireName("Handover.to", to);
  }
}
