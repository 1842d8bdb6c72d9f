package org.ensemblerules.care;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.measure.Rounding;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;

/**
 * The force with which a turning drum presses on what is in it, as a multiple of standard gravity:
 * {@code G = r (2 pi n)^2 / g}, with the radius r, n turns per time and g of 9.806 65 m/s2. Taking
 * the drum's diameter for its radius doubles it, so each has a name of its own.
 *
 * <p>Exact but for pi, which lies between two fractions less than 1e-75 apart; each answer takes
 * the end that is stricter. A radius has at most 1000 m, a speed at most 1000000 r/min. The formula
 * is plain mechanics; printed examples come out within the rounding of their own constants.
 *
 * @param radius half the inner diameter of the drum, a length above zero; not null
 * @param speed how fast it turns, zero or more; not null
 * @since 0.1
 */
public record ExtractorForce(Quantity radius, Quantity speed) {
  // 1 / (30^2 x 9.806 65 x 1000): of radians per second from turns per minute, of meters per
  // second squared, and of millimeters. Times pi squared it is the force of 1 mm at 1 r/min.
  private static final Rational PER_PI_SQUARED =
      Rational.of(1).dividedBy(Rational.of(900)).dividedBy(Rational.of(new BigDecimal("9806.65")));
  // Far beyond any machine; within them the force can always be written as a quantity.
  private static final Quantity LARGEST_RADIUS = Quantity.of("1000", Unit.METER);
  private static final Quantity FASTEST = Quantity.of("1000000", Unit.TURN_PER_MINUTE);
  private static final Rational LEAST = PER_PI_SQUARED.times(Pi.LOWER).times(Pi.LOWER);
  private static final Rational MOST = PER_PI_SQUARED.times(Pi.UPPER).times(Pi.UPPER);

  /**
   * Checks the values.
   *
   * @throws InvalidValueException if the radius is no length above zero, or the speed no rotation
   *     of zero or more
   */
  public ExtractorForce {
    requireLength("ExtractorForce.radius", radius);
    InvalidValueException.require(
        radius.compareSize(LARGEST_RADIUS) <= 0,
        "ExtractorForce.radius",
        radius,
        "at most " + LARGEST_RADIUS);
    InvalidValueException.require(
        speed.unit().dimension() == Dimension.ROTATION && speed.value().signum() >= 0,
        "ExtractorForce.speed",
        speed,
        "zero or more, of dimension " + Dimension.ROTATION);
    InvalidValueException.require(
        speed.compareSize(FASTEST) <= 0, "ExtractorForce.speed", speed, "at most " + FASTEST);
  }

  private static void requireLength(String field, Quantity length) {
    InvalidValueException.require(
        length.unit().dimension() == Dimension.LENGTH && length.isPositive(),
        field,
        length,
        "above zero, of dimension " + Dimension.LENGTH);
  }

  /**
   * Takes the radius of the drum.
   *
   * @param radius half the inner diameter, a length above zero; not null
   * @param speed how fast it turns, zero or more; not null
   * @return the force; never null
   * @throws InvalidValueException if a value is out of range
   */
  public static ExtractorForce ofRadius(Quantity radius, Quantity speed) {
    return new ExtractorForce(radius, speed);
  }

  /**
   * Takes the diameter of the drum.
   *
   * @param diameter the whole inner diameter, a length above zero; not null
   * @param speed how fast it turns, zero or more; not null
   * @return the force; never null
   * @throws InvalidValueException if a value is out of range
   */
  public static ExtractorForce ofDiameter(Quantity diameter, Quantity speed) {
    return new ExtractorForce(radiusOf(diameter), speed);
  }

  /**
   * Halves a diameter.
   *
   * @param diameter the whole inner diameter, a length above zero; not null
   * @return the radius, in the same unit; never null
   * @throws InvalidValueException if the diameter is no length above zero
   */
  public static Quantity radiusOf(Quantity diameter) {
    requireLength("diameter", diameter);
    return new Quantity(diameter.value().multiply(new BigDecimal("0.5")), diameter.unit());
  }

  /**
   * Returns the force as a number.
   *
   * @param rounding to which place, in multiples of standard gravity; not null
   * @return the rounded force, in {@link Unit#STANDARD_GRAVITY}; never null
   */
  public Quantity rounded(Rounding rounding) {
    // Pi is known to 75 places. Were that ever too few, the stricter of the two is the larger.
    return new Quantity(rounding.round(most()), Unit.STANDARD_GRAVITY);
  }

  /**
   * Tells whether the force is surely not above a limit, by the absolute method.
   *
   * @param limit the largest force allowed, zero or more; not null
   * @return true if it is not above
   * @throws InvalidValueException if the limit is no multiple of gravity, or negative
   */
  public boolean isAtMost(Quantity limit) {
    return most().compareTo(gravities(limit)) <= 0;
  }

  /**
   * Tells whether the force is surely not below a limit, by the absolute method.
   *
   * @param limit the least force allowed, zero or more; not null
   * @return true if it is not below
   * @throws InvalidValueException if the limit is no multiple of gravity, or negative
   */
  public boolean isAtLeast(Quantity limit) {
    return force(LEAST).compareTo(gravities(limit)) >= 0;
  }

  private Rational most() {
    return force(MOST);
  }

  private Rational force(Rational constant) {
    Rational turns = speed.in(Unit.TURN_PER_MINUTE).value();
    return constant.times(radius.in(Unit.MILLIMETER).value()).times(turns).times(turns);
  }

  private static Rational gravities(Quantity limit) {
    InvalidValueException.require(
        limit.unit().dimension() == Dimension.ACCELERATION_RATIO && limit.value().signum() >= 0,
        "limit",
        limit,
        "zero or more, of dimension " + Dimension.ACCELERATION_RATIO);
    return limit.in(Unit.STANDARD_GRAVITY).value();
  }

  /**
   * Returns the largest whole number of turns per minute whose force is not above a limit L: {@code
   * sqrt(L g / r) / (2 pi)}, rounded down.
   *
   * @param limit the largest force allowed, zero or more; not null
   * @param radius half the inner diameter of the drum, a length above zero; not null
   * @return the speed in {@link Unit#TURN_PER_MINUTE}; never null
   * @throws InvalidValueException if a value is out of range
   */
  public static Quantity largestWholeSpeed(Quantity limit, Quantity radius) {
    requireLength("radius", radius);
    Rational square = gravities(limit).dividedBy(MOST.times(radius.in(Unit.MILLIMETER).value()));
    BigInteger turns = square.numerator().divide(square.denominator()).sqrt();
    return new Quantity(new BigDecimal(turns), Unit.TURN_PER_MINUTE);
  }

  /**
   * Returns the largest whole number of turns per minute of a drum whose diameter is known.
   *
   * @param limit the largest force allowed, zero or more; not null
   * @param diameter the whole inner diameter of the drum, a length above zero; not null
   * @return the speed in {@link Unit#TURN_PER_MINUTE}; never null
   * @throws InvalidValueException if a value is out of range
   */
  public static Quantity largestWholeSpeedOfDiameter(Quantity limit, Quantity diameter) {
    return largestWholeSpeed(limit, radiusOf(diameter));
  }

  @Override
  public String toString() {
    return rounded(Rounding.toNearest("0.01")) + " (radius " + radius + " at " + speed + ")";
  }
}
