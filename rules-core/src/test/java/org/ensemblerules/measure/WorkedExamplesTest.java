package org.ensemblerules.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The worked examples of others; each line of the files names its source. */
class WorkedExamplesTest {
  @TestFactory
  List<DynamicTest> rounding() {
    return Examples.read(WorkedExamplesTest.class, "rounding-examples.csv").stream()
        .map(
            line ->
                DynamicTest.dynamicTest(
                    String.join(" ", line),
                    () -> {
                      Rounding rounding =
                          new Rounding(new BigDecimal(line.get(1)), Ties.valueOf(line.get(2)));
                      assertThat(rounding.round(new BigDecimal(line.get(0))))
                          .isEqualByComparingTo(line.get(3));
                    }))
        .toList();
  }

  @TestFactory
  List<DynamicTest> conformance() {
    return Examples.read(WorkedExamplesTest.class, "conformance-examples.csv").stream()
        .map(
            line ->
                DynamicTest.dynamicTest(
                    String.join(" ", line),
                    () -> {
                      Limit limit =
                          line.get(2).equals("MINIMUM")
                              ? Limit.atLeast(line.get(3), Unit.NEWTON)
                              : Limit.atMost(line.get(3), Unit.NEWTON);
                      ComparisonMethod method =
                          new ComparisonMethod.RoundedTo(Rounding.toNearest(line.get(1)));
                      Quantity value = Quantity.of(line.get(0), Unit.NEWTON);
                      assertThat(limit.compare(value, method).met())
                          .isEqualTo(Boolean.parseBoolean(line.get(4)));
                    }))
        .toList();
  }

  @TestFactory
  List<DynamicTest> conversions() {
    return Examples.read(WorkedExamplesTest.class, "conversions.csv").stream()
        .map(
            line ->
                DynamicTest.dynamicTest(
                    String.join(" ", line),
                    () -> {
                      Unit to = Unit.ofSymbol(line.get(2)).orElseThrow();
                      Quantity converted =
                          Quantity.of(line.get(0), Unit.ofSymbol(line.get(1)).orElseThrow())
                              .in(to, Rounding.toNearest(line.get(3)));
                      assertThat(converted.value()).isEqualByComparingTo(line.get(4));
                      assertThat(converted.unit()).isEqualTo(to);
                    }))
        .toList();
  }

  /** ISO 80000-1 Annex B: one step gives 12.3; two steps would give 12.2. */
  @Test
  void roundingInStepsGivesAnotherResult() {
    BigDecimal full = new BigDecimal("12.251");
    BigDecimal inOneStep = Rounding.toNearest("0.1").round(full);
    BigDecimal inTwoSteps = Rounding.toNearest("0.1").round(Rounding.toNearest("0.01").round(full));
    assertThat(inOneStep).isEqualByComparingTo("12.3");
    assertThat(inTwoSteps).isEqualByComparingTo("12.2");
  }
}
