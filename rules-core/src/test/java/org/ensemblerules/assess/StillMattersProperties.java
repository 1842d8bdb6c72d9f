package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.statistics.Statistics;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.testkit.ArbitrariesOfDates;
import org.ensemblerules.testkit.ArbitrariesOfEvents;
import org.ensemblerules.testkit.ArbitrariesOfInspections;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.AssessmentBuilder;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/** The part of a history that still matters answers as the whole does, that day and later. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 500, edgeCases = EdgeCasesMode.NONE)
class StillMattersProperties {
  /** What is the same by the part and by the whole. */
  private record Answer(
      Service service, List<Action> actions, Set<?> handling, List<List<Object>> due) {
    static Answer of(Verdict verdict) {
      return new Answer(
          verdict.service(),
          verdict.actions(),
          verdict.handling(),
          verdict.due().stream()
              .map(due -> List.<Object>of(due.task(), due.layer(), due.by(), due.row()))
              .toList());
    }
  }

  /** Years of care and use, by people who may and in an order that nobody arranged. */
  private static Arbitrary<List<Event>> years(ElementKind kind, LocalDate from, LocalDate to) {
    Arbitrary<MarkedDate> dates = ArbitrariesOfDates.days(from, to).map(MarkedDate::of);
    Arbitrary<Event> washed =
        dates.map(
            day ->
                WorkEvent.Cleaned.whole(
                    Moment.on(day),
                    CleaningKind.ADVANCED,
                    People.permitted(Task.ADVANCED_CLEANING),
                    Set.of()));
    Arbitrary<Event> looked =
        ArbitrariesOfInspections.flawless(kind, dates)
            .map(made -> new LookEvent.Inspected(made, 0));
    Arbitrary<Event> moved =
        Combinators.combine(dates, Arbitraries.integers().between(0, 9))
            .as(
                (day, which) ->
                    switch (which) {
                      case 0 -> new UseEvent.Issued(Moment.on(day), "Member 7");
                      case 1 -> new UseEvent.Returned(Moment.on(day));
                      default -> new UseEvent.Used(Moment.on(day));
                    });
    return Arbitraries.oneOf(washed, looked, moved, ArbitrariesOfEvents.done())
        .list()
        .ofMinSize(5)
        .ofMaxSize(40);
  }

  @Provide
  Arbitrary<Integer> days() {
    return Arbitraries.integers().between(0, 1500);
  }

  @FewestTries(50)
  @Property
  void thePartAnswersAsTheWhole(
      @ForAll GearCase given, @ForAll("days") int later, @ForAll Random random) {
    ElementKind kind = given.element().kind();
    GearCase whole =
        given.withEvents(
            years(
                    kind,
                    FitGear.MADE,
                    given.asOf().isAfter(FitGear.MADE) ? given.asOf() : FitGear.AS_OF)
                .generator(100)
                .next(random)
                .value());
    Assessment part = StillMatters.of(FrozenRules.rules(), whole.assessment(), whole.asOf());
    Statistics.label("left out")
        .collect(part.history().events().size() < whole.assessment().history().events().size());
    Statistics.label("left out")
        .coverage(checker -> checker.check(true).percentage(share -> share > 50));
    assertSame(whole.assessment(), part, whole.asOf());
    assertSame(whole.assessment(), part, whole.asOf().plusDays(later));
    List<Event> after =
        years(kind, whole.asOf().plusDays(1), whole.asOf().plusYears(4))
            .generator(100)
            .next(random)
            .value()
            .stream()
            .filter(event -> event.when().date().earliest().isPresent())
            .filter(event -> event.when().date().earliest().get().isAfter(whole.asOf()))
            .toList();
    assertSame(with(whole.assessment(), after), with(part, after), whole.asOf().plusDays(later));
  }

  private static Assessment with(Assessment given, List<Event> more) {
    List<Event> all = new ArrayList<>(given.history().events());
    all.addAll(more);
    AssessmentBuilder builder = Assessment.builder(given.element()).history(History.of(all));
    given.findings().forEach(builder::finding);
    return builder.build();
  }

  private static void assertSame(Assessment whole, Assessment part, LocalDate day) {
    assertThat(Answer.of(Assess.assess(FrozenRules.rules(), part, day)))
        .as(() -> "on " + day + " without " + leftOut(whole, part))
        .isEqualTo(Answer.of(Assess.assess(FrozenRules.rules(), whole, day)));
  }

  private static List<Event> leftOut(Assessment whole, Assessment part) {
    return Stream.of(whole.history())
        .flatMap(history -> history.events().stream())
        .filter(event -> !part.history().events().contains(event))
        .toList();
  }
}
