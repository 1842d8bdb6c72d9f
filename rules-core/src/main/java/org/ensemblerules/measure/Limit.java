package org.ensemblerules.measure;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;

/**
 * A limit as published: unit and digits kept. Where a document prints a second unit beside it, that
 * number is information: it is neither derived from the limit nor ever compared for a verdict, as
 * the two often differ (22 lbf is less than 100 N).
 *
 * @param bound whether it is the least or the largest value allowed; not null
 * @param value the limit, the number printed first; not null
 * @param alsoPrinted the same limit as printed in a second unit; empty if none is
 * @since 0.1
 */
public record Limit(Bound bound, Quantity value, Optional<Quantity> alsoPrinted) {
  /**
   * Checks the units.
   *
   * @throws InvalidValueException if the second unit measures something else
   */
  public Limit {
    Objects.requireNonNull(bound, "bound");
    Objects.requireNonNull(value, "value");
    alsoPrinted.ifPresent(
        second ->
            InvalidValueException.require(
                second.unit().dimension() == value.unit().dimension(),
                "Limit.alsoPrinted",
                second,
                "a quantity of dimension " + value.unit().dimension()));
  }

  /**
   * Makes a least value.
   *
   * @param value the limit as decimal text; not null
   * @param unit its unit; not null
   * @return the limit; never null
   * @throws InvalidValueException if the text is no decimal number
   */
  public static Limit atLeast(String value, Unit unit) {
    return new Limit(Bound.MINIMUM, Quantity.of(value, unit), Optional.empty());
  }

  /**
   * Makes a largest value.
   *
   * @param value the limit as decimal text; not null
   * @param unit its unit; not null
   * @return the limit; never null
   * @throws InvalidValueException if the text is no decimal number
   */
  public static Limit atMost(String value, Unit unit) {
    return new Limit(Bound.MAXIMUM, Quantity.of(value, unit), Optional.empty());
  }

  /**
   * Notes the number printed in a second unit.
   *
   * @param second the second number; not null
   * @return this limit with it; never null
   * @throws InvalidValueException if the second unit measures something else
   */
  public Limit alsoPrinted(Quantity second) {
    return new Limit(bound, value, Optional.of(second));
  }

  /**
   * The outcome of a comparison, with every number used.
   *
   * @param met whether the value conforms
   * @param limit the limit compared with; not null
   * @param observed the full value, converted exactly to the limit's unit; not null
   * @param compared the rounded value that was compared; empty by the absolute method
   * @param secondUnitWouldDiffer whether the unrounded value lies between the two printed numbers,
   *     so that the one in the second unit, which does not count, would answer otherwise
   */
  public record Answer(
      boolean met,
      Limit limit,
      ExactQuantity observed,
      Optional<BigDecimal> compared,
      boolean secondUnitWouldDiffer) {}

  /**
   * Compares a measured value with the limit.
   *
   * @param observed the full value, of the limit's dimension; not null
   * @param method how to compare; not null
   * @return the answer; never null
   * @throws InvalidValueException if the dimensions differ
   */
  public Answer compare(Quantity observed, ComparisonMethod method) {
    return compare(observed.exactly(), method);
  }

  /**
   * Compares an exact value with the limit.
   *
   * @param observed the full value, of the limit's dimension; not null
   * @param method how to compare; not null
   * @return the answer; never null
   * @throws InvalidValueException if the dimensions differ
   */
  public Answer compare(ExactQuantity observed, ComparisonMethod method) {
    ExactQuantity here = observed.in(value.unit());
    Optional<BigDecimal> rounded = rounding(method).map(rounding -> rounding.round(here.value()));
    boolean met =
        rounded
            .map(number -> bound.met(number, value.value()))
            .orElseGet(() -> bound.met(here.value(), Rational.of(value.value())));
    return new Answer(met, this, here, rounded, secondUnitWouldDiffer(here));
  }

  /**
   * Tells whether the two printed numbers can be roundings of one and the same value: whether
   * {@code [v - h, v + h]} of each, with h half a unit of the last place it is written to, have a
   * size in common, compared exactly. Our own test of what is printed; no source has it.
   *
   * @return true if they can, or if there is only one
   */
  public boolean printedNumbersAgree() {
    return alsoPrinted
        .map(
            second -> {
              Unit unit = value.unit();
              return edge(value, -1).in(unit).compareSize(edge(second, 1).in(unit)) <= 0
                  && edge(second, -1).in(unit).compareSize(edge(value, 1).in(unit)) <= 0;
            })
        .orElse(true);
  }

  /**
   * Tells whether values may be compared with this limit by a method. A value rounded to an
   * interval coarser than the last place of the limit could pass though it is far from it.
   *
   * @param method the method; not null
   * @return false if it rounds to an interval coarser than the last place of the limit
   */
  public boolean allows(ComparisonMethod method) {
    return !(method instanceof ComparisonMethod.RoundedTo to)
        || !to.rounding().isCoarserThanLastPlaceOf(value.value());
  }

  private static ExactQuantity edge(Quantity printed, int side) {
    Rational half =
        Rational.of(Rounding.toLastPlaceOf(printed.value(), Ties.HALF_EVEN).interval())
            .times(Rational.of(side))
            .dividedBy(Rational.of(2));
    return new ExactQuantity(Rational.of(printed.value()).plus(half), printed.unit());
  }

  private boolean secondUnitWouldDiffer(ExactQuantity observed) {
    return alsoPrinted
        .map(
            second ->
                bound.met(observed.value(), Rational.of(value.value()))
                    != bound.met(observed.value(), second.in(value.unit()).value()))
        .orElse(false);
  }

  private Optional<Rounding> rounding(ComparisonMethod method) {
    if (method instanceof ComparisonMethod.RoundedTo to) {
      return Optional.of(to.rounding());
    }
    if (method instanceof ComparisonMethod.RoundedToLimit to) {
      return Optional.of(Rounding.toLastPlaceOf(value.value(), to.ties()));
    }
    return Optional.empty();
  }

  @Override
  public String toString() {
    return (bound == Bound.MINIMUM ? "at least " : "at most ")
        + value
        + alsoPrinted.map(second -> " (also printed: " + second + ")").orElse("");
  }

  /**
   * Compares the limit with another.
   *
   * @param other the other; not null
   * @return how strict this one is, set against the other; never null
   */
  public Comparison compareStrictness(Limit other) {
    return compare(other, value.exactly(), other.value.exactly());
  }

  /**
   * Compares the limit with another where values may also be rounded to the last place of the one
   * that they are held to: then 99.5 N meets 100 N, but neither 99.9 N nor 100.0 N. Beside the
   * limits themselves, {@code L - h} of minima and {@code L + h} of maxima are compared, h half
   * that place.
   *
   * @param other the other; not null
   * @return how strict this one is by both readings, set against the other; never null
   */
  public Comparison compareStrictnessRounded(Limit other) {
    int side = bound == Bound.MINIMUM ? -1 : 1;
    return compareStrictness(other).and(compare(other, edge(value, side), edge(other.value, side)));
  }

  private Comparison compare(Limit other, ExactQuantity here, ExactQuantity there) {
    if (bound != other.bound || here.unit().dimension() != there.unit().dimension()) {
      return Comparison.UNDECIDED;
    }
    int size = here.compareSize(there);
    return bound == Bound.MINIMUM
        ? Comparison.moreIsStricter(size, 0)
        : Comparison.lessIsStricter(size, 0);
  }
}
