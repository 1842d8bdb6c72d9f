package org.ensemblerules.strength;

import com.google.common.collect.ImmutableList;
import java.math.MathContext;
import java.util.List;
import org.ensemblerules.measure.Rational;

/**
 * The values of one direction: mean and variance exact, whatever the size of the values. The sets
 * NumAcc1 to NumAcc4 of the NIST reference data come out as certified.
 */
record Sample(ImmutableList<Rational> values) {
  static Sample of(List<Rational> values) {
    return new Sample(ImmutableList.copyOf(values));
  }

  int size() {
    return values.size();
  }

  /** Of at least one value: {@code (x1 + ... + xn) / n}. */
  Rational mean() {
    Rational sum = Rational.ZERO;
    for (Rational value : values) {
      sum = sum.plus(value);
    }
    return sum.dividedBy(Rational.of(values.size()));
  }

  /** Of at least two values: {@code ((x1 - x)^2 + ... + (xn - x)^2) / (n - 1)}, x their mean. */
  Rational variance() {
    Rational mean = mean();
    Rational sum = Rational.ZERO;
    for (Rational value : values) {
      Rational deviation = value.minus(mean);
      sum = sum.plus(deviation.times(deviation));
    }
    return sum.dividedBy(Rational.of(values.size() - 1));
  }

  /** The root of the variance, to 34 digits; exact where it ends as a decimal of so many. */
  Rational standardDeviation() {
    Rational variance = variance();
    return variance.signum() == 0
        ? Rational.ZERO
        : Rational.of(
            variance
                .toDecimal(new MathContext(70))
                .sqrt(MathContext.DECIMAL128)
                .stripTrailingZeros());
  }

  ImmutableList<Rational> ascending() {
    return ImmutableList.sortedCopyOf(values);
  }
}
