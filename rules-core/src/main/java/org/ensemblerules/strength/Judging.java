package org.ensemblerules.strength;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.measure.ExactQuantity;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.source.OriginId;

/** Judges one report: each direction on its own, the strictest counts. */
final class Judging {
  private final StrengthTables tables;
  private final Purpose purpose;
  private final DecisionRule rule;

  Judging(StrengthTables tables, Purpose purpose, DecisionRule rule) {
    this.tables = tables;
    this.purpose = purpose;
    this.rule = rule;
  }

  ReportJudge.Result judge(OriginId product, TestReport report) {
    Optional<RequirementRow> row = Optional.empty();
    try {
      row = Optional.of(requirement(tables.requirements(), product, report));
      return judged(row.get(), report);
    } catch (Stopped stopped) {
      return new ReportJudge.NoResult(stopped.reason(), stopped.detail(), row, purpose, rule);
    }
  }

  private static RequirementRow requirement(
      RequirementTable requirements, OriginId product, TestReport report) throws Stopped {
    List<RequirementRow> rows =
        requirements.requirements(
            product, report.property(), report.element(), report.use(), report.site());
    List<RequirementRow> fitting =
        rows.stream()
            .filter(
                row ->
                    row.construction().isEmpty()
                        || row.construction().equals(report.construction()))
            .toList();
    if (!fitting.isEmpty()) {
      return fitting.get(0);
    }
    if (!rows.isEmpty() && report.construction().isEmpty()) {
      throw new Stopped(
          NoResultReason.CONSTRUCTION_UNKNOWN,
          "requirements are for "
              + rows.stream().flatMap(row -> row.construction().stream()).toList());
    }
    throw new Stopped(
        NoResultReason.NO_REQUIREMENT,
        product
            + " has no row for "
            + report.property()
            + " of "
            + report.site()
            + " on "
            + report.use()
            + " "
            + report.element());
  }

  private ReportJudge.Result judged(RequirementRow row, TestReport report) throws Stopped {
    MethodTable methods = tables.methods();
    MethodRow method = method(row, methods, report);
    SpecimenOrigin origin =
        report
            .origin()
            .orElseThrow(
                () ->
                    new Stopped(
                        NoResultReason.ORIGIN_UNKNOWN,
                        "the report does not say where the specimens came from"));
    requireFitting(origin);
    List<DirectionResult> directions = new ArrayList<>();
    TestOutcome outcome = TestOutcome.PASS;
    Set<Remark> remarks = EnumSet.noneOf(Remark.class);
    for (SpecimenSets.Kept set :
        SpecimenSets.of(report, row, method, methods.discards(report.method()))) {
      DirectionResult result = direction(row, report, set);
      directions.add(result);
      outcome = outcome.stricter(result.outcome());
      remarks.addAll(result.remarks());
    }
    if (purpose instanceof Purpose.UsedGearPolicy) {
      remarks.add(Remark.REQUIREMENT_IS_FOR_NEW_MATERIAL);
      remarks.add(Remark.CLEARS_NO_OTHER_ELEMENT);
    }
    if (method.destructive() && origin == SpecimenOrigin.THIS_ELEMENT) {
      remarks.add(Remark.ELEMENT_CUT_IS_RETIRED);
    }
    return new ReportJudge.Judged(outcome, directions, row, method, purpose, rule, origin, remarks);
  }

  private static MethodRow method(RequirementRow row, MethodTable methods, TestReport report)
      throws Stopped {
    if (!row.methods().contains(report.method())) {
      throw new Stopped(
          NoResultReason.OTHER_METHOD, report.method() + "; accepted: " + row.methods());
    }
    return methods
        .method(report.method())
        .orElseThrow(() -> new Stopped(NoResultReason.UNKNOWN_METHOD, report.method().toString()));
  }

