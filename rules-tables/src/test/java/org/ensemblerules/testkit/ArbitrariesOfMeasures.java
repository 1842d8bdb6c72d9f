package org.ensemblerules.testkit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.ensemblerules.care.Extraction;
import org.ensemblerules.care.ExtractorForce;
import org.ensemblerules.care.MachineType;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashRecordBuilder;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionForm;
import org.ensemblerules.fieldcheck.ConditionValue;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rounding;
import org.ensemblerules.measure.Ties;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.Construction;
import org.ensemblerules.strength.DecisionRule;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.ExpandedUncertainty;
import org.ensemblerules.strength.FailureMode;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.strength.Reading;
import org.ensemblerules.strength.Specimen;
import org.ensemblerules.strength.SpecimenOrigin;
import org.ensemblerules.strength.TestCase;
import org.ensemblerules.strength.TestMethod;
import org.ensemblerules.strength.TestReport;
import org.ensemblerules.strength.TestReportBuilder;

/** What was measured: conditions of checks, particulars of washes, test reports. */
public final class ArbitrariesOfMeasures {
  // More than these is refused, and is asked of the reader elsewhere.
  private static final Quantity LARGEST_RADIUS = Quantity.of("1000", Unit.METER);
  private static final Quantity FASTEST = Quantity.of("1000000", Unit.TURN_PER_MINUTE);

  private ArbitrariesOfMeasures() {}

  private static Arbitrary<Quantity> quantities(Dimension dimension) {
    return Combinators.combine(
            ArbitrariesOfTexts.positiveNumbers(),
            Arbitraries.of(Unit.class).filter(unit -> unit.dimension() == dimension))
        .as(Quantity::new);
  }

  private static boolean atMost(Quantity largest, Quantity given) {
    return given.compareSize(largest) <= 0;
  }

  private static Arbitrary<BigDecimal> percents() {
    return Arbitraries.bigDecimals()
        .between(new BigDecimal("0.01"), new BigDecimal("99.99"))
        .ofScale(2);
  }

  /**
   * Returns what can be stated of conditions.
   *
   * @return up to four conditions with values of their forms
   */
  public static Arbitrary<Map<Condition, ConditionValue>> conditions() {
    return Arbitraries.of(Condition.class)
        .set()
        .ofMaxSize(4)
        .flatMap(
            names -> {
              Arbitrary<List<Map.Entry<Condition, ConditionValue>>> all =
                  Combinators.combine(
                          names.stream()
                              .map(name -> values(name).map(value -> Map.entry(name, value)))
                              .toList())
                      .as(entries -> entries);
              return all.map(entries -> Map.ofEntries(entries.toArray(Map.Entry[]::new)));
            });
  }

  private static Arbitrary<ConditionValue> values(Condition condition) {
    if (condition.form() == ConditionForm.ANSWERED) {
      return Arbitraries.of(YesNoUnknown.class).map(ConditionValue.Answered::new);
    } else if (condition.form() == ConditionForm.COUNTED) {
      return Arbitraries.integers().between(0, 100).map(ConditionValue.Counted::new);
    }
    Dimension dimension = condition.dimension().orElseThrow();
    Arbitrary<ConditionValue> measured = quantities(dimension).map(ConditionValue.Measured::new);
    return dimension == Dimension.RATIO
        ? Arbitraries.oneOf(
            measured,
            Combinators.combine(quantities(Dimension.VOLUME), quantities(Dimension.VOLUME))
                .as(ConditionValue.Proportion::new))
        : measured;
  }

  /**
   * Returns washes of which all, some or nothing is known.
   *
   * @return the washes
   */
  public static Arbitrary<WashRecord> washes() {
    Arbitrary<Extraction> extractions =
        Arbitraries.oneOf(
            Arbitraries.just(new Extraction.NotStated()),
            Arbitraries.just(new Extraction.NotSpun()),
            quantities(Dimension.ACCELERATION_RATIO).map(Extraction.Stated::new),
            Combinators.combine(
                    quantities(Dimension.LENGTH).filter(radius -> atMost(LARGEST_RADIUS, radius)),
                    quantities(Dimension.ROTATION).filter(speed -> atMost(FASTEST, speed)))
                .as(ExtractorForce::ofRadius)
                .map(Extraction.Computed::new));
    return Combinators.combine(
            quantities(Dimension.TEMPERATURE).optional(),
            quantities(Dimension.TEMPERATURE).optional(),
            Arbitraries.bigDecimals()
                .between(BigDecimal.ZERO, new BigDecimal(14))
                .ofScale(1)
                .optional(),
            extractions,
            Arbitraries.of(MachineType.class),
            Arbitraries.of(WashPractice.CHLORINE_BLEACH, WashPractice.LAYERS_TOGETHER)
                .set()
                .ofMaxSize(2),
            Arbitraries.of(YesNoUnknown.class))
        .as(
            (water, drying, ph, extraction, machine, practices, known) -> {
              WashRecordBuilder wash = WashRecord.builder().extraction(extraction).machine(machine);
              water.ifPresent(wash::waterTemperature);
              drying.ifPresent(wash::dryingTemperature);
              ph.ifPresent(wash::detergentPh);
              practices.forEach(practice -> wash.practice(practice, known));
              return wash.build();
            });
  }

