package org.ensemblerules.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;

/**
 * A unit with its exact factor, and on temperature scales its exact zero, to the base unit of its
 * dimension: base = (value + offset) x factor.
 *
 * <p>Every factor is exact by definition: inch 25.4 mm (40 CFR 1066.20(b)(3)); avoirdupois pound
 * 0.453 592 37 kg and yard 0.9144 m (international yard and pound agreement); standard gravity
 * 9.806 65 m/s2, hence the pound-force 4.448 221 615 260 5 N; 0 °C is 273.15 K (40 CFR 1066.20(c));
 * thermochemical calorie 4.184 J; US gallon 231 cubic inches (NIST Handbook 44, Appendix C,
 * remembered). Factors of composed units are worked out from these, without rounding. Columns of
 * water are the conventional ones, 98.0665 Pa for one centimeter, not those of water at some
 * temperature.
 *
 * @since 0.1
 */
public enum Unit {
  /** Millimeter. */
  MILLIMETER("mm", Dimension.LENGTH, 1, 1),
  /** Centimeter. */
  CENTIMETER("cm", Dimension.LENGTH, 10, 1),
  /** Meter. */
  METER("m", Dimension.LENGTH, 1000, 1),
  /** Inch. */
  INCH("in", Dimension.LENGTH, 254, 10),
  /** Foot. */
  FOOT("ft", Dimension.LENGTH, 3048, 10),
  /** Square millimeter. */
  SQUARE_MILLIMETER("mm2", Dimension.AREA, 1, 1),
  /** Square centimeter. */
  SQUARE_CENTIMETER("cm2", Dimension.AREA, 100, 1),
  /** Square inch. */
  SQUARE_INCH("in2", Dimension.AREA, 64516, 100),
  /** Square meter. */
  SQUARE_METER("m2", Dimension.AREA, 1_000_000, 1),
  /** Square foot. */
  SQUARE_FOOT("ft2", Dimension.AREA, 9_290_304, 100),

  /** Milliliter. */
  MILLILITER("mL", Dimension.VOLUME, 1, 1),
  /** Liter. */
  LITER("L", Dimension.VOLUME, 1000, 1),
  /** Customary US cup: a sixteenth of the gallon of 231 cubic inches. */
  US_CUP("cup", Dimension.VOLUME, 2_365_882_365L, 10_000_000),
  /** US fluid ounce: an eighth of that cup. */
  US_FLUID_OUNCE("floz", Dimension.VOLUME, 295_735_295_625L, 10_000_000_000L),

  /** Newton. */
  NEWTON("N", Dimension.FORCE, 1, 1),
  /** Kilonewton. */
  KILONEWTON("kN", Dimension.FORCE, 1000, 1),
  /** Pound-force. */
  POUND_FORCE("lbf", Dimension.FORCE, 44_482_216_152_605L, 10_000_000_000_000L),
  /** Kilogram-force. */
  KILOGRAM_FORCE("kgf", Dimension.FORCE, 980_665, 100_000),

  /** Pascal. */
  PASCAL("Pa", Dimension.PRESSURE, 1, 1),
  /** Kilopascal. */
  KILOPASCAL("kPa", Dimension.PRESSURE, 1000, 1),
  /** Millibar. */
  MILLIBAR("mbar", Dimension.PRESSURE, 100, 1),
  /** Bar. */
  BAR("bar", Dimension.PRESSURE, 100_000, 1),
  /** Pound-force per square inch. */
  POUND_FORCE_PER_SQUARE_INCH("psi", Dimension.PRESSURE, 44_482_216_152_605L, 6_451_600_000L),
  /** Conventional millimeter of water. */
  MILLIMETER_OF_WATER("mmH2O", Dimension.PRESSURE, 980_665, 100_000),
  /** Conventional centimeter of water. */
  CENTIMETER_OF_WATER("cmH2O", Dimension.PRESSURE, 980_665, 10_000),
  /** Conventional inch of water. */
  INCH_OF_WATER("inH2O", Dimension.PRESSURE, 24_908_891, 100_000),

