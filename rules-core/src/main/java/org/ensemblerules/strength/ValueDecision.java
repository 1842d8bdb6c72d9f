package org.ensemblerules.strength;

import com.google.common.collect.ImmutableList;
import java.util.Optional;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.ExactQuantity;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.strength.numeric.Normal;

/**
 * Decision rules that look at one value: simple acceptance, guard band, conformance probability, by
 * the formulas that {@link DecisionRule} has. All is exact but the normal distribution, which is in
 * double precision.
 */
record ValueDecision(
    TestOutcome outcome, ImmutableList<Figure> figures, boolean secondUnitWouldDiffer) {

  static ValueDecision of(
      DecisionRule rule, EffectiveLimit limit, Rational value, Optional<Uncertainty> uncertainty)
      throws Stopped {
    if (rule instanceof DecisionRule.SimpleAcceptance simple) {
      return simple(simple.comparison(), limit, value);
    }
    Uncertainty known =
        uncertainty.orElseThrow(
            () -> new Stopped(NoResultReason.UNCERTAINTY_MISSING, rule.text() + " needs U and k"));
    boolean differs = differs(limit, value);
    if (rule instanceof DecisionRule.GuardBand guard) {
      return guard(guard, limit, limit.margin(value), known, differs);
    }
    DecisionRule.ConformanceProbability wanted = (DecisionRule.ConformanceProbability) rule;
    Rational z = limit.margin(value).dividedBy(known.standard());
    double probability = Normal.below(z.toDouble());
    return new ValueDecision(
        probability >= Shares.ofPercent(wanted.leastPercent())
            ? TestOutcome.PASS
            : TestOutcome.FAIL,
        ImmutableList.of(
            known.expandedFigure(),
            Figure.of("coverage factor k", known.coverageFactor(), Optional.empty()),
            Figure.of(
                "standard uncertainty u",
                new ExactQuantity(known.standard(), limit.value().unit())),
            Figure.worked("conformance probability", probability, Optional.empty()),
            Figure.given("least probability in percent", wanted.leastPercent())),
        differs);
  }

  private static ValueDecision simple(
      ComparisonMethod comparison, EffectiveLimit limit, Rational value) throws Stopped {
    Unit unit = limit.value().unit();
    requireFineEnough(comparison, limit);
    if (limit.printed().isPresent()) {
      Limit.Answer answer =
          limit.printed().get().compare(new ExactQuantity(value, unit), comparison);
      ImmutableList.Builder<Figure> figures = ImmutableList.builder();
      answer
          .compared()
          .ifPresent(
              rounded ->
                  figures.add(
                      Figure.of(
                          "value rounded for comparison",
                          Rational.of(rounded),
                          Optional.of(unit))));
      return new ValueDecision(
          answer.met() ? TestOutcome.PASS : TestOutcome.FAIL,
          figures.build(),
          answer.secondUnitWouldDiffer());
    }
    if (comparison instanceof ComparisonMethod.RoundedToLimit) {
      throw new Stopped(
          NoResultReason.RULE_DOES_NOT_FIT,
          "a share of the value when new is not printed, so that its last place does not exist");
    }
    Rational compared =
        comparison instanceof ComparisonMethod.RoundedTo to
            ? Rational.of(to.rounding().round(value))
            : value;
    return new ValueDecision(
        limit.margin(compared).signum() >= 0 ? TestOutcome.PASS : TestOutcome.FAIL,
        comparison instanceof ComparisonMethod.RoundedTo
            ? ImmutableList.of(
                Figure.of("value rounded for comparison", compared, Optional.of(unit)))
            : ImmutableList.of(),
        false);
  }

  /** A share of the value when new is told as finely as that value was. */
  private static void requireFineEnough(ComparisonMethod comparison, EffectiveLimit limit)
      throws Stopped {
    Optional<Quantity> told = limit.printed().map(Limit::value).or(limit::whenNew);
    if (comparison instanceof ComparisonMethod.RoundedTo to
        && told.isPresent()
        && to.rounding().isCoarserThanLastPlaceOf(told.get().value())) {
      throw new Stopped(
          NoResultReason.RULE_DOES_NOT_FIT,
          "values rounded "
              + to.rounding()
              + " are coarser than the last place of "
              + told.get()
              + ", by which they are judged");
    }
  }

  private static ValueDecision guard(
      DecisionRule.GuardBand rule,
      EffectiveLimit limit,
      Rational margin,
      Uncertainty uncertainty,
      boolean differs) {
    Rational width = uncertainty.expanded().times(Rational.of(rule.r()));
    TestOutcome outcome;
    if (margin.compareTo(width) >= 0) {
      outcome = TestOutcome.PASS;
    } else if (margin.signum() >= 0) {
      outcome = TestOutcome.CONDITIONAL_PASS;
    } else if (width.signum() > 0 && margin.compareTo(width.negated()) >= 0) {
      outcome = TestOutcome.CONDITIONAL_FAIL;
    } else {
      outcome = TestOutcome.FAIL;
    }
    return new ValueDecision(
        outcome,
        ImmutableList.of(
            uncertainty.expandedFigure(),
            Figure.given("r", rule.r()),
            Figure.of("guard band w", new ExactQuantity(width, limit.value().unit())),
            Figure.of("margin to the limit", new ExactQuantity(margin, limit.value().unit()))
                .shownTo(limit.places(), Rational.ZERO)),
        differs);
  }

  private static boolean differs(EffectiveLimit limit, Rational value) {
    return limit
        .printed()
        .map(
            printed ->
                printed
                    .compare(
                        new ExactQuantity(value, limit.value().unit()), ComparisonMethod.absolute())
                    .secondUnitWouldDiffer())
        .orElse(false);
  }
}
