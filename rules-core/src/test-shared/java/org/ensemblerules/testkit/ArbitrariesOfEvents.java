package org.ensemblerules.testkit;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Credential;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Task;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionValue;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.DecisionEvent;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.DecisionRule;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.strength.Specimen;
import org.ensemblerules.strength.SpecimenOrigin;
import org.ensemblerules.strength.TestReport;

/** Events in the life of an element, by people who may and people who may not. */
public final class ArbitrariesOfEvents {
  private ArbitrariesOfEvents() {}

  /**
   * Returns doers: with every credential, with none, with one that ran out, and makers.
   *
   * @return the doers
   */
  public static Arbitrary<Doer> doers() {
    Arbitrary<Doer> known =
        Arbitraries.of(
            People.PROVIDER,
            People.DEPARTMENT,
            People.MAKER,
            People.WEARER,
            People.UNTRAINED,
            People.OTHER_MAKER);
    return Arbitraries.frequencyOf(Tuple.of(4, known), Tuple.of(1, expired()));
  }

  private static Arbitrary<Doer> expired() {
    Arbitrary<LocalDate> lastDays = ArbitrariesOfDates.days(FitGear.IN_SERVICE, FitGear.AS_OF);
    return Combinators.combine(Arbitraries.of(EntityKind.class), lastDays)
        .as(
            (kind, lastDay) ->
                new Doer(
                    "Once trained",
                    kind,
                    Arrays.stream(CredentialScope.values())
                        .map(scope -> new Credential(scope, FitGear.IN_SERVICE, lastDay))
                        .toList()));
  }

  /**
   * Returns events of every kind; what ends service is rare.
   *
   * @param element the kind of element
   * @return the events
   */
  public static Arbitrary<Event> on(ElementKind element) {
    return Arbitraries.frequencyOf(
        Tuple.of(4, done()),
        Tuple.of(2, ArbitrariesOfFindings.on(element).map(LookEvent.Found::new)),
        Tuple.of(
            2, ArbitrariesOfInspections.of(element).map(made -> new LookEvent.Inspected(made, 0))),
        Tuple.of(1, ArbitrariesOfDates.moments().map(UseEvent.Used::new)),
        Tuple.of(1, endless()),
        Tuple.of(2, elsewhere()),
        Tuple.of(2, byLamp()),
        Tuple.of(3, tested()));
  }

  /**
   * Returns what is done to an element: repairs, cleanings and checks, some with particulars.
   *
   * @return the events
   */
  public static Arbitrary<Event> done() {
    return Arbitraries.oneOf(repaired(), cleaned(), washed(), checked(), byLamp());
  }

  private static Arbitrary<Event> repaired() {
    return Combinators.combine(
            ArbitrariesOfDates.moments(),
            Arbitraries.of(RepairClass.class),
            Arbitraries.of(true, false),
            doers(),
            answers())
        .as(WorkEvent.Repaired::new);
  }

  private static Arbitrary<Event> cleaned() {
    return Combinators.combine(
            ArbitrariesOfDates.moments(), Arbitraries.of(CleaningKind.class), doers(), answers())
        .as(WorkEvent.Cleaned::whole);
  }

  private static Arbitrary<Event> washed() {
    Arbitrary<WashRecord> washes =
        Combinators.combine(
                Arbitraries.of("30", "40", "41", "60"), Arbitraries.of(YesNoUnknown.class))
            .as(
                (celsius, bleach) ->
                    WashRecord.builder()
                        .waterTemperature(Quantity.of(celsius, Unit.DEGREE_CELSIUS))
                        .practice(WashPractice.CHLORINE_BLEACH, bleach)
                        .build());
    return Combinators.combine(
            ArbitrariesOfDates.moments(),
            Arbitraries.of(CleaningKind.class),
            doers(),
            answers(),
            washedLayers(),
            Arbitraries.of(true, true, false),
            washes.optional())
        .as(WorkEvent.Cleaned::new);
  }

  /** Checks that count only under conditions, or measure something. */
  private static Arbitrary<Event> byLamp() {
    Arbitrary<Map<Condition, ConditionValue>> conditions =
        Combinators.combine(Arbitraries.of(YesNoUnknown.class), Arbitraries.of(2, 3))
            .as(
                (clean, places) ->
                    Map.of(
                        Condition.ITEM_CLEAN,
                        new ConditionValue.Answered(clean),
                        Condition.PLACES,
                        new ConditionValue.Counted(places)));
    return Combinators.combine(
            ArbitrariesOfDates.moments(),
            Arbitraries.frequency(
                Tuple.of(3, FrozenMeasures.LAMP), Tuple.of(1, Check.FIT_AND_OVERLAP)),
            Arbitraries.frequency(
                Tuple.of(3, CheckResult.FAILED),
                Tuple.of(3, CheckResult.PASSED),
                Tuple.of(1, CheckResult.VOID)),
            doers(),
            answers(),
            Arbitraries.of(true, false),
            conditions,
            Arbitraries.of("1.5", "2").map(inch -> Quantity.of(inch, Unit.INCH)).optional())
        .as(LookEvent.Checked::new);
  }

