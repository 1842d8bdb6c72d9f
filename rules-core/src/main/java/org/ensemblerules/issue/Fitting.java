package org.ensemblerules.issue;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;

/**
 * That a member put two elements on and somebody looked at where they meet. It speaks of these two
 * elements on this member only.
 *
 * @param member whose set, 1 to 200 characters; not null
 * @param place where the two meet; not null
 * @param one the element on one side; not null
 * @param other the element on the other side; not null
 * @param on when; not null
 * @param good whether they met as they should; not null
 * @param overlap by how much they overlapped in the worst posture, a length of 0 or more; empty if
 *     not measured
 * @since 0.1
 */
public record Fitting(
    String member,
    Join.Place place,
    ElementId one,
    ElementId other,
    MarkedDate on,
    YesNoUnknown good,
    Optional<Quantity> overlap) {
  /**
   * Checks the text and the length.
   *
   * @throws InvalidValueException if the member is blank or too long, or the overlap no length of 0
   *     or more
   */
  public Fitting {
    InvalidValueException.requireText("Fitting.member", member, 200);
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(one, "one");
    Objects.requireNonNull(other, "other");
    Objects.requireNonNull(on, "on");
    Objects.requireNonNull(good, "good");
    overlap.ifPresent(
        length ->
            InvalidValueException.require(
                length.unit().dimension() == Dimension.LENGTH && length.value().signum() >= 0,
                "Fitting.overlap",
                length,
                "a length of 0 or more"));
  }

  /** Whether it shows what a join asks for: yes, no, or unknown where something is missing. */
  YesNoUnknown shows(Join join) {
    if (good == YesNoUnknown.NO
        || join.leastOverlap()
            .flatMap(least -> overlap.map(measured -> measured.compareSize(least) < 0))
            .orElse(false)) {
      return YesNoUnknown.NO;
    }
    return good == YesNoUnknown.YES && (join.leastOverlap().isEmpty() || overlap.isPresent())
        ? YesNoUnknown.YES
        : YesNoUnknown.UNKNOWN;
  }
}
