package org.ensemblerules.history;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;

/**
 * Who held an element, from when until when.
 *
 * @param holder to whom it was issued, or to whom or where it went, 1 to 200 characters; not null
 * @param from since when; not null
 * @param until when it was returned, went elsewhere or was issued anew, certainly later; empty if
 *     nothing on record ends it
 * @since 0.1
 */
public record HolderSpan(String holder, Moment from, Optional<Moment> until) {
  /**
   * Checks the text.
   *
   * @throws InvalidValueException if the holder is blank or too long
   */
  public HolderSpan {
    InvalidValueException.requireText("HolderSpan.holder", holder, 200);
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(until, "until");
  }
}
