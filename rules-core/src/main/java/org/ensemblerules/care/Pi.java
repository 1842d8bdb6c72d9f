package org.ensemblerules.care;

import java.math.BigInteger;
import org.ensemblerules.measure.Rational;

/** Two fractions that hold the number pi between them, less than 10^-75 apart. */
final class Pi {
  private static final BigInteger ONE = BigInteger.TEN.pow(80);
  // Far above what truncation can lose: fewer than 200 terms, each cut by less than two units, some
  // of them counted sixteen times.
  private static final BigInteger DOUBT = BigInteger.valueOf(10_000);
  private static final BigInteger COMPUTED = computed();

  /** Below pi. */
  static final Rational LOWER = new Rational(COMPUTED.subtract(DOUBT), ONE);

  /** Above pi. */
  static final Rational UPPER = new Rational(COMPUTED.add(DOUBT), ONE);

  private Pi() {}

  /** Machin's formula: pi = 16 arctan(1/5) - 4 arctan(1/239). */
  private static BigInteger computed() {
    return inverseTangentOfOneOver(5)
        .multiply(BigInteger.valueOf(16))
        .subtract(inverseTangentOfOneOver(239).multiply(BigInteger.valueOf(4)));
  }

  private static BigInteger inverseTangentOfOneOver(long whole) {
    BigInteger square = BigInteger.valueOf(whole * whole);
    BigInteger power = ONE.divide(BigInteger.valueOf(whole));
    BigInteger sum = BigInteger.ZERO;
    for (int odd = 1; power.signum() != 0; odd += 2) {
      BigInteger term = power.divide(BigInteger.valueOf(odd));
      sum = odd % 4 == 1 ? sum.add(term) : sum.subtract(term);
      power = power.divide(square);
    }
    return sum;
  }
}
