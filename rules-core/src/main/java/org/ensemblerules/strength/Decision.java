package org.ensemblerules.strength;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.Rational;

/**
 * The outcome of a decision rule for one direction, with the numbers used.
 *
 * @param outcome the outcome
 * @param figures every number used
 * @param secondUnitWouldDiffer whether the second printed unit would answer otherwise
 */
record Decision(TestOutcome outcome, ImmutableList<Figure> figures, boolean secondUnitWouldDiffer) {

  static Decision of(
      DecisionRule rule,
      Statistic statistic,
      EffectiveLimit limit,
      Sample sample,
      Optional<Uncertainty> uncertainty,
      SmallSampleTable smallSamples)
      throws Stopped {
    if (rule instanceof DecisionRule.SimpleAcceptance
        || rule instanceof DecisionRule.GuardBand
        || rule instanceof DecisionRule.ConformanceProbability) {
      return ofValues(rule, statistic, limit, sample, uncertainty);
    }
    if (statistic == Statistic.EACH_SPECIMEN
        && rule instanceof DecisionRule.ConfidenceBoundOfMean) {
      throw new Stopped(
          NoResultReason.RULE_DOES_NOT_FIT,
          "the requirement is on each specimen; a bound of the mean would hide the lowest");
    }
    return PopulationDecision.of(rule, limit, sample, smallSamples);
  }

  /**
   * Rules on one value, which is exact: the mean, or each specimen, of which the worst counts. All
   * conform if and only if the lowest does for a minimum, the highest for a maximum.
   */
  private static Decision ofValues(
      DecisionRule rule,
      Statistic statistic,
      EffectiveLimit limit,
      Sample sample,
      Optional<Uncertainty> uncertainty)
      throws Stopped {
    boolean each = statistic == Statistic.EACH_SPECIMEN;
    Rational value = each ? worst(limit, sample) : sample.mean();
    ImmutableList.Builder<Figure> figures = ImmutableList.builder();
    figures.add(limit.compared(each ? worstName(limit) : "mean of specimens", value));
    figures.add(Figure.of(limitName(limit), limit.value()));
    if (each) {
      int outside = 0;
      for (Rational one : sample.values()) {
        if (limit.margin(one).signum() < 0) {
          outside++;
        }
      }
      figures.add(Figure.count("specimens outside the limit", outside));
    }
    ValueDecision decided = ValueDecision.of(rule, limit, value, uncertainty);
    return new Decision(
        decided.outcome(),
        figures.addAll(decided.figures()).build(),
        decided.secondUnitWouldDiffer());
  }

  private static Rational worst(EffectiveLimit limit, Sample sample) {
    List<Rational> ascending = sample.ascending();
    return limit.bound() == Bound.MINIMUM ? ascending.get(0) : ascending.get(ascending.size() - 1);
  }

  private static String worstName(EffectiveLimit limit) {
    return limit.bound() == Bound.MINIMUM ? "lowest specimen" : "highest specimen";
  }

  static String limitName(EffectiveLimit limit) {
    String side = limit.bound() == Bound.MINIMUM ? "least value" : "largest value";
    return limit.printed().isPresent() ? side + " required" : side + " by share";
  }
}
