package org.ensemblerules.example.department.demo;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.ensemblerules.care.Extraction;
import org.ensemblerules.care.MachineType;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionValue;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.DecisionRule;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.ExpandedUncertainty;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.strength.Reading;
import org.ensemblerules.strength.Specimen;
import org.ensemblerules.strength.SpecimenOrigin;
import org.ensemblerules.strength.TestMethod;
import org.ensemblerules.strength.TestReport;
import org.ensemblerules.strength.TestReportBuilder;

/** What was measured on the coats of the reserve rack: in newtons, in pounds, and by hand. */
final class MeasuredStories {
  private static final OriginId PRODUCT = new OriginId("NFPA_1971_2018");
  private static final OriginId POLICY = new OriginId("EXAMPLE_DEPARTMENT_POLICY");
  private static final String DAY = "2026-11-18";

  private MeasuredStories() {}

  static List<Story> all() {
    return List.of(
        new Story(
            "A sister coat was cut up and tested; its shell tears at 31 lbf and more",
            coat ->
                coat.happened(
                    torn(SpecimenOrigin.SAME_MODEL_AGE_AND_USE, Unit.POUND_FORCE, "31", "33"))),
        new Story(
            "A sister coat tears at 22.2 lbf: more than the 22 lbf printed, less than 100 N",
            coat ->
                coat.happened(
                    torn(SpecimenOrigin.SAME_MODEL_AGE_AND_USE, Unit.POUND_FORCE, "22.2", "22.2"))),
        new Story(
            "A sister coat tears just above 100 N, inside the guard band of the laboratory's 4 N",
            coat -> coat.happened(tornWithGuardBand("102"))),
        new Story(
            "A sister coat tears just below 100 N, by less than the guard band",
            coat -> coat.happened(tornWithGuardBand("98.3"))),
        new Story(
            "This very coat was cut up; its shell held well",
            coat ->
                coat.happened(torn(SpecimenOrigin.THIS_ELEMENT, Unit.NEWTON, "140.5", "151.0"))),
        new Story(
            "A laboratory's report came without its specimens",
            coat -> coat.happened(torn(SpecimenOrigin.SAME_MODEL_AGE_AND_USE, Unit.NEWTON))),
        new Story(
            "The leak check was passed after one minute instead of three",
            coat -> coat.happened(leakage(CheckResult.PASSED, KeptConditions.leakage("1", 6)))),
        new Story(
            "The leak check failed, as it should be made",
            coat -> coat.happened(leakage(CheckResult.FAILED, KeptConditions.leakage("3", 6)))),
        new Story(
            "The leak check failed, with twice the alcohol",
            coat -> coat.happened(leakage(CheckResult.FAILED, KeptConditions.leakage("3", 3)))),
        new Story(
            "Somebody wrote the water test of a boot into the coat's record",
            coat ->
                coat.happened(
                    new LookEvent.Checked(
                        on(),
                        Check.WATER_ENTRY,
                        CheckResult.PASSED,
                        Trades.GEAR_ROOM,
                        Set.of(),
                        false,
                        KeptConditions.of(Check.WATER_ENTRY),
                        Optional.empty()))),
        new Story(
            "Coat and trousers overlap by an inch and a half",
            coat ->
                coat.happened(
                    new LookEvent.Checked(
                        on(),
                        Check.FIT_AND_OVERLAP,
                        CheckResult.PASSED,
                        Trades.GEAR_ROOM,
                        Set.of(),
                        false,
                        KeptConditions.of(Check.FIT_AND_OVERLAP),
                        Optional.of(Quantity.of("1.5", Unit.INCH))))),
        new Story("Washed at 60 degrees and dried in the sun", coat -> coat.happened(washedHot())));
  }

  private static Moment on() {
    return Moment.on(MarkedDate.parse(DAY));
  }

  private static Event leakage(CheckResult result, Map<Condition, ConditionValue> conditions) {
    return new LookEvent.Checked(
        on(),
        Check.LINER_LEAKAGE,
        result,
        Trades.GEAR_ROOM,
        Set.of(),
        false,
        conditions,
        Optional.empty());
  }

  /** Five specimens each way, the second of them the other value. */
  private static Event torn(SpecimenOrigin origin, Unit unit, String... values) {
    return tested(
        report(origin, unit, values).build(),
        new DecisionRule.SimpleAcceptance(ComparisonMethod.absolute()));
  }

  private static Event tornWithGuardBand(String newtons) {
    return tested(
        report(SpecimenOrigin.SAME_MODEL_AGE_AND_USE, Unit.NEWTON, newtons)
            .uncertainty(
                new ExpandedUncertainty(Quantity.of("4.0", Unit.NEWTON), new BigDecimal("2")))
            .build(),
        new DecisionRule.GuardBand(BigDecimal.ONE));
  }

  private static Event tested(TestReport report, DecisionRule rule) {
    return new LookEvent.Tested(
        on(), PRODUCT, report, new Purpose.AtLeastNewRequirement(POLICY), rule, Set.of());
  }

  private static TestReportBuilder report(SpecimenOrigin origin, Unit unit, String... values) {
    return TestReport.builder(
            ElementKind.COAT,
            Use.STRUCTURAL,
            Site.parse("FABRIC@OUTER_SHELL"),
            Property.TEAR_RESISTANCE,
            new TestMethod("ASTM_D5587"))
        .origin(origin)
        .laboratory("Invented Laboratory")
        .specimens(
            List.of(Direction.WARP, Direction.FILL).stream()
                .flatMap(direction -> specimens(direction, unit, values).stream())
                .toList());
  }

  private static List<Specimen> specimens(Direction direction, Unit unit, String... values) {
    if (values.length == 0) {
      return List.of();
    }
    return IntStream.range(0, 5)
        .mapToObj(
            i ->
                Specimen.of(
                    Integer.toString(i + 1),
                    direction,
                    new Reading.MeanOfHighestPeaks(
                        5, Quantity.of(values[i % values.length], unit))))
        .toList();
  }

  private static Event washedHot() {
    return new WorkEvent.Cleaned(
        on(),
        CleaningKind.ADVANCED,
        Trades.GEAR_ROOM,
        Set.of(),
        new WashedLayers.Only(Set.of(LayerKind.OUTER_SHELL)),
        false,
        Optional.of(
            WashRecord.builder()
                .waterTemperature(Quantity.of("60", Unit.DEGREE_CELSIUS))
                .extraction(new Extraction.NotSpun())
                .machine(MachineType.FRONT_LOADING)
                .practice(WashPractice.DRYING_IN_SUNLIGHT, YesNoUnknown.YES)
                .build()));
  }
}
