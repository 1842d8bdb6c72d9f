package org.ensemblerules.strength;

import java.util.Optional;
import org.ensemblerules.measure.ExactQuantity;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.measure.Unit;

/**
 * The report's uncertainty in the limit's unit, exact: {@code U f / g}, where f is the factor of
 * the unit it is stated in and g that of the limit's, and {@code u = U / k} (JCGM 100).
 *
 * @param expanded U
 * @param coverageFactor k
 * @param unit the limit's unit
 */
record Uncertainty(Rational expanded, Rational coverageFactor, Unit unit) {
  /** Empty if the report states none. A stated one that cannot be stops every rule. */
  static Optional<Uncertainty> of(TestReport report, EffectiveLimit limit) throws Stopped {
    if (report.uncertainty().isEmpty()) {
      return Optional.empty();
    }
    ExpandedUncertainty given = report.uncertainty().get();
    Unit unit = limit.value().unit();
    if (given.expanded().unit().dimension() != unit.dimension()) {
      throw new Stopped(
          NoResultReason.UNIT_DOES_NOT_FIT, given + "; the limit is " + limit.value());
    }
    if (!given.expanded().isPositive()) {
      throw new Stopped(NoResultReason.UNCERTAINTY_NOT_POSITIVE, given + "; above zero is allowed");
    }
    // An uncertainty is a difference: the zero of a temperature scale does not enter.
    Rational expanded =
        Rational.of(given.expanded().value())
            .times(given.expanded().unit().factor())
            .dividedBy(unit.factor());
    return Optional.of(new Uncertainty(expanded, Rational.of(given.coverageFactor()), unit));
  }

  Rational standard() {
    return expanded.dividedBy(coverageFactor);
  }

  Figure expandedFigure() {
    return Figure.of("expanded uncertainty U", new ExactQuantity(expanded, unit));
  }
}