  /**
   * Returns test reports: of coats and of others, good and bad, without specimens, from this
   * element and from elsewhere.
   *
   * @return the events
   */
  public static Arbitrary<Event> tested() {
    Arbitrary<List<Specimen>> specimens =
        Arbitraries.of("480", "500", "620")
            .map(value -> Specimen.of(value, Direction.WARP, Quantity.of(value, Unit.NEWTON)))
            .list()
            .uniqueElements()
            .ofMaxSize(2);
    return Combinators.combine(
            ArbitrariesOfDates.moments(),
            Arbitraries.frequency(Tuple.of(4, ElementKind.COAT), Tuple.of(1, ElementKind.GLOVES)),
            specimens,
            Arbitraries.frequency(
                Tuple.of(1, SpecimenOrigin.SAME_MODEL_AGE_AND_USE),
                Tuple.of(1, SpecimenOrigin.THIS_ELEMENT)),
            answers())
        .as(
            (when, element, values, origin, ids) ->
                new LookEvent.Tested(
                    when,
                    FrozenMeasures.PRODUCT,
                    TestReport.builder(
                            element,
                            Use.STRUCTURAL,
                            FrozenMeasures.SHELL,
                            Property.BREAKING_STRENGTH,
                            FrozenMeasures.STRIP)
                        .origin(origin)
                        .specimens(values)
                        .build(),
                    new Purpose.AtLeastNewRequirement(new OriginId("FROZEN_POLICY")),
                    new DecisionRule.SimpleAcceptance(ComparisonMethod.absolute()),
                    ids));
  }

  private static Arbitrary<Event> checked() {
    return Combinators.combine(
            ArbitrariesOfDates.moments(),
            Arbitraries.of(Check.class),
            Arbitraries.of(
                CheckResult.PASSED, CheckResult.PASSED, CheckResult.VOID, CheckResult.FAILED),
            doers(),
            answers(),
            Arbitraries.of(true, false),
            Arbitraries.just(Map.<Condition, ConditionValue>of()),
            Arbitraries.just(Optional.<Quantity>empty()))
        .as(LookEvent.Checked::new);
  }

  /**
   * Returns checks that failed.
   *
   * @return the events
   */
  public static Arbitrary<Event> failed() {
    return Combinators.combine(
            ArbitrariesOfDates.moments(), Arbitraries.of(Check.class), doers(), answers())
        .as(
            (when, check, by, ids) ->
                new LookEvent.Checked(when, check, CheckResult.FAILED, by, ids));
  }

  /**
   * Returns what happens to an element away from the bench: it meets things, changes hands, is
   * altered, is out of service for a time.
   *
   * @return the events
   */
  public static Arbitrary<Event> elsewhere() {
    return Combinators.combine(
            ArbitrariesOfDates.moments(),
            Arbitraries.of(Exposure.class),
            Arbitraries.of(Transfer.class),
            Arbitraries.of(YesNoUnknown.class),
            layersRetired())
        .flatAs(
            (when, exposure, transfer, approved, layer) ->
                Arbitraries.frequency(
                    Tuple.of(2, new ExposureEvent.Exposed(when, exposure)),
                    Tuple.of(1, new UseEvent.Moved(when, transfer, "Station 2")),
                    Tuple.of(1, new WorkEvent.Modified(when, "a pocket added", approved)),
                    Tuple.of(1, new UseEvent.TakenOut(when, "sent away")),
                    Tuple.of(
                        1, new DecisionEvent.AuthorityDecided(when, "The chief", "serves", "told")),
                    Tuple.of(1, layer),
                    Tuple.of(1, new UseEvent.BackInService(when))));
  }

  /**
   * Returns decisions of inspectors, on record under names that work may answer.
   *
   * @return the events
   */
  public static Arbitrary<Event> decided() {
    return Combinators.combine(
            ArbitrariesOfDates.moments(),
            ArbitrariesOfFindings.ids(),
            Arbitraries.of(Effects.all().stream().filter(Effect::keepsOut).toList()))
        .as(
            (when, id, effect) ->
                new DecisionEvent.InspectorDecided(
                    when,
                    id,
                    Site.of(Part.WHOLE_ELEMENT),
                    effect,
                    People.DEPARTMENT,
                    "looks worn"));
  }

  /**
   * Returns layers that left, with and without the identification that fit gear has.
   *
   * @return the events
   */
  public static Arbitrary<Event> layersRetired() {
    return Combinators.combine(
            ArbitrariesOfDates.moments(),
            Arbitraries.of(LayerKind.class),
            Arbitraries.of("Lot 1", "LOT-1", "Lot 2").optional(0.7))
        .as((when, layer, lot) -> new EndEvent.LayerRetired(when, layer, lot, "worn out"));
  }

  private static Arbitrary<Event> endless() {
    return ArbitrariesOfDates.moments()
        .flatMap(
            when ->
                Arbitraries.frequency(
                    Tuple.of(3, new UseEvent.Issued(when, "Member 7")),
                    Tuple.of(1, new UseEvent.Issued(when, "Member 8")),
                    Tuple.of(4, new UseEvent.Returned(when)),
                    Tuple.of(2, new EndEvent.Retired(when, "worn out")),
                    Tuple.of(2, new EndEvent.Disposed(when, "cut up"))));
  }

