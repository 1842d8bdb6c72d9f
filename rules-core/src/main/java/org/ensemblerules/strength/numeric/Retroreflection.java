package org.ensemblerules.strength.numeric;

import java.math.BigDecimal;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.ExactQuantity;
import org.ensemblerules.measure.NumberSize;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;

/**
 * The coefficient of retroreflection from laboratory readings.
 *
 * <p>{@code R = m1 d^2 / (m2 A)}, exact, in cd/(lx m2), with d in meters and A in square meters.
 *
 * @see org.ensemblerules.LaboratoryRules#retroreflection
 */
public final class Retroreflection {
  private Retroreflection() {}

  /**
   * Works out {@code R = m1 d^2 / (m2 A)}.
   *
   * @param receiver m1, the reading at the receiver; zero or more; not null
   * @param source m2, the reading of the source at the specimen, on the same scale; above zero; not
   *     null
   * @param distance d, above zero; not null
   * @param area A of the specimen, above zero; not null
   * @return the exact coefficient in cd/(lx m2); never null
   * @throws InvalidValueException if a number is out of range or no length or area
   */
  public static ExactQuantity coefficient(
      BigDecimal receiver, BigDecimal source, Quantity distance, Quantity area) {
    InvalidValueException.require(
        receiver.signum() >= 0, "Retroreflection.receiver", receiver, "zero or more");
    InvalidValueException.require(
        source.signum() > 0, "Retroreflection.source", source, "above zero");
    NumberSize.require("Retroreflection.receiver", receiver);
    NumberSize.require("Retroreflection.source", source);
    require("Retroreflection.distance", distance, Dimension.LENGTH);
    require("Retroreflection.area", area, Dimension.AREA);
    Rational meters = distance.in(Unit.METER).value();
    Rational squareMeters = area.in(Unit.SQUARE_METER).value();
    return new ExactQuantity(
        Rational.of(receiver)
            .times(meters)
            .times(meters)
            .dividedBy(Rational.of(source).times(squareMeters)),
        Unit.CANDELA_PER_LUX_SQUARE_METER);
  }

  private static void require(String field, Quantity given, Dimension dimension) {
    InvalidValueException.require(
        given.unit().dimension() == dimension && given.isPositive(),
        field,
        given,
        "of dimension " + dimension + ", above zero");
  }
}
