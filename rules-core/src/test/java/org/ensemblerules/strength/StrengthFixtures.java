package org.ensemblerules.strength;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Examples;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.RowKey;

/** Frozen tables for tests of the functions, apart from the tables shipped. */
final class StrengthFixtures {
  static final OriginId PRODUCT = new OriginId("PRODUCT_TEST");
  static final OriginId POLICY = new OriginId("POLICY_TEST");
  static final TestMethod TEAR = new TestMethod("TEAR_TEST");
  static final TestMethod GRAB = new TestMethod("GRAB_TEST");
  static final TestMethod STRIP = new TestMethod("STRIP_TEST");
  static final TestMethod SEAM = new TestMethod("SEAM_TEST");
  static final Site SHELL = Site.of(Part.FABRIC, LayerKind.OUTER_SHELL);
  static final Site MAJOR_A = Site.of(Part.SEAM_MAJOR_A, LayerKind.OUTER_SHELL);
  static final Purpose CERTIFICATION = new Purpose.Certification();
  static final Purpose USED = new Purpose.AtLeastNewRequirement(POLICY);
  static final DecisionRule SIMPLE = new DecisionRule.SimpleAcceptance(ComparisonMethod.absolute());

  private StrengthFixtures() {}

  static Provenance row(String key) {
    return new Provenance(
        new RowKey(key),
        PRODUCT,
        new Basis.CommonPractice(),
        LocalDate.of(2030, 1, 1),
        Optional.empty());
  }

  static RequirementRow requirement(
      String key,
      Property property,
      Site site,
      TestMethod method,
      Set<Direction> directions,
      SpecimenValue value,
      Statistic statistic,
      Limit limit) {
    return new RequirementRow(
        row(key),
        PRODUCT,
        property,
        ElementKind.COAT,
        Use.STRUCTURAL,
        site,
        Optional.empty(),
        directions,
        Set.of(method),
        value,
        statistic,
        limit,
        1,
        property == Property.SEAM_STRENGTH,
        "as the test says");
  }

  static Limit tearLimit() {
    return Limit.atLeast("100", Unit.NEWTON).alsoPrinted(Quantity.of("22", Unit.POUND_FORCE));
  }

  static RequirementTable requirements() {
    return RequirementTable.of(
            List.of(
                requirement(
                    "tear",
                    Property.TEAR_RESISTANCE,
                    SHELL,
                    TEAR,
                    EnumSet.of(Direction.WARP, Direction.FILL),
                    new SpecimenValue.MeanOfHighestPeaks(5),
                    Statistic.MEAN_OF_SPECIMENS,
                    tearLimit()),
                requirement(
                    "breaking",
                    Property.BREAKING_STRENGTH,
                    SHELL,
                    GRAB,
                    EnumSet.of(Direction.WARP),
                    new SpecimenValue.AsRead(),
                    Statistic.MEAN_OF_SPECIMENS,
                    Limit.atLeast("623", Unit.NEWTON)),
                requirement(
                    "residual",
                    Property.RESIDUAL_BREAKING_STRENGTH,
                    SHELL,
                    STRIP,
                    EnumSet.of(Direction.WARP),
                    new SpecimenValue.AsRead(),
                    Statistic.EACH_SPECIMEN,
                    Limit.atLeast("100", Unit.NEWTON)),
                requirement(
                    "seam",
                    Property.SEAM_STRENGTH,
                    MAJOR_A,
                    SEAM,
                    EnumSet.of(Direction.UNDIRECTED),
                    new SpecimenValue.AsRead(),
                    Statistic.MEAN_OF_SPECIMENS,
                    Limit.atLeast("667", Unit.NEWTON)),
                requirement(
                    "shrinkage",
                    Property.HEAT_SHRINKAGE,
                    SHELL,
                    TEAR,
                    EnumSet.of(Direction.WARP),
                    new SpecimenValue.AsRead(),
                    Statistic.MEAN_OF_SPECIMENS,
                    Limit.atMost("10", Unit.PERCENT)),
                requirement(
                    "wash",
                    Property.WASH_CHANGE,
                    SHELL,
                    TEAR,
                    EnumSet.of(Direction.WARP),
                    new SpecimenValue.AsRead(),
                    Statistic.EACH_SPECIMEN,
                    Limit.atMost("3", Unit.PERCENT))))
        .orElseThrow();
  }

