package org.ensemblerules.strength;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Ties;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.testkit.StrictnessLaw;

/** What passes by a stricter row passes by a milder one, whatever was measured. */
@PropertyDefaults(tries = 3000, edgeCases = EdgeCasesMode.NONE)
class StricterRequirementsProperties {
  private static final Set<Direction> BOTH = EnumSet.of(Direction.WARP, Direction.FILL);

  @Provide
  Arbitrary<RequirementRow> requirements() {
    return Combinators.combine(
            Arbitraries.of("99.9", "100", "100.0", "101", "117"),
            Arbitraries.of(EnumSet.of(Direction.WARP), BOTH),
            Arbitraries.of(Statistic.MEAN_OF_SPECIMENS, Statistic.EACH_SPECIMEN),
            Arbitraries.of(1, 1, 3),
            Arbitraries.of(false, false, true))
        .as(StricterRequirementsProperties::row);
  }

  private static RequirementRow row(
      String newtons, Set<Direction> directions, Statistic statistic, int least, boolean fabric) {
    return new RequirementRow(
        StrengthFixtures.row("requirement"),
        StrengthFixtures.PRODUCT,
        org.ensemblerules.strength.Property.SEAM_STRENGTH,
        ElementKind.COAT,
        Use.STRUCTURAL,
        StrengthFixtures.MAJOR_A,
        Optional.empty(),
        directions,
        Set.of(StrengthFixtures.SEAM),
        new SpecimenValue.AsRead(),
        statistic,
        Limit.atLeast(newtons, Unit.NEWTON),
        least,
        fabric,
        "as the test says");
  }

  @Provide
  Arbitrary<TestReportBuilder> reports() {
    Arbitrary<Specimen> specimens =
        Combinators.combine(
                Arbitraries.of(
                    "90", "94.9", "99.4", "99.5", "99.6", "99.9", "100", "100.4", "110", "130"),
                Arbitraries.of(FailureMode.FABRIC, FailureMode.NOT_RECORDED),
                Arbitraries.of(Direction.WARP, Direction.WARP, Direction.FILL))
            .as(
                (value, failure, direction) ->
                    Specimen.of("1", direction, Quantity.of(value, Unit.NEWTON))
                        .withFailure(failure));
    return Combinators.combine(
            specimens.list().ofMinSize(1).ofMaxSize(4),
            Arbitraries.of(SpecimenOrigin.NEW_CLOTH, SpecimenOrigin.THIS_ELEMENT),
            Arbitraries.of("95", "110").optional())
        .as(
            (all, origin, fabric) -> {
              TestReportBuilder report =
                  StrengthFixtures.report(
                          org.ensemblerules.strength.Property.SEAM_STRENGTH,
                          StrengthFixtures.MAJOR_A,
                          StrengthFixtures.SEAM)
                      .origin(origin)
                      .specimens(numbered(all));
              fabric.ifPresent(newtons -> report.fabricStrength(Quantity.of(newtons, Unit.NEWTON)));
              return report;
            });
  }

  private static List<Specimen> numbered(List<Specimen> all) {
    List<Specimen> numbered = new ArrayList<>();
    for (Specimen each : all) {
      numbered.add(
          Specimen.of("S" + numbered.size(), each.direction(), each.reading())
              .withFailure(each.failure()));
    }
    return numbered;
  }

  @Provide
  Arbitrary<DecisionRule> rules() {
    return Arbitraries.of(
        StrengthFixtures.SIMPLE,
        new DecisionRule.SimpleAcceptance(ComparisonMethod.roundedToLimit()),
        new DecisionRule.SimpleAcceptance(new ComparisonMethod.RoundedToLimit(Ties.HALF_UP)),
        new DecisionRule.ConfidenceBoundOfMean(new BigDecimal("95")));
  }

  private static boolean passes(
      RequirementRow row,
      MethodRow method,
      TestReportBuilder report,
      Purpose purpose,
      DecisionRule rule) {
    StrengthTables tables =
        new StrengthTables(
            RequirementTable.of(List.of(row)).orElseThrow(),
            MethodTable.of(List.of(method), List.of()).orElseThrow(),
            StrengthFixtures.smallSamples(),
            HydrostaticTable.of(List.of()).orElseThrow());
    return tables.judge(purpose, rule).judge(StrengthFixtures.PRODUCT, report.build())
            instanceof ReportJudge.Judged judged
        && judged.outcome() == TestOutcome.PASS;
  }

