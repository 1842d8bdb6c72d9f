package org.ensemblerules.strength.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.special.Erf;
import org.apache.commons.math3.special.Gamma;
import org.ensemblerules.measure.Examples;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Against commons-math3 3.6.1, commons-statistics 1.2 and printed tables. */
class DistributionsTest {
  @Test
  void normalProbabilities() {
    // commons-math3 keeps about 1e-15 of the complementary error function.
    for (double x = -8; x <= 8; x += 0.01) {
      double reference = 0.5 * Erf.erfc(-x / Math.sqrt(2));
      assertThat(Normal.below(x)).as("at %s", x).isCloseTo(reference, within(1e-15));
      if (x < 0) {
        assertThat(Normal.below(x) / reference).as("at %s", x).isCloseTo(1, within(1e-11));
      }
    }
    assertThat(Normal.below(Double.NEGATIVE_INFINITY)).isZero();
    assertThat(Normal.below(Double.POSITIVE_INFINITY)).isEqualTo(1);
  }

  @Test
  void normalProbabilitiesOfTheOtherLibrary() {
    var reference = org.apache.commons.statistics.distribution.NormalDistribution.of(0, 1);
    for (double x = -35; x <= 8; x += 0.05) {
      assertThat(Normal.below(x) / reference.cumulativeProbability(x))
          .as("at %s", x)
          .isCloseTo(1, within(1e-12));
    }
  }

  @Test
  void normalQuantiles() {
    NormalDistribution reference = new NormalDistribution();
    for (int i = 1; i < 1000; i++) {
      double p = i / 1000.0;
      assertThat(Normal.quantile(p))
          .isCloseTo(reference.inverseCumulativeProbability(p), within(1e-10));
    }
    for (double p : new double[] {1e-12, 1e-6, 0.5, 0.999999}) {
      assertThat(Normal.below(Normal.quantile(p)) / p).isCloseTo(1, within(1e-12));
    }
  }

  /** JCGM 106 Table 1, as remembered: conformance probability and z. */
  @Test
  void quantilesOfJcgm106() {
    double[][] table = {{0.80, 0.84}, {0.90, 1.28}, {0.95, 1.64}, {0.99, 2.33}, {0.999, 3.09}};
    for (double[] line : table) {
      assertThat(Normal.quantile(line[0])).isCloseTo(line[1], within(0.005));
    }
  }

  @Test
  void logGamma() {
    for (double x = 0.5; x < 200; x += 0.5) {
      double reference = Gamma.logGamma(x);
      assertThat(LogGamma.of(x))
          .as("at %s", x)
          .isCloseTo(reference, within(2e-14 * Math.max(1, Math.abs(reference))));
    }
  }

  @Test
  void studentProbabilities() {
    for (int degrees : new int[] {1, 2, 3, 4, 5, 7, 10, 17, 30, 79, 136, 500}) {
      TDistribution reference = new TDistribution(degrees);
      var other = org.apache.commons.statistics.distribution.TDistribution.of(degrees);
      for (double t = -10; t <= 10; t += 0.25) {
        assertThat(StudentT.below(t, degrees, 0))
            .as("t %s, %s degrees", t, degrees)
            .isCloseTo(reference.cumulativeProbability(t), within(1e-11))
            .isCloseTo(other.cumulativeProbability(t), within(1e-12));
      }
    }
  }

  /** How far from commons-statistics a probability may be, up to a million degrees of freedom. */
  private static final double PROBABILITY = 1e-13;

  /**
   * The same of a quantile, at any confidence from 0.0001 % to 99.9999 %: where the density is
   * small, the last digit of the probability moves the quantile by more.
   */
  private static double quantileBound(double probability) {
    return Math.max(1e-11, 1e-16 / Normal.density(Normal.quantile(probability)));
  }

  /**
   * commons-statistics 1.2 again: where many degrees of freedom once let noise through. No report
   * that can be read has as many specimens.
   */
  @Test
  void studentOfManyDegrees() {
    for (int degrees : new int[] {1000, 10_000, 100_000, 357_973, 1_000_000}) {
      var reference = org.apache.commons.statistics.distribution.TDistribution.of(degrees);
      for (double t = -6; t <= 6; t += 0.25) {
        assertThat(StudentT.below(t, degrees, 0))
            .as("t %s, %s degrees", t, degrees)
            .isCloseTo(reference.cumulativeProbability(t), within(PROBABILITY));
      }
      for (double p : new double[] {0.000001, 0.5, 0.9, 0.975, 0.999, 0.999999}) {
        assertThat(StudentT.quantile(p, degrees, 0))
            .as("p %s, %s degrees", p, degrees)
            .isCloseTo(reference.inverseCumulativeProbability(p), within(quantileBound(p)));
      }
      // A bound of ever more specimens comes down to the quantile of the population.
      assertThat(StudentT.toleranceFactor(degrees, 0.90, 0.95))
          .isBetween(Normal.quantile(0.90), Normal.quantile(0.90) + 4 / Math.sqrt(degrees));
    }
  }

  /**
   * e-Handbook 7.2.6.3: the factor of the normal approximation, which is off by an amount of the
   * order of 1/n.
   */
  @Test
  void toleranceFactorsOfManySpecimens() {
    for (int n : new int[] {1000, 10_000, 100_000, 357_974, 1_000_000}) {
      for (double coverage : new double[] {0.5, 0.9, 0.999999}) {
        for (double confidence : new double[] {0.000001, 0.95, 0.999999}) {
          double z = Normal.quantile(coverage);
          double sure = Normal.quantile(confidence);
          double a = 1 - sure * sure / (2 * (n - 1.0));
          double b = z * z - sure * sure / n;
          double root = Math.sqrt(z * z - a * b);
          double approximate = (z + (sure < 0 ? -root : root)) / a;
          assertThat(StudentT.toleranceFactor(n, coverage, confidence))
              .as("n %s, coverage %s, confidence %s", n, coverage, confidence)
              .isCloseTo(approximate, within(10.0 / n));
        }
      }
    }
  }