  static MethodTable methods() {
    return MethodTable.of(
            List.of(
                method("tear", TEAR, 1, 1),
                method("grab", GRAB, 1, 1),
                method("strip", STRIP, 1, 1),
                method("seam", SEAM, 1, 1)),
            List.of(
                new DiscardRow(row("tear-line"), TEAR, new DiscardRule.LeftMarkedLine()),
                new DiscardRow(row("tear-slip"), TEAR, new DiscardRule.Slipped()),
                new DiscardRow(
                    row("grab-jaw"),
                    GRAB,
                    new DiscardRule.JawBreakBelowOthers(
                        Quantity.of("5", Unit.MILLIMETER), new BigDecimal("50"))),
                new DiscardRow(row("grab-fault"), GRAB, new DiscardRule.RecordedFault()),
                new DiscardRow(
                    row("strip-jaw"),
                    STRIP,
                    new DiscardRule.JawBreakBelowNormal(Quantity.of("5", Unit.MILLIMETER), 5))))
        .orElseThrow();
  }

  static MethodRow method(String key, TestMethod method, int tested, int kept) {
    return new MethodRow(row(key), method, "a test method", true, tested, Map.of(), kept);
  }

  static SmallSampleTable smallSamples() {
    List<SmallSampleRow> rows = new ArrayList<>();
    for (List<String> line : Examples.read(StrengthFixtures.class, "small-sample-factors.csv")) {
      rows.add(
          new SmallSampleRow(
              row("small-" + line.get(0) + "-" + line.get(1)),
              new BigDecimal(line.get(0)),
              new BigDecimal("95"),
              Integer.parseInt(line.get(1)),
              Integer.parseInt(line.get(2)),
              new BigDecimal(line.get(3))));
    }
    return SmallSampleTable.of(rows).orElseThrow();
  }

  static HydrostaticTable hydrostatic() {
    return HydrostaticTable.of(List.of()).orElseThrow();
  }

  static StrengthTables tables() {
    return new StrengthTables(requirements(), methods(), smallSamples(), hydrostatic());
  }

  /** A report of single values in one direction, on new cloth. */
  static TestReportBuilder breaking(Unit unit, String... values) {
    return report(Property.BREAKING_STRENGTH, SHELL, GRAB)
        .specimens(specimens(Direction.WARP, unit, values));
  }

  static TestReportBuilder report(Property property, Site site, TestMethod method) {
    return TestReport.builder(ElementKind.COAT, Use.STRUCTURAL, site, property, method)
        .origin(SpecimenOrigin.NEW_CLOTH);
  }

  static List<Specimen> specimens(Direction direction, Unit unit, String... values) {
    List<Specimen> specimens = new ArrayList<>();
    for (String value : values) {
      specimens.add(
          Specimen.of(
              direction + " " + (specimens.size() + 1), direction, Quantity.of(value, unit)));
    }
    return specimens;
  }

  static ReportJudge.Result judge(TestReportBuilder report, Purpose purpose, DecisionRule rule) {
    return tables().judge(purpose, rule).judge(PRODUCT, report.build());
  }

  static ReportJudge.Judged judged(TestReportBuilder report, Purpose purpose, DecisionRule rule) {
    ReportJudge.Result result = judge(report, purpose, rule);
    if (result instanceof ReportJudge.Judged judged) {
      return judged;
    }
    throw new AssertionError("no result: " + result);
  }

  /** A figure of the first direction. */
  static BigDecimal figure(ReportJudge.Judged judged, String name) {
    return judged.directions().get(0).figures().stream()
        .filter(figure -> figure.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no figure " + name + " in " + judged))
        .value();
  }
}