  /**
   * Returns an event of any kind without a date.
   *
   * @param element the kind of element
   * @return the events
   */
  public static Arbitrary<Event> undated(ElementKind element) {
    return on(element).map(ArbitrariesOfEvents::withoutDate);
  }

  private static Event withoutDate(Event event) {
    Moment never = Moment.on(MarkedDate.unknown());
    if (event instanceof WorkEvent.Repaired done) {
      return new WorkEvent.Repaired(
          never, done.repairClass(), done.replaced(), done.by(), done.answers());
    } else if (event instanceof WorkEvent.Cleaned done) {
      return new WorkEvent.Cleaned(
          never,
          done.kind(),
          done.by(),
          done.answers(),
          done.layers(),
          done.limitsKept(),
          done.wash());
    } else if (event instanceof LookEvent.Checked done) {
      return new LookEvent.Checked(
          never,
          done.check(),
          done.result(),
          done.by(),
          done.answers(),
          done.afterWork(),
          done.conditions(),
          done.measured());
    } else if (event instanceof LookEvent.Tested done) {
      return new LookEvent.Tested(
          never, done.product(), done.report(), done.purpose(), done.rule(), done.answers());
    } else if (event instanceof EndEvent.Retired done) {
      return new EndEvent.Retired(never, done.why());
    } else if (event instanceof EndEvent.LayerRetired done) {
      return new EndEvent.LayerRetired(never, done.layer(), done.identification(), done.why());
    } else if (event instanceof UseEvent.Issued done) {
      return new UseEvent.Issued(never, done.holder());
    } else if (event instanceof ExposureEvent.Exposed done) {
      return new ExposureEvent.Exposed(never, done.to());
    } else if (event instanceof UseEvent.Moved done) {
      return new UseEvent.Moved(never, done.transfer(), done.to());
    } else if (event instanceof WorkEvent.Modified done) {
      return new WorkEvent.Modified(never, done.what(), done.approved());
    } else if (event instanceof DecisionEvent.InspectorDecided done) {
      return new DecisionEvent.InspectorDecided(
          never, done.id(), done.site(), done.effect(), done.by(), done.why());
    } else if (event instanceof DecisionEvent.DecisionWithdrawn done) {
      return new DecisionEvent.DecisionWithdrawn(never, done.decision(), done.by(), done.why());
    } else if (event instanceof DecisionEvent.AuthorityDecided done) {
      return new DecisionEvent.AuthorityDecided(
          never, done.authority(), done.decision(), done.why());
    } else if (event instanceof UseEvent.TakenOut done) {
      return new UseEvent.TakenOut(never, done.why());
    } else if (event instanceof UseEvent.BackInService) {
      return new UseEvent.BackInService(never);
    } else if (event instanceof UseEvent.Returned) {
      return new UseEvent.Returned(never);
    }
    return new UseEvent.Used(never);
  }

  private static Arbitrary<Set<FindingId>> answers() {
    return ArbitrariesOfFindings.ids().set().ofMinSize(0).ofMaxSize(3);
  }

  /**
   * Returns the things that happen to an element that nothing speaks against.
   *
   * @return lists of events that leave a fit element fit
   */
  public static Arbitrary<List<Event>> harmless() {
    return ArbitrariesOfDates.days(FitGear.IN_SERVICE, FitGear.AS_OF.minusDays(1))
        .map(day -> Moment.on(MarkedDate.of(day)))
        .flatMap(
            when ->
                Arbitraries.of(
                    List.of(new UseEvent.Issued(when, "Member 7")),
                    List.of(
                        new UseEvent.Returned(when),
                        new UseEvent.Issued(Moment.on(MarkedDate.of(FitGear.AS_OF)), "Member 9")),
                    List.of(
                        new ExposureEvent.Exposed(when, Exposure.ORDINARY_SOILING),
                        WorkEvent.Cleaned.whole(
                            Moment.on(MarkedDate.of(FitGear.AS_OF)),
                            CleaningKind.ADVANCED,
                            People.permitted(Task.ADVANCED_CLEANING),
                            Set.of())),
                    List.of(new UseEvent.Moved(when, Transfer.TO_STATION, "Station 3")),
                    List.of(new WorkEvent.Modified(when, "a name tape sewn on", YesNoUnknown.YES)),
                    List.of(
                        new UseEvent.TakenOut(when, "stored"),
                        new UseEvent.BackInService(Moment.on(MarkedDate.of(FitGear.AS_OF)))),
                    List.of(new UseEvent.Returned(when)),
                    List.of(new UseEvent.Used(when))));
  }

  private static Arbitrary<WashedLayers> washedLayers() {
    return Arbitraries.oneOf(
        Arbitraries.of(LayerKind.class).set().ofMaxSize(2).map(Washed::of),
        Arbitraries.just(new WashedLayers.NotStated()));
  }
}
