package org.ensemblerules.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;

/** Cases to judge: a fit one with up to four changes, some harmless and some not. */
public final class ArbitrariesOfCases {
  private ArbitrariesOfCases() {}

  /**
   * Returns the cases.
   *
   * @return cases of which some are in service and more are not
   */
  public static Arbitrary<GearCase> cases() {
    return ArbitrariesOfElements.kinds()
        .flatMap(
            kind ->
                changes(kind)
                    .list()
                    .ofMinSize(0)
                    .ofMaxSize(4)
                    .map(changes -> apply(FitGear.fit(kind), changes)));
  }

  private static GearCase apply(GearCase fit, List<UnaryOperator<GearCase>> changes) {
    GearCase changed = fit;
    for (UnaryOperator<GearCase> change : changes) {
      changed = change.apply(changed);
    }
    return changed;
  }

  private static Arbitrary<UnaryOperator<GearCase>> changes(ElementKind kind) {
    return Arbitraries.frequencyOf(
        Tuple.of(4, harmless(kind)),
        Tuple.of(4, settled(kind)),
        Tuple.of(3, ArbitrariesOfFindings.on(kind).map(found -> given -> given.with(found))),
        Tuple.of(4, ArbitrariesOfEvents.on(kind).map(event -> given -> given.with(event))),
        Tuple.of(1, ArbitrariesOfElements.changed(kind).map(other -> given -> given.with(other))),
        Tuple.of(
            2,
            ArbitrariesOfInspections.of(kind)
                .list()
                .ofMaxSize(2)
                .map(made -> given -> given.inspectedBy(made))),
        Tuple.of(1, inParts(kind).map(events -> given -> given.withEvents(events))),
        Tuple.of(
            1,
            ArbitrariesOfDates.days(FitGear.MADE.minusYears(3), FitGear.AS_OF.plusYears(12))
                .map(day -> given -> given.on(day))));
  }

  /** An inspection made in two parts; mostly the second says which one it goes on with. */
  private static Arbitrary<List<Event>> inParts(ElementKind kind) {
    return Combinators.combine(
            ArbitrariesOfInspections.of(kind),
            Arbitraries.integers().between(0, 20),
            Arbitraries.of(true, true, true, false),
            Arbitraries.randoms())
        .as(
            (made, days, named, random) -> {
              MarkedDate later =
                  made.on() instanceof MarkedDate.Day day
                      ? MarkedDate.of(day.earliest().orElseThrow().plusDays(days))
                      : made.on();
              InspectionBuilder first =
                  Inspection.builder(made.kind(), made.occasion(), made.on(), made.by())
                      .gearClean(made.gearClean())
                      .atHand(made.atHand());
              InspectionBuilder second =
                  Inspection.builder(made.kind(), made.occasion(), later, made.by())
                      .gearClean(made.gearClean())
                      .atHand(made.atHand());
              made.outcomes()
                  .forEach(
                      each ->
                          (random.nextBoolean() ? first : second)
                              .outcome(each.criterion(), each.outcome()));
              LookEvent.Inspected begun = new LookEvent.Inspected(first.build(), random.nextInt(3));
              return List.of(
                  begun,
                  new LookEvent.Inspected(
                      second.build(),
                      random.nextInt(4),
                      Optional.of(begun.when()).filter(when -> named)));
            });
  }

  private static Arbitrary<UnaryOperator<GearCase>> harmless(ElementKind kind) {
    List<DefectRow> notes =
        ArbitrariesOfFindings.rows(kind).stream().filter(row -> !row.effect().keepsOut()).toList();
    return Arbitraries.oneOf(
        ArbitrariesOfEvents.harmless().map(events -> given -> given.withEvents(events)),
        Combinators.combine(Arbitraries.of(notes), Arbitraries.of("N1", "N2"))
            .as(
                (row, id) ->
                    given ->
                        given.with(
                            ArbitrariesOfFindings.covered(row, id, MarkedDate.of(FitGear.AS_OF)))),
        ArbitrariesOfInspections.flawless(kind, Arbitraries.just(MarkedDate.of(FitGear.AS_OF)))
            .map(made -> given -> given.inspectedBy(more(given.inspections(), made))));
  }

  private static List<Inspection> more(List<Inspection> made, Inspection another) {
    List<Inspection> all = new ArrayList<>(made);
    all.add(another);
    return all;
  }

  /** A finding on record that was settled as its row asks. */
  private static Arbitrary<UnaryOperator<GearCase>> settled(ElementKind kind) {
    List<DefectRow> rows =
        ArbitrariesOfFindings.rows(kind).stream()
            .filter(row -> row.effect().keepsOut() && !row.effect().isFinal())
            .toList();
    return Combinators.combine(
            Arbitraries.of(rows),
            ArbitrariesOfDates.days(FitGear.IN_SERVICE, FitGear.AS_OF.minusMonths(1)),
            Arbitraries.integers().between(1, 1000))
        .as(
            (row, day, number) ->
                given -> {
                  String id = "S" + number;
                  List<Event> events = new ArrayList<>();
                  events.add(
                      new LookEvent.Found(
                          ArbitrariesOfFindings.covered(row, id, MarkedDate.of(day))));
                  events.addAll(
                      Settling.of(
                          new FindingId(id), row.effect(), row.afterward(), day.plusDays(1)));
                  return given.withEvents(events);
                });
  }
}
