package org.ensemblerules.testkit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Known;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.When;
import org.ensemblerules.inspection.CriterionOutcome;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
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
    return flawless(element, ArbitrariesOfDates.moments().map(When::date))
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
                            .map(flaws -> apply(inspection, flaws)))));
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
        Arbitraries.of(Known.NO, Known.UNKNOWN)
            .map(known -> given -> copy(given).gearClean(known).build()),
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
    return copy(inspection).outcome(key, outcome).build();
  }

  /**
   * Returns the inspection without what it says of a criterion.
   *
   * @param inspection the inspection
   * @param key the criterion
   * @return the changed inspection
   */
  public static Inspection without(Inspection inspection, RowKey key) {
    List<CriterionOutcome> kept = new ArrayList<>(inspection.outcomes());
    kept.removeIf(outcome -> outcome.criterion().equals(key));
    return copy(inspection, inspection.by(), inspection.atHand(), kept).build();
  }

  /**
   * Returns the inspection as somebody else made it.
   *
   * @param inspection the inspection
   * @param by who made it
   * @return the changed inspection
   */
  public static Inspection by(Inspection inspection, Doer by) {
    return copy(inspection, by, inspection.atHand(), inspection.outcomes()).build();
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
    return copy(inspection, inspection.by(), left, inspection.outcomes()).build();
  }

  private static Inspection.Builder copy(Inspection inspection) {
    return copy(inspection, inspection.by(), inspection.atHand(), inspection.outcomes());
  }

  private static Inspection.Builder copy(
      Inspection inspection, Doer by, Set<Equipment> atHand, List<CriterionOutcome> outcomes) {
    InspectionKind kind = inspection.kind();
    Occasion occasion = inspection.occasion();
    Inspection.Builder builder =
        Inspection.builder(kind, occasion, inspection.on(), by)
            .gearClean(inspection.gearClean())
            .atHand(atHand);
    outcomes.forEach(outcome -> builder.outcome(outcome.criterion(), outcome.outcome()));
    return builder;
  }
}
