package org.ensemblerules.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.measure.Examples;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.measure.Rounding;
import org.ensemblerules.measure.Ties;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.strength.Risk.Interval;
import org.ensemblerules.strength.numeric.CriticalDifference;
import org.ensemblerules.strength.numeric.Normal;
import org.ensemblerules.strength.numeric.StudentT;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Writes the table of all numbers checked against others: {@code target/outside-checks.csv}. */
class OutsideChecksTest {
  private static final String HANDBOOK = "CMH-17-1G, as restated";
  private static final String GUIDE = "JCGM 106";

  private record Check(String source, String what, double published, double ours, double allowed) {}

  private final List<Check> checks = new ArrayList<>();

  private void add(String source, String what, double published, double ours, double allowed) {
    checks.add(new Check(source, what, published, ours, allowed));
  }

  @Test
  @Tag("slow")
  void allAgree() throws IOException {
    measures();
    distributions();
    risks();
    samples();
    List<String> lines = new ArrayList<>();
    lines.add("source;what;published;ours;difference;allowed");
    for (Check check : checks) {
      lines.add(
          String.join(
              ";",
              check.source(),
              check.what(),
              plain(check.published()),
              plain(check.ours()),
              plain(check.ours() - check.published()),
              plain(check.allowed())));
    }
    Path file = Path.of(System.getProperty("basedir", ""), "target", "outside-checks.csv");
    Files.createDirectories(file.getParent());
    Files.write(file, lines);
    assertThat(checks)
        .allSatisfy(
            check ->
                assertThat(check.ours())
                    .as(check.toString())
                    .isCloseTo(check.published(), within(check.allowed())));
  }

  private static String plain(double value) {
    return new BigDecimal(value).round(new MathContext(10)).stripTrailingZeros().toPlainString();
  }

  private void measures() {
    for (List<String> line : Examples.read(Examples.class, "rounding-examples.csv")) {
      double ours =
          new Rounding(new BigDecimal(line.get(1)), Ties.valueOf(line.get(2)))
              .round(new BigDecimal(line.get(0)))
              .doubleValue();
      String what = line.get(0) + " to the nearest " + line.get(1) + ", " + line.get(2);
      add(line.get(5) + ", " + line.get(4), what, Double.parseDouble(line.get(3)), ours, 0);
    }
    for (List<String> line : Examples.read(Examples.class, "conversions.csv")) {
      double ours =
          Quantity.of(line.get(0), Unit.ofSymbol(line.get(1)).orElseThrow())
              .in(Unit.ofSymbol(line.get(2)).orElseThrow())
              .value()
              .toDouble();
      String what = line.get(0) + " " + line.get(1) + " in " + line.get(2);
      double half = Double.parseDouble(line.get(3)) / 2 * 1.0000001;
      add(line.get(6) + ", " + line.get(5), what, Double.parseDouble(line.get(4)), ours, half);
    }
  }

  private void distributions() {
    for (List<String> line : Examples.read(Normal.class, "student-t.csv")) {
      int degrees = Integer.parseInt(line.get(1));
      double probability = Double.parseDouble(line.get(0));
      double half = 0.5000001 * Math.pow(10, -Integer.parseInt(line.get(3)));
      add(
          line.get(4),
          "Student t below " + probability + ", " + degrees + " degrees",
          Double.parseDouble(line.get(2)),
          StudentT.quantile(probability, degrees, 0),
          half);
    }
    for (List<String> line : Examples.read(Normal.class, "tolerance-factors.csv")) {
      int n = Integer.parseInt(line.get(0));
      for (int column = 1; column <= 2; column++) {
        double coverage = column == 1 ? 0.90 : 0.99;
        add(
            HANDBOOK,
            "tolerance factor, coverage " + coverage + ", confidence 0.95, n = " + n,
            Double.parseDouble(line.get(column)),
            StudentT.toleranceFactor(n, coverage, 0.95),
            0.002);
      }
    }
    // Their formula is an approximation, printed as such; the exact factors are 1.87395, 1.90173.
    add(
        "NIST/SEMATECH e-Handbook 7.2.6.3, approximate formula",
        "tolerance factor, 90 %, 99 %, n = 43",
        1.8752,
        StudentT.toleranceFactor(43, 0.90, 0.99),
        0.0015);
    add(
        "published example, approximate formula",
        "tolerance factor, 90 %, 99 %, n = 40",
        1.9034,
        StudentT.toleranceFactor(40, 0.90, 0.99),
        0.002);
    add(
        "NIST/SEMATECH e-Handbook 1.3.5.2",
        "lower end of the interval of a mean, n = 195",
        9.258242,
        9.261460 - StudentT.quantile(0.975, 194, 0) * 0.022789 / Math.sqrt(195),
        1.5e-6);
    double[][] pooled = {
      {20, 104.8453, 93.64, 86.19},
      {19, 98.5635, 87.30, 79.86},
      {26, 65.2684, 54.33, 46.84},
      {18, 58.4072, 47.12, 39.69}
    };
    for (double[] group : pooled) {
      int n = (int) group[0];
      double b = group[1] - 6.52922 * StudentT.toleranceFactor(n, 79, 0.90, 0.95);
      double a = group[1] - 6.52922 * StudentT.toleranceFactor(n, 79, 0.99, 0.95);
      add(HANDBOOK + ", 8.3.11.1.2", "pooled B-basis, n = " + n, group[2], b, 0.05);
      add(HANDBOOK + ", 8.3.11.1.2", "pooled A-basis, n = " + n, group[3], a, 0.05);
    }
  }