  private void requireFitting(SpecimenOrigin origin) throws Stopped {
    boolean newCloth = origin == SpecimenOrigin.NEW_CLOTH;
    if (newCloth != purpose instanceof Purpose.Certification) {
      throw new Stopped(
          NoResultReason.PURPOSE_DOES_NOT_FIT, purpose.text() + "; specimens from " + origin);
    }
  }

  private DirectionResult direction(RequirementRow row, TestReport report, SpecimenSets.Kept set)
      throws Stopped {
    EffectiveLimit limit = EffectiveLimit.of(row, purpose, set.direction());
    if (set.unit().dimension() != limit.value().unit().dimension()) {
      throw new Stopped(
          NoResultReason.UNIT_DOES_NOT_FIT,
          "readings in " + set.unit().symbol() + "; the limit is " + limit.value());
    }
    // Converted exactly, value by value, so that temperature scales come right too.
    List<Rational> values =
        set.values().values().stream()
            .map(value -> new ExactQuantity(value, set.unit()).in(limit.value().unit()).value())
            .toList();
    Decision decision =
        Decision.of(
            rule,
            row.statistic(),
            limit,
            Sample.of(values),
            Uncertainty.of(report, limit),
            tables.smallSamples());
    List<Remark> remarks = new ArrayList<>();
    if (!set.discarded().isEmpty()) {
      remarks.add(Remark.SPECIMENS_DISCARDED);
    }
    if (decision.secondUnitWouldDiffer()) {
      remarks.add(Remark.SECOND_UNIT_WOULD_DIFFER);
    }
    Optional<Remark> fabric = fabricFirst(row, report, limit, set, values, decision.outcome());
    fabric.ifPresent(remarks::add);
    TestOutcome outcome =
        fabric.filter(remark -> remark == Remark.FABRIC_BROKE_FIRST).isPresent()
            ? TestOutcome.PASS
            : decision.outcome();
    ImmutableList.Builder<Figure> figures = ImmutableList.builder();
    figures.add(Figure.count("specimens tested", values.size() + set.discarded().size()));
    figures.add(Figure.count("specimens kept", values.size()));
    limit.whenNew().ifPresent(value -> figures.add(Figure.of("value when new", value.exactly())));
    figures.addAll(decision.figures());
    return new DirectionResult(
        set.direction(),
        outcome,
        figures.build(),
        set.values().keySet().asList(),
        set.discarded(),
        remarks);
  }

  /**
   * A seam that outlives a fabric weaker than the limit is not at fault, if the fabric's own
   * strength is shown. Only of new material: on used gear a fabric that breaks first may have been
   * weakened by use, and nothing is excused.
   */
  private Optional<Remark> fabricFirst(
      RequirementRow row,
      TestReport report,
      EffectiveLimit limit,
      SpecimenSets.Kept set,
      List<Rational> values,
      TestOutcome outcome) {
    if (!row.fabricFailsFirst()
        || outcome.compareTo(TestOutcome.CONDITIONAL_FAIL) < 0
        || limit.printed().isEmpty()) {
      return Optional.empty();
    }
    int place = 0;
    for (Map.Entry<Specimen, Rational> specimen : set.values().entrySet()) {
      if (limit.margin(values.get(place)).signum() < 0
          && specimen.getKey().failure() != FailureMode.FABRIC) {
        return Optional.empty();
      }
      place++;
    }
    if (values.stream().noneMatch(value -> limit.margin(value).signum() < 0)) {
      return Optional.empty();
    }
    if (purpose instanceof Purpose.UsedGearPolicy) {
      return Optional.of(Remark.FABRIC_BROKE_FIRST_IN_USE);
    }
    boolean weaker =
        report
            .fabricStrength()
            .filter(
                strength ->
                    strength.unit().dimension() == limit.value().unit().dimension()
                        && strength.exactly().compareSize(limit.value()) < 0)
            .isPresent();
    return Optional.of(weaker ? Remark.FABRIC_BROKE_FIRST : Remark.FABRIC_STRENGTH_MISSING);
  }
}
