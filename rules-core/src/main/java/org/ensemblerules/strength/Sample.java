package org.ensemblerules.strength;

import com.google.common.collect.ImmutableList;
import java.math.MathContext;
import java.util.List;
import org.ensemblerules.measure.Rational;

/** The values of one direction: mean and variance exact, whatever the size of the values. */
record Sample(ImmutableList<Rational> values) {
  static Sample of(List<Rational> values) {
    return new Sample(ImmutableList.copyOf(values));
  }

  int size() {
    return values.size();
  }

  Rational mean() {
    Rational sum = Rational.ZERO;
    for (Rational value : values) {
      sum = sum.plus(value);
    }
    return sum.dividedBy(Rational.of(values.size()));
  }

  /** Of at least two values: the squared deviations over one less than their number. */
  Rational variance() {
    Rational mean = mean();
    Rational sum = Rational.ZERO;
    for (Rational value : values) {
      Rational deviation = value.minus(mean);
      sum = sum.plus(deviation.times(deviation));
    }
    return sum.dividedBy(Rational.of(values.size() - 1));
  }

  /** To 34 digits; exact where the root ends as a decimal of so many. */
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
