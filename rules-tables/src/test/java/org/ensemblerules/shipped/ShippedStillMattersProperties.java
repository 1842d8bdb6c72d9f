package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.testkit.ArbitrariesOfRecords;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.AssessmentBuilder;
import org.ensemblerules.verdict.Verdict;

/** Under the shipped rules too, the part of a history that still matters answers as the whole. */
class ShippedStillMattersProperties {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final LocalDate AS_OF = ArbitrariesOfRecords.AS_OF;

  @Provide
  Arbitrary<Assessment> records() {
    return ArbitrariesOfRecords.records(RULES);
  }

  @FewestTries(50)
  @Property(tries = 400, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
  void thePartAnswersAsTheWhole(@ForAll("records") Assessment given, @ForAll Random random) {
    Assessment whole = with(given, years(given, ShippedGear.IN_SERVICE, AS_OF, random));
    Assessment part = GearRules.of(RULES).stillMatters(whole, AS_OF);
    Statistics.label("left out")
        .collect(part.history().events().size() < whole.history().events().size());
    Statistics.label("left out")
        .coverage(checker -> checker.check(true).percentage(share -> share > 50));
    assertSame(whole, part, AS_OF);
    LocalDate later = AS_OF.plusDays(random.nextInt(1500));
    assertSame(whole, part, later);
    List<Event> after = years(given, AS_OF.plusDays(1), AS_OF.plusYears(3), random);
    assertSame(with(whole, after), with(part, after), later);
  }

  /** Years of care and use on days that nobody arranged. */
  private static List<Event> years(Assessment given, LocalDate from, LocalDate to, Random random) {
    ShippedGear.Kind kind = new ShippedGear.Kind(given.element().kind(), given.element().use());
    List<InspectionKind> looks = ShippedGear.inspections(RULES, kind);
    int span = (int) (to.toEpochDay() - from.toEpochDay()) + 1;
    List<Event> events = new ArrayList<>();
    for (int i = random.nextInt(30); i >= 0; i--) {
      MarkedDate day = MarkedDate.of(from.plusDays(random.nextInt(span)));
      switch (random.nextInt(12)) {
        case 0 -> events.add(new UseEvent.Issued(Moment.on(day), "Member 7"));
        case 1 -> events.add(new UseEvent.Returned(Moment.on(day)));
        case 2, 3, 4 -> events.add(new UseEvent.Used(Moment.on(day)));
        case 5, 6, 7 ->
            events.add(
                WorkEvent.Cleaned.whole(
                    Moment.on(day),
                    CleaningKind.ADVANCED,
                    ShippedGear.permitted(RULES, Task.ADVANCED_CLEANING),
                    Set.of()));
        default ->
            events.add(
                new LookEvent.Inspected(
                    ShippedGear.inspection(
                            RULES, looks.get(random.nextInt(looks.size())), kind, day)
                        .build(),
                    0));
      }
    }
    return events;
  }

  private static Assessment with(Assessment given, List<Event> more) {
    List<Event> all = new ArrayList<>(given.history().events());
    all.addAll(more);
    AssessmentBuilder builder = Assessment.builder(given.element()).history(History.of(all));
    given.findings().forEach(builder::finding);
    return builder.build();
  }

  private static void assertSame(Assessment whole, Assessment part, LocalDate day) {
    assertThat(answer(part, day))
        .as(() -> "on " + day + " without " + leftOut(whole, part) + " of " + whole)
        .isEqualTo(answer(whole, day));
  }

  private static List<Object> answer(Assessment given, LocalDate day) {
    Verdict verdict = GearRules.of(RULES).assess(given, day);
    return List.of(
        verdict.service(),
        verdict.actions(),
        verdict.handling(),
        verdict.due().stream()
            .map(due -> List.of(due.task(), due.layer(), due.by(), due.row()))
            .toList());
  }

  private static List<Event> leftOut(Assessment whole, Assessment part) {
    return whole.history().events().stream()
        .filter(event -> !part.history().events().contains(event))
        .toList();
  }
}