  /** Kelvin. */
  KELVIN("K", Dimension.TEMPERATURE, 1, 1),
  /** Degree Celsius. */
  DEGREE_CELSIUS("degC", Dimension.TEMPERATURE, 1, 1, 27_315, 100),
  /** Degree Fahrenheit. */
  DEGREE_FAHRENHEIT("degF", Dimension.TEMPERATURE, 5, 9, 45_967, 100),

  /** Second. */
  SECOND("s", Dimension.TIME, 1, 1),
  /** Millisecond. */
  MILLISECOND("ms", Dimension.TIME, 1, 1000),
  /** Minute. */
  MINUTE("min", Dimension.TIME, 60, 1),
  /** Hour. */
  HOUR("h", Dimension.TIME, 3600, 1),

  /** Gram per square meter. */
  GRAM_PER_SQUARE_METER("g/m2", Dimension.MASS_PER_AREA, 1, 1),
  /** Microgram per square centimeter. */
  MICROGRAM_PER_SQUARE_CENTIMETER("ug/cm2", Dimension.MASS_PER_AREA, 1, 100),
  /** Nanogram per square centimeter. */
  NANOGRAM_PER_SQUARE_CENTIMETER("ng/cm2", Dimension.MASS_PER_AREA, 1, 100_000),
  /** Avoirdupois ounce per square yard. */
  OUNCE_PER_SQUARE_YARD("oz/yd2", Dimension.MASS_PER_AREA, 28_349_523_125L, 836_127_360),

  /** Newton per meter. */
  NEWTON_PER_METER("N/m", Dimension.FORCE_PER_WIDTH, 1, 1),
  /** Newton per centimeter. */
  NEWTON_PER_CENTIMETER("N/cm", Dimension.FORCE_PER_WIDTH, 100, 1),
  /** Newton per millimeter. */
  NEWTON_PER_MILLIMETER("N/mm", Dimension.FORCE_PER_WIDTH, 1000, 1),
  /** Pound-force per inch. */
  POUND_FORCE_PER_INCH("lbf/in", Dimension.FORCE_PER_WIDTH, 44_482_216_152_605L, 254_000_000_000L),

  /** Joule per square meter. */
  JOULE_PER_SQUARE_METER("J/m2", Dimension.HEAT_PER_AREA, 1, 1),
  /** Kilojoule per square meter. */
  KILOJOULE_PER_SQUARE_METER("kJ/m2", Dimension.HEAT_PER_AREA, 1000, 1),
  /** Thermochemical calorie per square centimeter. */
  CALORIE_PER_SQUARE_CENTIMETER("cal/cm2", Dimension.HEAT_PER_AREA, 41_840, 1),

  /** Watt per square meter. */
  WATT_PER_SQUARE_METER("W/m2", Dimension.HEAT_FLUX, 1, 1),
  /** Kilowatt per square meter. */
  KILOWATT_PER_SQUARE_METER("kW/m2", Dimension.HEAT_FLUX, 1000, 1),
  /** Thermochemical calorie per square centimeter and second. */
  CALORIE_PER_SQUARE_CENTIMETER_SECOND("cal/cm2/s", Dimension.HEAT_FLUX, 41_840, 1),

  /** Candela per lux and square meter. */
  CANDELA_PER_LUX_SQUARE_METER("cd/lx/m2", Dimension.RETROREFLECTION, 1, 1),
  /** Candela per foot-candle and square foot: the same size, as the square feet cancel. */
  CANDELA_PER_FOOTCANDLE_SQUARE_FOOT("cd/fc/ft2", Dimension.RETROREFLECTION, 1, 1),

  /** Standard gravity, 9.806 65 m/s2. */
  STANDARD_GRAVITY("g", Dimension.ACCELERATION_RATIO, 1, 1),

