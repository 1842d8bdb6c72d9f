package org.ensemblerules.defect;

import java.math.BigDecimal;
import java.util.List;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.measure.Unit;

/**
 * The sizes at which one band of lengths or areas ends and the next begins, compared exactly.
 *
 * <p>Sizes that are whole in steps of a millionth of the base unit, as almost all are in every
 * unit, are compared in steps, which takes neither a fraction nor memory. The double that stands
 * for so many steps, below 2<sup>50</sup>, is less than half a step off: the number and its product
 * with the factor are each rounded by at most a part in 2<sup>53</sup>. So it is compared with what
 * is half a step above each edge. All other sizes are compared as exact quantities.
 */
final class SizeEdges {
  private static final Rational STEPS = Rational.of(1_000_000);
  private static final double TOO_MANY = 0x1p50;

  // By the ordinal of the unit: its steps, and how many decimals leave a number whole in steps.
  private static final double[] FACTORS = new double[Unit.values().length];
  private static final int[] DECIMALS = new int[Unit.values().length];

  static {
    for (Unit unit : Unit.values()) {
      Rational steps = unit.factor().times(STEPS);
      FACTORS[unit.ordinal()] = steps.toDouble();
      DECIMALS[unit.ordinal()] = decimals(steps);
    }
  }

  private static int decimals(Rational steps) {
    boolean exact = steps.equalsDecimal(new BigDecimal(steps.toDouble()));
    return exact && steps.equalsDecimal(new BigDecimal(steps.numerator()))
        ? -new BigDecimal(steps.numerator()).stripTrailingZeros().scale()
        : Integer.MIN_VALUE;
  }

  private final List<Quantity> edges;
  private final double[] halfAStepAbove;
  private final boolean inSteps;

  /** Takes lengths alone or areas alone, in ascending order. */
  SizeEdges(List<Quantity> ascending) {
    edges = ascending;
    halfAStepAbove = edges.stream().mapToDouble(edge -> steps(edge) + 0.5).toArray();
    inSteps = edges.stream().allMatch(edge -> isWhole(edge) && steps(edge) < TOO_MANY);
  }

  private static boolean isWhole(Quantity size) {
    return size.value().scale() <= DECIMALS[size.unit().ordinal()];
  }

  private static double steps(Quantity size) {
    return size.value().doubleValue() * FACTORS[size.unit().ordinal()];
  }

  /** Counts the edges that are below a size. */
  int below(Quantity size) {
    if (inSteps && isWhole(size)) {
      double steps = steps(size);
      if (steps < TOO_MANY) {
        return belowSteps(steps);
      }
    }
    return (int) edges.stream().filter(edge -> size.compareSize(edge) > 0).count();
  }

  private int belowSteps(double steps) {
    int below = 0;
    for (double edge : halfAStepAbove) {
      if (steps > edge) {
        below++;
      }
    }
    return below;
  }
}
