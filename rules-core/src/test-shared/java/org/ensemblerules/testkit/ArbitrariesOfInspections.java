package org.ensemblerules.testkit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Moment;
import org.ensemblerules.inspection.CriterionOutcome;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.inspection.SignOff;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;

/** Inspections: complete ones, and ones with something left out, contradictory or not permitted. */
public final class ArbitrariesOfInspections {
  private ArbitrariesOfInspections() {}

  /**
   * Returns inspections of an element, about half of them flawless.
   *
   * @param element the kind of element
   * @return the inspections
   */
  public static Arbitrary<Inspection> of(ElementKind element) {
    return flawless(element, ArbitrariesOfDates.moments().map(Moment::date))
        .flatMap(
            inspection ->
                Arbitraries.frequencyOf(
                    Tuple.of(1, Arbitraries.just(inspection)),
                    Tuple.of(
                        1,
                        flaws(inspection)
                            .list()
                            .ofMinSize(1)
                            .ofMaxSize(2)
                            .map(flaws -> apply(inspection, flaws)))))
        .flatMap(ArbitrariesOfInspections::graded);
  }

  /** Of each grade: itemized, signed off in whole or in part, or hardly more than dated. */
  private static Arbitrary<Inspection> graded(Inspection made) {
    return Arbitraries.frequencyOf(
        Tuple.of(6, Arbitraries.just(made)),
        Tuple.of(3, signedOff(made)),
        Tuple.of(
            1,
            Arbitraries.of(
                copy(made, made.atHand(), List.of()).build(),
                Inspection.builder(made.kind(), made.occasion(), made.on(), Optional.empty())
                    .build())));
  }

  /**
   * Returns an inspection whose doer signs it off, and of which any outcomes stand beside that:
   * whatever is not clear, and any of the rest.
   *
   * @param made the inspection
   * @return the same, signed off by the frozen edition, seldom by another
   */
  public static Arbitrary<Inspection> signedOff(Inspection made) {
    Arbitrary<Double> share = Arbitraries.of(0.0, 0.0, 0.5, 1.0);
    Arbitrary<OriginId> editions =
        Arbitraries.frequency(
            Tuple.of(9, FrozenProvenance.EDITION), Tuple.of(1, new OriginId("FROZEN_2010")));
    return Combinators.combine(share, editions, Arbitraries.randoms())
        .as(
            (itemized, edition, random) ->
                copy(
                        made,
                        made.atHand(),
                        made.outcomes().stream()
                            .filter(
                                each ->
                                    each.outcome() != Outcome.CLEAR
                                        || random.nextDouble() < itemized)
                            .toList())
                    .signOff(new SignOff(edition, Set.of()))
                    .build());
  }

  private static Inspection apply(Inspection inspection, List<UnaryOperator<Inspection>> flaws) {
    Inspection changed = inspection;
    for (UnaryOperator<Inspection> flaw : flaws) {
      changed = flaw.apply(changed);
    }
    return changed;
  }

  /**
   * Returns inspections that count, if their date does.
   *
   * @param element the kind of element
   * @param dates when they are made
   * @return the inspections
   */
  public static Arbitrary<Inspection> flawless(ElementKind element, Arbitrary<MarkedDate> dates) {
    return Combinators.combine(Arbitraries.of(FitGear.inspections(element)), dates)
        .as(
            (kind, on) ->
                FitGear.inspection(kind, element, on, People.permitted(kind.task())).build());
  }

  private static Arbitrary<UnaryOperator<Inspection>> flaws(Inspection inspection) {
    Arbitrary<RowKey> keys =
        Arbitraries.of(inspection.outcomes().stream().map(CriterionOutcome::criterion).toList());
    return Arbitraries.oneOf(
        keys.map(key -> given -> without(given, key)),
        Combinators.combine(keys, Arbitraries.of(Outcome.class))
            .as((key, outcome) -> given -> adding(without(given, key), key, outcome)),
        Combinators.combine(keys, Arbitraries.of(Outcome.class))
            .as((key, outcome) -> given -> adding(given, key, outcome)),
        Arbitraries.of(Outcome.class)
            .map(outcome -> given -> adding(given, new RowKey("no-such-criterion"), outcome)),
        Arbitraries.of(Equipment.class).map(what -> given -> withoutAtHand(given, what)),
        Arbitraries.of(YesNoUnknown.NO, YesNoUnknown.UNKNOWN)
            .map(known -> given -> given.toBuilder().gearClean(known).build()),
        ArbitrariesOfEvents.doers().map(by -> given -> by(given, by)));
  }

  /**
   * Returns the inspection with one outcome more.
   *
   * @param inspection the inspection
   * @param key the criterion
   * @param outcome what came of it
   * @return the changed inspection
   */
  public static Inspection adding(Inspection inspection, RowKey key, Outcome outcome) {
    return inspection.toBuilder().outcome(key, outcome).build();
  }

  /**
   * Returns the inspection without what it says of a criterion, a sign-off of all among it.
   *
   * @param inspection the inspection
   * @param key the criterion
   * @return the changed inspection
   */
  public static Inspection without(Inspection inspection, RowKey key) {
    List<CriterionOutcome> kept = new ArrayList<>(inspection.outcomes());
    kept.removeIf(outcome -> outcome.criterion().equals(key));
    InspectionBuilder made =
        Inspection.builder(
                inspection.kind(), inspection.occasion(), inspection.on(), inspection.by())
            .gearClean(inspection.gearClean())
            .atHand(inspection.atHand());
    kept.forEach(outcome -> made.outcome(outcome.criterion(), outcome.outcome()));
    return made.build();
  }

  /**
   * Returns the inspection as somebody else made it.
   *
   * @param inspection the inspection
   * @param by who made it
   * @return the changed inspection
   */
  public static Inspection by(Inspection inspection, Doer by) {
    InspectionBuilder made =
        Inspection.builder(inspection.kind(), inspection.occasion(), inspection.on(), by)
            .gearClean(inspection.gearClean())
            .atHand(inspection.atHand());
    inspection.outcomes().forEach(each -> made.outcome(each.criterion(), each.outcome()));
    inspection.signOff().ifPresent(made::signOff);
    return made.build();
  }

  /**
   * Returns the inspection without something at hand.
   *
   * @param inspection the inspection
   * @param what what was missing
   * @return the changed inspection
   */
  public static Inspection withoutAtHand(Inspection inspection, Equipment what) {
    Set<Equipment> left = EnumSet.allOf(Equipment.class);
    left.retainAll(inspection.atHand());
    left.remove(what);
    return copy(inspection, left, inspection.outcomes()).build();
  }

  private static InspectionBuilder copy(
      Inspection inspection, Set<Equipment> atHand, List<CriterionOutcome> outcomes) {
    InspectionBuilder builder =
        Inspection.builder(
                inspection.kind(), inspection.occasion(), inspection.on(), inspection.by())
            .gearClean(inspection.gearClean())
            .atHand(atHand);
    outcomes.forEach(outcome -> builder.outcome(outcome.criterion(), outcome.outcome()));
    inspection.signOff().ifPresent(builder::signOff);
    return builder;
  }
}
