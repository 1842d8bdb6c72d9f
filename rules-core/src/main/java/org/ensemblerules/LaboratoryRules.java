package org.ensemblerules;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Objects;
import org.ensemblerules.care.CleaningAnswer;
import org.ensemblerules.care.CleaningResult;
import org.ensemblerules.care.Contaminant;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.ExactQuantity;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.strength.HydrostaticResult;
import org.ensemblerules.strength.HydrostaticTrial;
import org.ensemblerules.strength.Risk;
import org.ensemblerules.strength.numeric.CriticalDifference;
import org.ensemblerules.strength.numeric.Percentages;
import org.ensemblerules.strength.numeric.Retroreflection;

/**
 * What a laboratory or a cleaner asks beside whether a report meets what is required, which is
 * {@link GearRules#judge}.
 *
 * <table>
 * <caption>What is asked, and what answers</caption>
 * <tr><td>Did a barrier hold water under pressure?</td><td>{@link #waterUnderPressure}</td></tr>
 * <tr><td>Did a cleaning remove enough?</td><td>{@link #cleaning}</td></tr>
 * <tr><td>How likely is it that something measured conforms?</td>
 *     <td>{@link #conformanceProbability}, {@link #riskOfGuardBand}, {@link #globalRisk}</td></tr>
 * <tr><td>How far apart must two means lie?</td><td>{@link #criticalDifference}</td></tr>
 * <tr><td>What do readings come to?</td><td>{@link #retroreflection}, {@link #seamEfficiency},
 *     {@link #retention}, {@link #shrinkage}</td></tr>
 * </table>
 *
 * <pre>{@code
 * LaboratoryRules laboratory = rules.laboratory();
 * ExactQuantity left =
 *     laboratory.retention(Quantity.of("82", Unit.NEWTON), Quantity.of("100", Unit.NEWTON));
 * }</pre>
 *
 * <p>The formula of each answer, its source and how exact it is stand with the question, or where
 * its {@code See Also} leads. Made by {@link GearRules#laboratory}. Immutable, and safe for use by
 * many threads.
 *
 * @since 0.1
 */
public final class LaboratoryRules {
  private final RuleSet rules;

  LaboratoryRules(RuleSet rules) {
    this.rules = Objects.requireNonNull(rules, "rules");
  }

  /**
   * Judges a trial of a barrier with water under pressure.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param trial the trial; not null
   * @param comparison how pressure and time applied are compared with those required; not null
   * @return what the trial shows; never null
   * @throws InvalidValueException if the comparison rounds to an interval coarser than the last
   *     place of the pressure or of the time required
   * @see org.ensemblerules.strength.HydrostaticTable#judge
   */
  public HydrostaticResult waterUnderPressure(
      ElementKind element, Use use, HydrostaticTrial trial, ComparisonMethod comparison) {
    return rules.tables().strength().hydrostatic().judge(element, use, trial, comparison);
  }

  /**
   * Judges what a cleaning removed.
   *
   * @param results what was found of each kind of contaminant; not null
   * @return an answer for each kind that must be told, whether it was or not; never null
   * @see org.ensemblerules.care.RemovalEfficiency
   * @see org.ensemblerules.care.LogReduction
   */
  public Map<Contaminant, CleaningAnswer> cleaning(Map<Contaminant, CleaningResult> results) {
    return rules.tables().care().results().judge(results);
  }

  /**
   * Works out the probability that the true value lies in the tolerance interval, as {@link Risk}
   * does.
   *
   * @param measured the measured value
   * @param standardUncertainty u, above zero
   * @param tolerance the tolerance interval; not null
   * @return the probability, 0 to 1
   * @throws InvalidValueException if the value is not finite or u not above zero
   * @see Risk#conformanceProbability
   */
  public double conformanceProbability(
      double measured, double standardUncertainty, Risk.Interval tolerance) {
    return Risk.conformanceProbability(measured, standardUncertainty, tolerance);
  }

  /**
   * Works out the largest probability that an item accepted at the edge of its acceptance range
   * does not conform, as {@link Risk} does.
   *
   * @param r the guard band in expanded uncertainties; negative for acceptance beyond the limit
   * @param coverageFactor k of the expanded uncertainty, above zero
   * @return the probability, 0 to 1
   * @throws InvalidValueException if r is not finite or k not above zero
   * @see Risk#ofGuardBand
   */
  public double riskOfGuardBand(double r, double coverageFactor) {
    return Risk.ofGuardBand(r, coverageFactor);
  }