  private static final MethodRow METHOD =
      StrengthFixtures.method("seam", StrengthFixtures.SEAM, 1, 1);

  @FewestTries(500)
  @Property
  void requirements(
      @ForAll("requirements") RequirementRow one,
      @ForAll("requirements") RequirementRow other,
      @ForAll("reports") TestReportBuilder report,
      @ForAll("rules") DecisionRule rule) {
    for (Purpose purpose : List.of(StrengthFixtures.CERTIFICATION, StrengthFixtures.USED)) {
      StrictnessLaw.holds(
          one,
          other,
          (strict, mild) ->
              !passes(strict, METHOD, report, purpose, rule)
                  || passes(mild, METHOD, report, purpose, rule));
    }
  }

  @Property
  void requirementsPassItOn(
      @ForAll("requirements") RequirementRow one,
      @ForAll("requirements") RequirementRow two,
      @ForAll("requirements") RequirementRow three) {
    StrictnessLaw.passesOn(one, two, three);
  }

  @Provide
  Arbitrary<MethodRow> methods() {
    return Combinators.combine(
            Arbitraries.integers().between(1, 3),
            Arbitraries.integers().between(1, 3),
            Arbitraries.integers().between(1, 3).optional())
        .as(
            (tested, kept, warp) ->
                new MethodRow(
                    StrengthFixtures.row("seam"),
                    StrengthFixtures.SEAM,
                    "a test method",
                    true,
                    tested,
                    warp.map(least -> Map.of(Direction.WARP, least)).orElse(Map.of()),
                    kept));
  }

  @FewestTries(500)
  @Property
  void methods(
      @ForAll("methods") MethodRow one,
      @ForAll("methods") MethodRow other,
      @ForAll("reports") TestReportBuilder report) {
    RequirementRow row = row("95", BOTH, Statistic.MEAN_OF_SPECIMENS, 1, false);
    StrictnessLaw.holds(
        one,
        other,
        (strict, mild) ->
            !passes(row, strict, report, StrengthFixtures.CERTIFICATION, StrengthFixtures.SIMPLE)
                || passes(
                    row, mild, report, StrengthFixtures.CERTIFICATION, StrengthFixtures.SIMPLE));
  }

  @Provide
  Arbitrary<UsedGearRow> policies() {
    return Arbitraries.of("70", "85", "90", "100")
        .optional()
        .map(share -> new UsedGearRow(StrengthFixtures.row("policy"), share.map(BigDecimal::new)));
  }

  private static boolean passes(UsedGearRow policy, String newtons, String whenNew) {
    Purpose told =
        new Purpose.AtLeastShareOfNewValue(
            StrengthFixtures.POLICY,
            BigDecimal.ONE,
            Map.of(Direction.WARP, Quantity.of(whenNew, Unit.NEWTON)));
    TestReportBuilder report =
        StrengthFixtures.report(
                org.ensemblerules.strength.Property.SEAM_STRENGTH,
                StrengthFixtures.MAJOR_A,
                StrengthFixtures.SEAM)
            .origin(SpecimenOrigin.THIS_ELEMENT)
            .specimens(StrengthFixtures.specimens(Direction.WARP, Unit.NEWTON, newtons));
    return passes(
        row("623", EnumSet.of(Direction.WARP), Statistic.MEAN_OF_SPECIMENS, 1, false),
        METHOD,
        report,
        policy.purpose(told).orElseThrow(),
        StrengthFixtures.SIMPLE);
  }

  @FewestTries(500)
  @Property
  void usedGear(@ForAll("policies") UsedGearRow one, @ForAll("policies") UsedGearRow other) {
    for (String newtons : List.of("500", "600", "623", "700", "900")) {
      for (String whenNew : List.of("500", "630", "700", "1000")) {
        StrictnessLaw.holds(
            one,
            other,
            (strict, mild) -> !passes(strict, newtons, whenNew) || passes(mild, newtons, whenNew));
      }
    }
  }

