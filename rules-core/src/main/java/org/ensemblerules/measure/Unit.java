package org.ensemblerules.measure;

import java.math.BigInteger;

/**
 * A unit with its exact factor to the base unit of its dimension (millimetre, square millimetre).
 *
 * <p>The inch is 25.4 mm exactly (40 CFR 1066.20(b)(3); international yard and pound agreement).
 */
public enum Unit {
  /** Millimetre. */
  MILLIMETRE("mm", Dimension.LENGTH, 1, 1),
  /** Centimetre. */
  CENTIMETRE("cm", Dimension.LENGTH, 10, 1),
  /** Metre. */
  METRE("m", Dimension.LENGTH, 1000, 1),
  /** Inch. */
  INCH("in", Dimension.LENGTH, 254, 10),
  /** Foot. */
  FOOT("ft", Dimension.LENGTH, 3048, 10),
  /** Square millimetre. */
  SQUARE_MILLIMETRE("mm2", Dimension.AREA, 1, 1),
  /** Square centimetre. */
  SQUARE_CENTIMETRE("cm2", Dimension.AREA, 100, 1),
  /** Square inch. */
  SQUARE_INCH("in2", Dimension.AREA, 64516, 100);

  private final String symbol;
  private final Dimension dimension;
  private final BigInteger numerator;
  private final BigInteger denominator;

  Unit(String symbol, Dimension dimension, long numerator, long denominator) {
    this.symbol = symbol;
    this.dimension = dimension;
    this.numerator = BigInteger.valueOf(numerator);
    this.denominator = BigInteger.valueOf(denominator);
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

  BigInteger numerator() {
    return numerator;
  }

  BigInteger denominator() {
    return denominator;
  }
}
