package org.ensemblerules.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.ensemblerules.measure.Rational;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SampleTest {
  /**
   * NIST StRD, univariate, NumAcc1 to NumAcc4: certified mean and standard deviation are exact. The
   * first value is the mean, the others alternate below and above it.
   */
  @ParameterizedTest
  @CsvSource({
    "10000001; 10000003; 10000002, 0, 10000002, 1",
    "1.2; 1.1; 1.3, 500, 1.2, 0.1",
    "1000000.2; 1000000.1; 1000000.3, 500, 1000000.2, 0.1",
    "10000000.2; 10000000.1; 10000000.3, 500, 10000000.2, 0.1"
  })
  void certifiedSets(String first, int pairs, String mean, String deviation) {
    List<Rational> values = new ArrayList<>();
    List<Rational> given =
        List.of(first.split(";")).stream()
            .map(text -> Rational.of(new BigDecimal(text.strip())))
            .toList();
    values.add(given.get(0));
    for (int i = 0; i < Math.max(1, pairs); i++) {
      values.add(given.get(1));
      values.add(given.get(2));
    }
    Sample sample = Sample.of(values);
    assertThat(sample.size()).isEqualTo(pairs == 0 ? 3 : 1001);
    assertThat(sample.mean().equalsDecimal(new BigDecimal(mean))).isTrue();
    assertThat(sample.standardDeviation().equalsDecimal(new BigDecimal(deviation))).isTrue();
  }

  /** commons-math3 3.6.1 over random values. */
  @Property
  void agreesWithAReferenceLibrary(
      @ForAll @Size(min = 2, max = 40) List<@DoubleRange(max = 2000) @Scale(3) Double> given) {
    DescriptiveStatistics reference =
        new DescriptiveStatistics(given.stream().flatMapToDouble(DoubleStream::of).toArray());
    Sample sample =
        Sample.of(given.stream().map(value -> Rational.of(BigDecimal.valueOf(value))).toList());
    assertThat(sample.mean().toDouble()).isCloseTo(reference.getMean(), within(1e-9));
    assertThat(sample.standardDeviation().toDouble())
        .isCloseTo(reference.getStandardDeviation(), within(1e-9));
  }
}