  /** Of 90 % and the requirement for new material, each lets something pass that the other bars. */
  @Example
  void aShareAndTheNewRequirementDoNotCompare() {
    UsedGearRow share =
        new UsedGearRow(StrengthFixtures.row("a"), Optional.of(new BigDecimal("90")));
    UsedGearRow asNew = new UsedGearRow(StrengthFixtures.row("b"), Optional.empty());
    // 700 N of 1000 N when new, and 600 N of 630 N; 623 N is required.
    assertThat(List.of(passes(share, "700", "1000"), passes(asNew, "700", "1000")))
        .containsExactly(false, true);
    assertThat(List.of(passes(share, "600", "630"), passes(asNew, "600", "630")))
        .containsExactly(true, false);
    assertThat(asNew.compareStrictness(share)).isEqualTo(Comparison.UNDECIDED);
  }

  /** 99.6 N is 100 N when rounded to the place of 100 N, and less than 99.9 N to that of 99.9 N. */
  @Example
  void theHigherLimitMayLetMorePassWhereValuesAreRounded() {
    Limit hundred = Limit.atLeast("100", Unit.NEWTON);
    Limit less = Limit.atLeast("99.9", Unit.NEWTON);
    Quantity measured = Quantity.of("99.6", Unit.NEWTON);
    assertThat(hundred.compare(measured, ComparisonMethod.roundedToLimit()).met()).isTrue();
    assertThat(less.compare(measured, ComparisonMethod.roundedToLimit()).met()).isFalse();
    assertThat(hundred.compareStrictness(less)).isEqualTo(Comparison.STRICTER);
    assertThat(hundred.compareStrictnessRounded(less)).isEqualTo(Comparison.UNDECIDED);
  }

  @Provide
  Arbitrary<HydrostaticRow> hydrostatic() {
    return Combinators.combine(
            Arbitraries.of("6.9", "7", "13.8", "14"),
            Arbitraries.of("10", "15", "15.0"),
            Arbitraries.integers().between(0, 2),
            Arbitraries.integers().between(1, 2))
        .as(
            (pressure, dwell, fabric, seam) ->
                new HydrostaticRow(
                    StrengthFixtures.row("hydrostatic"),
                    ElementKind.COAT,
                    Use.STRUCTURAL,
                    Limit.atLeast(pressure, Unit.KILOPASCAL),
                    Limit.atLeast(dwell, Unit.SECOND),
                    fabric,
                    seam,
                    "as the test says"));
  }

  @Provide
  Arbitrary<HydrostaticTrial> trials() {
    Arbitrary<HydrostaticTrial.Spot> spots =
        Combinators.combine(
                Arbitraries.of(true, false),
                Arbitraries.of(
                    YesNoUnknown.NO,
                    YesNoUnknown.NO,
                    YesNoUnknown.NO,
                    YesNoUnknown.YES,
                    YesNoUnknown.UNKNOWN))
            .as((seam, leaked) -> new HydrostaticTrial.Spot("a place", seam, leaked));
    return Combinators.combine(
            Arbitraries.of("6.8", "6.9", "7.2", "13.6", "13.8", "14"),
            Arbitraries.of("9.6", "10", "14.7", "15"),
            spots.list().ofMaxSize(4))
        .as(
            (pressure, dwell, all) ->
                new HydrostaticTrial(
                    Quantity.of(pressure, Unit.KILOPASCAL), Quantity.of(dwell, Unit.SECOND), all));
  }

  private static int severity(
      HydrostaticRow row, HydrostaticTrial trial, ComparisonMethod comparison) {
    HydrostaticResult result =
        HydrostaticTable.of(List.of(row))
            .orElseThrow()
            .judge(ElementKind.COAT, Use.STRUCTURAL, trial, comparison);
    if (result instanceof HydrostaticResult.Held) {
      return 0;
    }
    return result instanceof HydrostaticResult.ConditionsNotKept ? 1 : 2;
  }

  @FewestTries(500)
  @Property
  void hydrostatic(
      @ForAll("hydrostatic") HydrostaticRow one,
      @ForAll("hydrostatic") HydrostaticRow other,
      @ForAll("trials") HydrostaticTrial trial) {
    for (ComparisonMethod comparison :
        List.of(ComparisonMethod.absolute(), ComparisonMethod.roundedToLimit())) {
      StrictnessLaw.holds(
          one,
          other,
          (strict, mild) ->
              severity(strict, trial, comparison) >= severity(mild, trial, comparison));
    }
  }
}
