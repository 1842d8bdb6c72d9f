package org.ensemblerules.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.strength.Risk.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RiskTest {
  /** JCGM 106 7.4, two-sided: 0.66. */
  @Test
  void twoSided() {
    assertThat(Risk.conformanceProbability(13.6, 1.8, new Interval(12.5, 16.3)))
        .isCloseTo(0.663, within(0.0005));
  }

  /** JCGM 106 7.3.3: example 2, burst strength with a lower limit; example 1 with an upper one. */
  @Test
  void oneSided() {
    assertThat(Risk.conformanceProbability(509.7, 8.6, Interval.atLeast(490)))
        .isCloseTo(0.989, within(0.0005));
    assertThat(Risk.conformanceProbability(-5.47, 0.05, Interval.atMost(-5.40)))
        .isCloseTo(0.919, within(0.0005));
  }

  /** JCGM 106 8.3.3.2: speed limit 100 km/h, u = 2 % of the speed, 99.9 %: 107 km/h. */
  @Test
  void guardedLimit() {
    assertThat(Risk.conformanceProbability(106.6, 0.02 * 106.6, Interval.atLeast(100)))
        .isCloseTo(0.999, within(0.0001));
    assertThat(Risk.conformanceProbability(107, 0.02 * 107, Interval.atLeast(100)))
        .isGreaterThan(0.999);
  }

  /**
   * JCGM 106, global risks (clause not seen): conforming 0.904, consumer's risk 1 %, producer's
   * risk 7 %.
   */
  @Test
  void globalRisksOfTheGuide() {
    Interval tolerance = new Interval(1499.80, 1500.20);
    Risk.Global guarded = Risk.global(1500, 0.12, 0.04, tolerance, new Interval(1499.82, 1500.18));
    assertThat(guarded.conforming()).isCloseTo(0.904, within(0.0005));
    assertThat(guarded.consumer()).isCloseTo(0.0099, within(0.00005));
    assertThat(guarded.producer()).isCloseTo(0.069, within(0.0005));
    Risk.Global simple = Risk.global(1500, 0.12, 0.04, tolerance, tolerance);
    assertThat(simple.consumer()).isCloseTo(0.0189, within(0.00005));
    assertThat(simple.producer()).isCloseTo(0.0372, within(0.00005));
  }

  /** The paper's table as a national laboratory's test file quotes it; process N(0, 1). */
  @ParameterizedTest
  @CsvSource({
    "2, 4, 1, 0.008, 0.00801, 0.015, 0.01485",
    "2.5, 4, 1, 0.0025, 0.00245, , 0.00532",
    "2, 2, 0.91, 0.008, 0.00805, 0.066, 0.06611"
  })
  void publishedGlobalRisks(
      double limit,
      double ratio,
      double guard,
      double falseAccept,
      double falseAcceptAgain,
      Double falseReject,
      double falseRejectAgain) {
    Risk.Global risk =
        Risk.global(
            0,
            1,
            1 / ratio,
            new Interval(-limit, limit),
            new Interval(-limit * guard, limit * guard));
    assertThat(risk.consumer())
        .isCloseTo(falseAccept, within(0.0005))
        .isCloseTo(falseAcceptAgain, within(0.00001));
    assertThat(risk.producer()).isCloseTo(falseRejectAgain, within(0.00001));
    if (falseReject != null) {
      assertThat(risk.producer()).isCloseTo(falseReject, within(0.0005));
    }
  }

  /** The same file, the process alone: limits 9 to 11. */
  @ParameterizedTest
  @CsvSource({"10, 0.01242", "10.5, 0.10574", "12, 0.99379"})
  void processesAlone(double mean, double nonconforming) {
    Interval limits = new Interval(9, 11);
    assertThat(1 - Risk.global(mean, 0.4, 0.001, limits, limits).conforming())
        .isCloseTo(nonconforming, within(0.000005));
  }

  /** ILAC-G8:09/2019: guard band in U, stated largest risk, with k = 2 and k = 1.96. */
  @ParameterizedTest
  @CsvSource({
    "0, 0.500, 0.500",
    "1, 0.0228, 0.0250",
    "0.83, 0.0485, 0.0519",
    "1.5, 0.00135, 0.00164",
    "-1, 0.9772, 0.9750"
  })
  void guardBandsOfIlac(double r, double withTwo, double with196) {
    assertThat(Risk.ofGuardBand(r, 2)).isCloseTo(withTwo, within(0.00005));
    assertThat(Risk.ofGuardBand(r, 1.96)).isCloseTo(with196, within(0.00005));
  }

  /** ILAC-G8, "6 sigma": less than one in a million. */
  @Test
  void widestGuardBand() {
    assertThat(Risk.ofGuardBand(3, 2)).isCloseTo(1e-9, within(2e-11));
  }

  /** Accepted and rejected, conforming or not, are all there is. */
  @Test
  void theFourCasesAddUp() {
    Interval tolerance = Interval.atLeast(100);
    Interval acceptance = Interval.atLeast(104);
    double mean = 108;
    double deviation = 6;
    double u = 3;
    Risk.Global risk = Risk.global(mean, deviation, u, tolerance, acceptance);
    double accepted = Risk.conformanceProbability(mean, Math.hypot(deviation, u), acceptance);
    assertThat(risk.conforming() - risk.producer() + risk.consumer())
        .isCloseTo(accepted, within(1e-12));
  }

  @Test
  void impossibleNumbersAreRefused() {
    assertThatThrownBy(() -> Risk.conformanceProbability(Double.NaN, 1, Interval.atLeast(0)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("Risk.measured", "NaN");
    assertThatThrownBy(() -> Risk.conformanceProbability(1, 0, Interval.atLeast(0)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("above zero");
    assertThatThrownBy(() -> new Interval(2, 1)).isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(() -> Interval.atLeast(Double.NaN))
        .isInstanceOf(InvalidValueException.class);
  }
}