  /** Turn per minute. */
  TURN_PER_MINUTE("r/min", Dimension.ROTATION, 1, 1),
  /** Turn per second. */
  TURN_PER_SECOND("r/s", Dimension.ROTATION, 60, 1),

  /** The number one. */
  ONE("1", Dimension.RATIO, 1, 1),
  /** Hundredth. */
  PERCENT("%", Dimension.RATIO, 1, 100),
  /** Millionth, as of milligrams in a kilogram. */
  PART_PER_MILLION("ppm", Dimension.RATIO, 1, 1_000_000),

  /** Gram per liter. */
  GRAM_PER_LITER("g/L", Dimension.MASS_PER_VOLUME, 1, 1),
  /** Milligram per liter. */
  MILLIGRAM_PER_LITER("mg/L", Dimension.MASS_PER_VOLUME, 1, 1000),
  /** Microgram per liter. */
  MICROGRAM_PER_LITER("ug/L", Dimension.MASS_PER_VOLUME, 1, 1_000_000),

  /** Joule. */
  JOULE("J", Dimension.ENERGY, 1, 1),
  /** Foot pound-force. */
  FOOT_POUND_FORCE("ft.lbf", Dimension.ENERGY, 135_581_794_833_140_040L, 100_000_000_000_000_000L),

  /** Milliampere. */
  MILLIAMPERE("mA", Dimension.ELECTRIC_CURRENT, 1, 1);

  private final String symbol;
  private final Dimension dimension;

  // The checker knows BigInteger, but not a record of two of them, to be immutable.
  @SuppressWarnings("ImmutableEnumChecker")
  private final Rational factor;

  @SuppressWarnings("ImmutableEnumChecker")
  private final Rational offset;

  private final Optional<BigDecimal> decimalFactor;

  Unit(String symbol, Dimension dimension, long numerator, long denominator) {
    this(symbol, dimension, numerator, denominator, 0, 1);
  }

  Unit(
      String symbol,
      Dimension dimension,
      long numerator,
      long denominator,
      long offsetNumerator,
      long offsetDenominator) {
    this.symbol = symbol;
    this.dimension = dimension;
    this.factor = new Rational(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    this.offset =
        new Rational(BigInteger.valueOf(offsetNumerator), BigInteger.valueOf(offsetDenominator));
    this.decimalFactor =
        offset.signum() == 0 && onlyTwosAndFives(denominator)
            ? Optional.of(
                BigDecimal.valueOf(numerator)
                    .divide(BigDecimal.valueOf(denominator))
                    .stripTrailingZeros())
            : Optional.empty();
  }

  private static boolean onlyTwosAndFives(long number) {
    long left = number;
    while (left % 2 == 0) {
      left /= 2;
    }
    while (left % 5 == 0) {
      left /= 5;
    }
    return left == 1;
  }

  /**
   * Finds a unit by its symbol.
   *
   * @param symbol the symbol as files write it; not null
   * @return the unit; empty if no unit has the symbol
   */
  public static Optional<Unit> ofSymbol(String symbol) {
    for (Unit unit : values()) {
      if (unit.symbol.equals(symbol)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  /**
   * Returns the symbol.
   *
   * @return the symbol as files write it, as in {@code mm2}; never null
   */
  public String symbol() {
    return symbol;
  }

  /**
   * Returns the dimension.
   *
   * @return the dimension; never null
   */
  public Dimension dimension() {
    return dimension;
  }

  /**
   * Returns the size of this unit in base units of its dimension. On temperature scales it is the
   * size of one degree.
   *
   * @return the exact factor, above zero; never null
   */
  public Rational factor() {
    return factor;
  }

  /** The factor where a decimal is exactly it and nothing is added; else empty. */
  Optional<BigDecimal> decimalFactor() {
    return decimalFactor;
  }

  /** What is added to a value before the factor applies; zero but on temperature scales. */
  Rational offset() {
    return offset;
  }
}
