package org.ensemblerules.strength;

import java.util.Objects;

/**
 * The tables that test reports are judged with.
 *
 * @param requirements what product editions require; not null
 * @param methods what test methods need; not null
 * @param smallSamples ranks and exponents of the small-sample bound; not null
 * @param hydrostatic what moisture barriers must hold at fixed pressure; not null
 * @since 0.1
 */
public record StrengthTables(
    RequirementTable requirements,
    MethodTable methods,
    SmallSampleTable smallSamples,
    HydrostaticTable hydrostatic) {
  /** Checks for nulls. */
  public StrengthTables {
    Objects.requireNonNull(requirements, "requirements");
    Objects.requireNonNull(methods, "methods");
    Objects.requireNonNull(smallSamples, "smallSamples");
    Objects.requireNonNull(hydrostatic, "hydrostatic");
  }

  /**
   * Returns what judges reports by these tables.
   *
   * @param purpose what they are judged for; not null
   * @param rule the decision rule; not null
   * @return the judge, to be handed one report after the other; never null
   */
  public ReportJudge judge(Purpose purpose, DecisionRule rule) {
    return new ReportJudge(this, purpose, rule);
  }
}