  /**
   * Works out the risks of a whole production that is judged by a measurement, as {@link Risk}
   * does.
   *
   * @param mean the mean of the production
   * @param deviation its standard deviation, above zero
   * @param standardUncertainty u of the measurement, above zero
   * @param tolerance where true values conform; not null
   * @param acceptance where measured values are accepted; not null
   * @return the probabilities; never null
   * @throws InvalidValueException if a number is not finite or a spread not above zero
   * @see Risk#global
   */
  public Risk.Global globalRisk(
      double mean,
      double deviation,
      double standardUncertainty,
      Risk.Interval tolerance,
      Risk.Interval acceptance) {
    return Risk.global(mean, deviation, standardUncertainty, tolerance, acceptance);
  }

  /**
   * Works out how far apart two means must lie to be told apart: {@code D(n) = D(1) / sqrt(n)}, in
   * double precision. That the spread of a mean falls with the root is plain statistics; Table VI
   * of AATCC 127-2003, as restated, follows it within its own rounding.
   *
   * @param single D(1), the critical difference of single determinations by the method's precision
   *     statement, above zero; not null
   * @param determinations n, how many are behind each of the two means, 1 or more
   * @return the critical difference in the same unit
   * @throws InvalidValueException if a number is out of range
   */
  public double criticalDifference(Quantity single, int determinations) {
    return CriticalDifference.ofMeans(single, determinations);
  }

  /**
   * Works out the coefficient of retroreflection from readings: {@code R = m1 d^2 / (m2 A)}, exact.
   * It follows from {@code R = I / (E A)} (CIE vocabulary, entry 17-24-103), where the intensity I
   * is the illuminance at the receiver times the square of the distance, and E the illuminance at
   * the specimen. The laboratory form is that of ASTM E810, as remembered.
   *
   * @param receiver m1, the reading at the receiver; zero or more; not null
   * @param source m2, the reading of the source at the specimen, on the same scale; above zero; not
   *     null
   * @param distance d, how far away the specimen is, above zero; not null
   * @param area A, the area of the specimen, above zero; not null
   * @return the exact coefficient in cd/(lx m2); never null
   * @throws InvalidValueException if a number is out of range or no length or area
   */
  public ExactQuantity retroreflection(
      BigDecimal receiver, BigDecimal source, Quantity distance, Quantity area) {
    return Retroreflection.coefficient(receiver, source, distance, area);
  }

  /**
   * Works out the force S that breaks a seam as a share of the force B that breaks the fabric:
   * {@code 100 S / B}, above 100 % where the fabric is the weaker. Source: ASTM D1683, as
   * remembered.
   *
   * @param seam the force to break the seam; not null
   * @param fabric the force to break the fabric, above zero; not null
   * @return the percentage, exact; never null
   * @throws InvalidValueException if the dimensions differ or the fabric's force is not above zero
   */
  public ExactQuantity seamEfficiency(Quantity seam, Quantity fabric) {
    return Percentages.seamEfficiency(seam, fabric);
  }

  /**
   * Works out how much of a value is left: {@code 100 x / x0}, x the value now and x0 when new.
   * Plain arithmetic; on a temperature scale the zero is that of the unit of x0.
   *
   * @param now the value now; not null
   * @param whenNew the value when new, above zero; not null
   * @return the percentage, exact; never null
   * @throws InvalidValueException if the dimensions differ or the value when new is not above zero
   */
  public ExactQuantity retention(Quantity now, Quantity whenNew) {
    return Percentages.retention(now, whenNew);
  }

  /**
   * Works out by how much something shrank: {@code 100 (a - b) / a}, a the length before and b
   * after. Growth is negative. Plain arithmetic.
   *
   * @param before the length before, above zero; not null
   * @param after the length after; not null
   * @return the percentage, exact; never null
   * @throws InvalidValueException if the dimensions differ or the length before is not above zero
   */
  public ExactQuantity shrinkage(Quantity before, Quantity after) {
    return Percentages.shrinkage(before, after);
  }
}
