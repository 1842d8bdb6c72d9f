package org.ensemblerules.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import javax.measure.MetricPrefix;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class UnitConversionProperties {
  /** The definitions of the units, built anew from SI in a reference library (indriya 2.2.4). */
  private static final Map<Unit, javax.measure.Unit<?>> REFERENCE = reference();

  private static Map<Unit, javax.measure.Unit<?>> reference() {
    var inch = MetricPrefix.MILLI(Units.METRE).multiply(254).divide(10);
    var poundForce =
        Units.NEWTON.multiply(45359237L).divide(100000000L).multiply(980665).divide(100000);
    Map<Unit, javax.measure.Unit<?>> units = new EnumMap<>(Unit.class);
    units.put(Unit.MILLIMETER, MetricPrefix.MILLI(Units.METRE));
    units.put(Unit.CENTIMETER, MetricPrefix.CENTI(Units.METRE));
    units.put(Unit.METER, Units.METRE);
    units.put(Unit.INCH, inch);
    units.put(Unit.FOOT, inch.multiply(12));
    units.put(Unit.SQUARE_CENTIMETER, MetricPrefix.CENTI(Units.METRE).pow(2));
    units.put(Unit.SQUARE_INCH, inch.pow(2));
    units.put(Unit.SQUARE_METER, Units.SQUARE_METRE);
    units.put(Unit.SQUARE_FOOT, inch.multiply(12).pow(2));
    units.put(Unit.NEWTON, Units.NEWTON);
    units.put(Unit.KILONEWTON, MetricPrefix.KILO(Units.NEWTON));
    units.put(Unit.POUND_FORCE, poundForce);
    units.put(Unit.PASCAL, Units.PASCAL);
    units.put(Unit.KILOPASCAL, MetricPrefix.KILO(Units.PASCAL));
    units.put(Unit.POUND_FORCE_PER_SQUARE_INCH, poundForce.divide(inch.pow(2)));
    units.put(Unit.KELVIN, Units.KELVIN);
    units.put(Unit.DEGREE_CELSIUS, Units.CELSIUS);
    units.put(
        Unit.DEGREE_FAHRENHEIT, Units.KELVIN.multiply(5).divide(9).shift(new BigDecimal("459.67")));
    units.put(Unit.SECOND, Units.SECOND);
    units.put(Unit.MINUTE, Units.MINUTE);
    units.put(Unit.HOUR, Units.HOUR);
    units.put(Unit.GRAM_PER_SQUARE_METER, Units.GRAM.divide(Units.SQUARE_METRE));
    units.put(
        Unit.OUNCE_PER_SQUARE_YARD,
        Units.GRAM.multiply(45359237L).divide(100000L).divide(16).divide(inch.multiply(36).pow(2)));
    units.put(Unit.NEWTON_PER_CENTIMETER, Units.NEWTON.divide(MetricPrefix.CENTI(Units.METRE)));
    units.put(Unit.POUND_FORCE_PER_INCH, poundForce.divide(inch));
    units.put(Unit.JOULE, Units.JOULE);
    units.put(Unit.FOOT_POUND_FORCE, poundForce.multiply(inch.multiply(12)));
    units.put(Unit.ONE, tech.units.indriya.AbstractUnit.ONE);
    units.put(Unit.PERCENT, Units.PERCENT);
    return units;
  }

  @Property(tries = 3000)
  void conversionsAgreeWithAReferenceLibrary(
      @ForAll @BigRange(min = "-100000", max = "100000") @Scale(6) BigDecimal value,
      @ForAll @IntRange(max = 10_000) int pick,
      @ForAll @IntRange(max = 10_000) int pickOther)
      throws Exception {
    var units = REFERENCE.keySet().stream().toList();
    Unit from = units.get(pick % units.size());
    var fitting = units.stream().filter(unit -> unit.dimension() == from.dimension()).toList();
    Unit to = fitting.get(pickOther % fitting.size());

    Number theirs =
        REFERENCE
            .get(from)
            .getConverterToAny(REFERENCE.get(to))
            .convert(Quantities.getQuantity(value, REFERENCE.get(from)).getValue());

    double ours = new Quantity(value, from).in(to).value().toDouble();
    // Their arithmetic keeps 34 digits at most, and ours is turned to a double only here.
    assertThat(ours)
        .isCloseTo(
            theirs.doubleValue(),
            org.assertj.core.data.Offset.offset(Math.max(1e-9, Math.abs(ours) * 1e-14)));
  }

  @Property
  void convertingThereAndBackChangesNothing(
      @ForAll @BigRange(min = "-100000", max = "100000") @Scale(8) BigDecimal value,
      @ForAll Unit from,
      @ForAll Unit to) {
    if (from.dimension() == to.dimension()) {
      Quantity quantity = new Quantity(value, from);
      assertThat(quantity.in(to).in(from)).isEqualTo(quantity.exactly());
      assertThat(quantity.in(to).compareSize(quantity.exactly())).isZero();
    }
  }

  /** BigDecimal's own HALF_EVEN and HALF_UP, for places that are powers of ten. */
  @Property
  void roundingToAPlaceAgreesWithBigDecimal(
      @ForAll @BigRange(min = "-100000", max = "100000") @Scale(5) BigDecimal value,
      @ForAll @IntRange(min = -3, max = 5) int scale) {
    BigDecimal interval = BigDecimal.ONE.movePointLeft(scale);
    assertThat(new Rounding(interval, Ties.HALF_EVEN).round(value))
        .isEqualByComparingTo(value.setScale(scale, RoundingMode.HALF_EVEN));
    assertThat(new Rounding(interval, Ties.HALF_UP).round(value))
        .isEqualByComparingTo(value.setScale(scale, RoundingMode.HALF_UP));
  }

  /** ASTM E29 for the intervals 50, 5, 0.5: double, round to the nearest 100, 10, 1, halve. */
  @Property
  void roundingToFivesIsDoublingRoundingAndHalving(
      @ForAll @BigRange(min = "-100000", max = "100000") @Scale(2) BigDecimal value,
      @ForAll @IntRange(min = -1, max = 2) int power) {
    BigDecimal interval = new BigDecimal(5).movePointRight(power);
    BigDecimal two = new BigDecimal(2);
    BigDecimal doubled = value.multiply(two).setScale(-power - 1, RoundingMode.HALF_EVEN);
    assertThat(new Rounding(interval, Ties.HALF_EVEN).round(value))
        .isEqualByComparingTo(doubled.divide(two));
  }

  @Test
  void symbolsAreUnique() {
    Set<String> symbols = new HashSet<>();
    for (Unit unit : Unit.values()) {
      assertThat(symbols.add(unit.symbol())).as(unit.symbol()).isTrue();
      assertThat(Unit.ofSymbol(unit.symbol())).contains(unit);
    }
    assertThat(Unit.ofSymbol("furlong")).isEmpty();
  }
}