  private void risks() {
    Interval two = new Interval(12.5, 16.3);
    add(GUIDE + " 7.4", "two-sided", 0.66, Risk.conformanceProbability(13.6, 1.8, two), 0.005);
    double lower = Risk.conformanceProbability(509.7, 8.6, Interval.atLeast(490));
    add(GUIDE + " 7.3.3 example 2", "lower limit", 0.99, lower, 0.005);
    double upper = Risk.conformanceProbability(-5.47, 0.05, Interval.atMost(-5.40));
    add(GUIDE + " 7.3.3 example 1", "upper limit", 0.92, upper, 0.005);
    double speed = 100 / (1 - 0.02 * Normal.quantile(0.999));
    add(GUIDE + " 8.3.3.2", "guarded speed limit, km/h", 107, speed, 0.5);
    Interval tolerance = new Interval(1499.80, 1500.20);
    Risk.Global global = Risk.global(1500, 0.12, 0.04, tolerance, new Interval(1499.82, 1500.18));
    add(GUIDE + ", global risks", "conforming", 0.904, global.conforming(), 0.0005);
    add(GUIDE + ", global risks", "consumer's risk", 0.0099, global.consumer(), 0.00005);
    add(GUIDE + ", global risks", "producer's risk", 0.069, global.producer(), 0.0005);
    double[][] table = {
      {2, 4, 1, 0.008, 0.015}, {2.5, 4, 1, 0.0025, Double.NaN}, {2, 2, 0.91, 0.008, 0.066}
    };
    for (double[] line : table) {
      double limit = line[0];
      double guarded = limit * line[2];
      Risk.Global risk =
          Risk.global(
              0, 1, 1 / line[1], new Interval(-limit, limit), new Interval(-guarded, guarded));
      String what = ", limit " + limit + ", ratio " + line[1] + ", guard " + line[2];
      add(
          "published global risks, as quoted",
          "false accept" + what,
          line[3],
          risk.consumer(),
          5e-4);
      if (!Double.isNaN(line[4])) {
        add(
            "published global risks, as quoted",
            "false reject" + what,
            line[4],
            risk.producer(),
            5e-4);
      }
    }
    double[][] bands = {{0, 0.5}, {1, 0.025}, {0.83, 0.05}, {1.5, 0.0016}};
    for (double[] band : bands) {
      // Stated as an upper bound, near what k = 1.96 gives.
      add(
          "ILAC-G8:09/2019",
          "risk at a guard band of " + band[0] + " U, k = 1.96",
          band[1],
          Risk.ofGuardBand(band[0], 1.96),
          0.002);
    }
  }

  private void samples() {
    String[] eighteen = {
      "137.4438", "139.5395", "150.89", "141.4474", "141.8203", "151.8821", "143.9245", "132.9732",
      "136.6419", "138.1723", "148.7668", "143.283", "143.5429", "141.7023", "137.4732", "152.338",
      "144.1589", "128.5218"
    };
    List<Rational> values = new ArrayList<>();
    for (String text : eighteen) {
      values.add(Rational.of(new BigDecimal(text)));
    }
    Sample sample = Sample.of(values);
    double mean = sample.mean().toDouble();
    double deviation = sample.standardDeviation().toDouble();
    String source = HANDBOOK + ", 18 strengths";
    double b = mean - deviation * StudentT.toleranceFactor(18, 0.90, 0.95);
    double a = mean - deviation * StudentT.toleranceFactor(18, 0.99, 0.95);
    add(source, "normal B-basis, approximate factor", 129.287, b, 0.02);
    add(source, "normal A-basis, approximate factor", 120.336, a, 0.02);
    List<Rational> ascending = sample.ascending();
    double lowest = ascending.get(0).toDouble();
    double ninth = ascending.get(8).toDouble();
    double highest = ascending.get(17).toDouble();
    double small = PopulationDecision.bound(lowest, ninth, 1.354);
    add(source, "non-parametric B-basis", 124.156, small, 0.0005);
    double smallA = PopulationDecision.bound(lowest, highest, 2.4966);
    add(source, "non-parametric A-basis", 99.651, smallA, 0.0005);
    double[] critical = {16.13, 11.40, 9.31, 8.06, 7.21};
    for (int n = 1; n <= critical.length; n++) {
      double ours = CriticalDifference.ofMeans(Quantity.of("16.13", Unit.MILLIBAR), n);
      add("AATCC 127-2003 Table VI", "critical difference, N = " + n, critical[n - 1], ours, 0.011);
    }
  }
}