  @Test
  void studentQuantiles() {
    for (int degrees : new int[] {1, 2, 3, 4, 9, 17, 42, 194}) {
      var reference = org.apache.commons.statistics.distribution.TDistribution.of(degrees);
      for (double p : new double[] {0.05, 0.5, 0.75, 0.9, 0.95, 0.975, 0.99, 0.999}) {
        double expected = reference.inverseCumulativeProbability(p);
        assertThat(StudentT.quantile(p, degrees, 0))
            .as("p %s, %s degrees", p, degrees)
            .isCloseTo(expected, within(1e-10 * Math.max(1, Math.abs(expected))));
      }
    }
  }

  @Test
  void printedStudentQuantiles() {
    for (List<String> line : Examples.read(DistributionsTest.class, "student-t.csv")) {
      double half = 0.5000001 * Math.pow(10, -Integer.parseInt(line.get(3)));
      assertThat(
              StudentT.quantile(Double.parseDouble(line.get(0)), Integer.parseInt(line.get(1)), 0))
          .as(line.toString())
          .isCloseTo(Double.parseDouble(line.get(2)), within(half));
    }
  }

  /** e-Handbook 1.3.5.2: n = 195, 95 % interval of the mean 9.258242 to 9.264679. */
  @Test
  void intervalOfAMean() {
    double half = StudentT.quantile(0.975, 194, 0) * 0.022789 / Math.sqrt(195);
    assertThat(9.261460 - half).isCloseTo(9.258242, within(1.5e-6));
    assertThat(9.261460 + half).isCloseTo(9.264679, within(1.5e-6));
  }

  /**
   * Where the noncentral distribution has simple forms: at t = 0 it is the normal probability of
   * minus delta, and of one degree of freedom at delta = 0 it is Cauchy's.
   */
  @Test
  void noncentralStudentWhereSimplyKnown() {
    for (int degrees : new int[] {1, 2, 5, 42}) {
      for (double delta : new double[] {-2, 0, 0.5, 3, 27}) {
        assertThat(StudentT.below(1e-300, degrees, delta))
            .isCloseTo(Normal.below(-delta), within(1e-13));
      }
    }
    assertThat(StudentT.below(3, 1, 0)).isCloseTo(0.5 + Math.atan(3) / Math.PI, within(1e-13));
  }

  /** CMH-17-1G tables for n = 2 to 137, both coverages. */
  @Test
  @Tag("slow")
  void toleranceFactorsOfTheHandbook() {
    List<List<String>> lines = Examples.read(DistributionsTest.class, "tolerance-factors.csv");
    assertThat(lines).hasSize(136);
    for (List<String> line : lines) {
      int n = Integer.parseInt(line.get(0));
      assertThat(StudentT.toleranceFactor(n, 0.90, 0.95))
          .as("coverage 90 %%, n %s", n)
          .isCloseTo(Double.parseDouble(line.get(1)), within(0.002));
      assertThat(StudentT.toleranceFactor(n, 0.99, 0.95))
          .as("coverage 99 %%, n %s", n)
          .isCloseTo(Double.parseDouble(line.get(2)), within(0.002));
    }
  }

  /** e-Handbook 7.2.6.3 (n = 43) and n = 40, exact noncentral t, as computed before. */
  @Test
  void toleranceFactorsOfOtherShares() {
    assertThat(StudentT.toleranceFactor(43, 0.90, 0.99)).isCloseTo(1.87395, within(5e-6));
    assertThat(StudentT.toleranceFactor(40, 0.90, 0.99)).isCloseTo(1.90173, within(5e-6));
  }

  /** Two specimens have a closed way to it: k from a table of six digits computed elsewhere. */
  @Test
  void exactToleranceFactors() {
    double[][] exact = {
      {2, 20.5815, 37.0936}, {3, 6.1553, 10.5527}, {5, 3.4066, 5.7411},
      {10, 2.3546, 3.9811}, {18, 1.9738, 3.3703}, {30, 1.7773, 3.0639}
    };
    for (double[] line : exact) {
      assertThat(StudentT.toleranceFactor((int) line[0], 0.90, 0.95))
          .isCloseTo(line[1], within(6e-5));
      assertThat(StudentT.toleranceFactor((int) line[0], 0.99, 0.95))
          .isCloseTo(line[2], within(6e-5));
    }
  }

  /** CMH-17-1G 8.3.11.1.2: four groups, pooled standard deviation, 79 degrees of freedom. */
  @Test
  void pooledGroups() {
    double pooled = 6.52922;
    double[][] groups = {
      {20, 104.8453, 93.64, 86.19},
      {19, 98.5635, 87.30, 79.86},
      {26, 65.2684, 54.33, 46.84},
      {18, 58.4072, 47.12, 39.69}
    };
    for (double[] group : groups) {
      int n = (int) group[0];
      assertThat(group[1] - pooled * StudentT.toleranceFactor(n, 79, 0.90, 0.95))
          .isCloseTo(group[2], within(0.05));
      assertThat(group[1] - pooled * StudentT.toleranceFactor(n, 79, 0.99, 0.95))
          .isCloseTo(group[3], within(0.05));
    }
  }
}
