package org.ensemblerules.testkit;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.DecisionEvent;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.AssessmentBuilder;

/** Histories and assessments that hold anything that can be handed over, likely or not. */
public final class ArbitrariesOfAssessments {
  private static final List<Effect> DECIDED =
      List.of(
          new Effect.Retire(Scope.ELEMENT),
          new Effect.ReplacePart(RepairClass.BASIC),
          new Effect.Repair(RepairClass.ADVANCED, Scope.PART),
          new Effect.Clean(CleaningKind.ADVANCED, Scope.ELEMENT),
          new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT));

  private ArbitrariesOfAssessments() {}

  /**
   * Returns moments.
   *
   * @return moments with and without an order in their day
   */
  public static Arbitrary<Moment> moments() {
    return Combinators.combine(
            ArbitrariesOfTexts.markedDates(),
            Arbitraries.frequencyOf(
                Tuple.of(3, Arbitraries.just(0)),
                Tuple.of(1, Arbitraries.integers().between(1, 10_000))))
        .as(Moment::new);
  }

  /**
   * Returns events of every kind.
   *
   * @param criteria the keys of criteria that inspections speak of
   * @return the events
   */
  public static Arbitrary<Event> events(List<RowKey> criteria) {
    return Arbitraries.oneOf(
        Combinators.combine(moments(), ArbitrariesOfTexts.texts(200)).as(UseEvent.Issued::new),
        moments().map(UseEvent.Stocked::new),
        moments().map(UseEvent.Returned::new),
        moments().map(UseEvent.Used::new),
        Combinators.combine(
                ArbitrariesOfWork.inspections(criteria), moments(), moments().optional(0.3))
            .as(
                (inspection, when, begun) ->
                    new LookEvent.Inspected(inspection, when.orderInDay(), begun)),
        ArbitrariesOfWork.findings().map(LookEvent.Found::new),
        done(),
        elsewhere(),
        Combinators.combine(moments(), ArbitrariesOfTexts.texts(300)).as(EndEvent.Retired::new),
        Combinators.combine(
                moments(),
                Arbitraries.of(LayerKind.class),
                ArbitrariesOfTexts.texts(200).optional(),
                ArbitrariesOfTexts.texts(300))
            .as(EndEvent.LayerRetired::new),
        Combinators.combine(moments(), ArbitrariesOfTexts.texts(300)).as(EndEvent.Disposed::new));
  }

  private static Arbitrary<Event> elsewhere() {
    return Arbitraries.oneOf(
        Combinators.combine(moments(), Arbitraries.of(Exposure.class))
            .as(ExposureEvent.Exposed::new),
        Combinators.combine(
                moments(),
                moments(),
                Arbitraries.of(Exposure.class).filter(to -> to != Exposure.UNKNOWN),
                ArbitrariesOfWork.doers(),
                ArbitrariesOfTexts.texts(300))
            .as(ExposureEvent.ExposureIdentified::new),
        Combinators.combine(
                moments(), Arbitraries.of(Transfer.class), ArbitrariesOfTexts.texts(200))
            .as(UseEvent.Moved::new),
        Combinators.combine(
                moments(), ArbitrariesOfTexts.texts(300), Arbitraries.of(YesNoUnknown.class))
            .as(WorkEvent.Modified::new),
        Combinators.combine(moments(), ArbitrariesOfTexts.texts(300)).as(UseEvent.TakenOut::new),
        Combinators.combine(
                moments(),
                ArbitrariesOfTexts.texts(90).map(text -> new FindingId("d" + text.strip())),
                Arbitraries.of(Part.class).map(Site::of),
                Arbitraries.of(DECIDED),
                ArbitrariesOfWork.doers(),
                ArbitrariesOfTexts.texts(300))
            .as(DecisionEvent.InspectorDecided::new),
        Combinators.combine(
                moments(),
                ArbitrariesOfTexts.texts(90).map(text -> new FindingId("d" + text.strip())),
                ArbitrariesOfWork.doers(),
                ArbitrariesOfTexts.texts(300))
            .as(DecisionEvent.DecisionWithdrawn::new),
        Combinators.combine(
                moments(),
                ArbitrariesOfTexts.texts(200),
                ArbitrariesOfTexts.texts(300),
                ArbitrariesOfTexts.texts(300))
            .as(DecisionEvent.AuthorityDecided::new),
        moments().map(UseEvent.BackInService::new));
  }

  private static Arbitrary<Event> done() {
    return Arbitraries.oneOf(
        Combinators.combine(
                moments(),
                Arbitraries.of(CleaningKind.class),
                ArbitrariesOfWork.doers(),
                ArbitrariesOfWork.answers(),
                washedLayers(),
                Arbitraries.of(true, false),
                ArbitrariesOfMeasures.washes().optional(0.5))
            .as(WorkEvent.Cleaned::new),
        Combinators.combine(
                moments(),
                Arbitraries.of(Check.class),
                Arbitraries.of(CheckResult.class),
                ArbitrariesOfWork.doers(),
                ArbitrariesOfWork.answers(),
                Arbitraries.of(true, false),
                ArbitrariesOfMeasures.conditions(),
                ArbitrariesOfTexts.positiveNumbers()
                    .map(value -> new Quantity(value, Unit.INCH))
                    .optional())
            .as(LookEvent.Checked::new),
        Combinators.combine(
                moments(), ArbitrariesOfMeasures.testCases(), ArbitrariesOfWork.answers())
            .as(
                (when, given, answers) ->
                    new LookEvent.Tested(
                        when,
                        given.product(),
                        given.report(),
                        given.purpose(),
                        given.rule(),
                        answers)),
        Combinators.combine(
                moments(),
                Arbitraries.of(RepairClass.class),
                Arbitraries.of(true, false),
                ArbitrariesOfWork.doers(),
                ArbitrariesOfWork.answers())
            .as(WorkEvent.Repaired::new));
  }

  /**
   * Returns histories.
   *
   * @param criteria the keys of criteria that inspections speak of
   * @return histories of up to five events
   */
  public static Arbitrary<History> histories(List<RowKey> criteria) {
    return events(criteria).list().ofMaxSize(5).map(History::of);
  }

  /**
   * Returns assessments.
   *
   * @param criteria the keys of criteria that inspections speak of
   * @return the assessments
   */
  public static Arbitrary<Assessment> assessments(List<RowKey> criteria) {
    return Combinators.combine(
            ArbitrariesOfGear.elements(),
            events(criteria).list().ofMaxSize(5),
            ArbitrariesOfWork.inspections(criteria).list().ofMaxSize(2),
            ArbitrariesOfWork.findings().list().ofMaxSize(3))
        .as(
            (element, events, inspections, findings) -> {
              List<Event> happened = new ArrayList<>(events);
              inspections.forEach(made -> happened.add(new LookEvent.Inspected(made, 0)));
              AssessmentBuilder assessment =
                  Assessment.builder(element).history(History.of(happened));
              findings.forEach(assessment::finding);
              return assessment.build();
            });
  }

  private static Arbitrary<WashedLayers> washedLayers() {
    return Arbitraries.oneOf(
        Arbitraries.of(LayerKind.class).set().ofMaxSize(2).map(Washed::of),
        Arbitraries.just(new WashedLayers.NotStated()));
  }
}
