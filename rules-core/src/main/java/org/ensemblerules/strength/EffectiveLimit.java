package org.ensemblerules.strength;

import java.util.Optional;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.ExactQuantity;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rational;

/**
 * The limit that a purpose asks for: the printed one, or a share of a value when new: {@code L = p
 * x0 / 100}, p percent of the value x0, exact and in the unit of x0. That share is the owner's own;
 * no standard was seen that sets one.
 *
 * @param bound on which side values conform
 * @param value the exact limit
 * @param printed the limit as printed; empty for a share
 * @param whenNew the value when new that the share is of; empty for a printed limit
 */
record EffectiveLimit(
    Bound bound, ExactQuantity value, Optional<Limit> printed, Optional<Quantity> whenNew) {

  static EffectiveLimit of(RequirementRow row, Purpose purpose, Direction direction)
      throws Stopped {
    Limit limit = row.limit();
    if (!(purpose instanceof Purpose.AtLeastShareOfNewValue share)) {
      return new EffectiveLimit(
          limit.bound(), limit.value().exactly(), Optional.of(limit), Optional.empty());
    }
    if (limit.bound() != Bound.MINIMUM) {
      throw new Stopped(
          NoResultReason.RULE_DOES_NOT_FIT,
          "a share of the value when new is a least value; the requirement is " + limit);
    }
    Quantity whenNew = share.whenNew().get(direction);
    if (whenNew == null || !whenNew.isPositive()) {
      throw new Stopped(
          NoResultReason.VALUE_WHEN_NEW_MISSING,
          direction + " has " + (whenNew == null ? "none" : whenNew));
    }
    if (whenNew.unit().dimension() != row.property().dimension()) {
      throw new Stopped(
          NoResultReason.UNIT_DOES_NOT_FIT,
          "value when new "
              + whenNew
              + "; a unit of dimension "
              + row.property().dimension()
              + " is allowed");
    }
    Rational value =
        Rational.of(whenNew.value()).times(Rational.of(share.percent().movePointLeft(2)));
    return new EffectiveLimit(
        Bound.MINIMUM,
        new ExactQuantity(value, whenNew.unit()),
        Optional.empty(),
        Optional.of(whenNew));
  }

  /** A value that is compared, printed to one place more than the limit is written to. */
  Figure compared(String name, Rational observed) {
    return compared(Figure.of(name, observed, Optional.of(value.unit())));
  }

  /** The same of a value worked out. */
  Figure compared(Figure figure) {
    return figure.shownTo(places(), value.value());
  }

  /** How many places a mean has beside this limit: one more than the limit itself. */
  int places() {
    int written =
        printed.map(Limit::value).or(() -> whenNew).map(each -> each.value().scale()).orElse(0);
    return Math.max(written, 0) + 1;
  }

  /**
   * How far inside the limit L a value x in its unit lies: {@code x - L} for a minimum, {@code L -
   * x} for a maximum, exact; negative outside.
   */
  Rational margin(Rational observed) {
    return bound == Bound.MINIMUM ? observed.minus(value.value()) : value.value().minus(observed);
  }
}