  private static Arbitrary<Reading> readings() {
    Arbitrary<Quantity> forces = quantities(Dimension.FORCE);
    return Arbitraries.oneOf(
        forces.map(Reading.Single::new),
        forces.list().ofMinSize(1).ofMaxSize(6).map(Reading.Peaks::new),
        Combinators.combine(Arbitraries.integers().between(2, 9), forces)
            .as(Reading.MeanOfHighestPeaks::new));
  }

  private static Arbitrary<List<Specimen>> specimens() {
    return Combinators.combine(
            Arbitraries.of(Direction.class),
            readings(),
            Arbitraries.of(FailureMode.class),
            quantities(Dimension.LENGTH).optional(),
            Arbitraries.of(true, false),
            Arbitraries.of(true, false),
            ArbitrariesOfTexts.texts(200).optional(0.2))
        .as(
            (direction, reading, failure, jaw, slipped, left, fault) ->
                new Specimen("1", direction, reading, failure, jaw, slipped, left, fault))
        .list()
        .ofMaxSize(4)
        .map(
            list -> {
              List<Specimen> named = new ArrayList<>();
              for (Specimen each : list) {
                named.add(
                    new Specimen(
                        Integer.toString(named.size() + 1),
                        each.direction(),
                        each.reading(),
                        each.failure(),
                        each.fromJaw(),
                        each.slipped(),
                        each.leftMarkedLine(),
                        each.fault()));
              }
              return named;
            });
  }

  private static Arbitrary<TestReport> reports() {
    return Combinators.combine(
            Arbitraries.of(ElementKind.class),
            ArbitrariesOfGear.sites(),
            Arbitraries.of(Property.class),
            Arbitraries.of(Construction.class).optional(),
            Arbitraries.of(SpecimenOrigin.class).optional(),
            Combinators.combine(quantities(Dimension.FORCE), ArbitrariesOfTexts.positiveNumbers())
                .as(ExpandedUncertainty::new)
                .optional(),
            Combinators.combine(
                    quantities(Dimension.FORCE).optional(),
                    ArbitrariesOfTexts.days().optional(),
                    ArbitrariesOfTexts.texts(200).optional())
                .as(Particulars::new),
            specimens())
        .as(
            (element, site, property, construction, origin, uncertainty, more, specimens) -> {
              TestReportBuilder report =
                  TestReport.builder(
                      element, Use.STRUCTURAL, site, property, new TestMethod("ASTM_D5034"));
              construction.ifPresent(report::construction);
              origin.ifPresent(report::origin);
              uncertainty.ifPresent(report::uncertainty);
              more.fabric().ifPresent(report::fabricStrength);
              more.testedOn().ifPresent(report::testedOn);
              more.laboratory().ifPresent(report::laboratory);
              return report.specimens(specimens).build();
            });
  }

  private record Particulars(
      Optional<Quantity> fabric,
      Optional<java.time.LocalDate> testedOn,
      Optional<String> laboratory) {}

  private static Arbitrary<Purpose> purposes() {
    OriginId policy = new OriginId("INVENTED_POLICY");
    return Arbitraries.oneOf(
        Arbitraries.just(new Purpose.Certification()),
        Arbitraries.just(new Purpose.AtLeastNewRequirement(policy)),
        Combinators.combine(
                percents(),
                Arbitraries.maps(Arbitraries.of(Direction.class), quantities(Dimension.FORCE))
                    .ofMaxSize(2))
            .as(
                (percent, whenNew) ->
                    new Purpose.AtLeastShareOfNewValue(policy, percent, whenNew)));
  }

  private static Arbitrary<DecisionRule> rules() {
    Arbitrary<ComparisonMethod> comparisons =
        Arbitraries.oneOf(
            Arbitraries.just(ComparisonMethod.absolute()),
            Arbitraries.of(Ties.class).map(ComparisonMethod.RoundedToLimit::new),
            Arbitraries.of(Ties.class)
                .map(ties -> new ComparisonMethod.RoundedTo(new Rounding(BigDecimal.TEN, ties))));
    return Arbitraries.oneOf(
        comparisons.map(DecisionRule.SimpleAcceptance::new),
        percents().map(DecisionRule.GuardBand::new),
        percents().map(DecisionRule.ConformanceProbability::new),
        percents().map(DecisionRule.ConfidenceBoundOfMean::new),
        Combinators.combine(percents(), percents()).as(DecisionRule.NormalTolerance::new),
        Combinators.combine(percents(), percents()).as(DecisionRule.SmallSampleNonparametric::new));
  }

  /**
   * Returns test reports with what they are judged by.
   *
   * @return reports with up to four specimens
   */
  public static Arbitrary<TestCase> testCases() {
    return Combinators.combine(ArbitrariesOfTexts.texts(100), reports(), purposes(), rules())
        .as(
            (id, report, purpose, rule) ->
                new TestCase(id, new OriginId("INVENTED_PRODUCT"), report, purpose, rule));
  }
}
