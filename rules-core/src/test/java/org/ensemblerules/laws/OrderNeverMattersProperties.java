package org.ensemblerules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ensemblerules.GearRules;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.History;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.VerdictContent;

/** Findings, events and inspections are sets: neither order nor repetition changes a verdict. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 500, edgeCases = EdgeCasesMode.NONE)
class OrderNeverMattersProperties {
  @Property
  void findingsAreASet(@ForAll GearCase given, @ForAll Random random) {
    sameVerdict(
        given,
        new GearCase(
            given.element(),
            given.events(),
            given.inspections(),
            stirred(given.findings(), random),
            given.asOf()));
  }

  /** Of uses and exposures alone two that read alike are two. */
  @Property
  void eventsAreASet(@ForAll GearCase given, @ForAll Random random) {
    List<Event> once = given.events().stream().filter(event -> !mayBeTwo(event)).toList();
    List<Event> others = new ArrayList<>(stirred(once, random));
    given.events().stream().filter(event -> mayBeTwo(event)).forEach(others::add);
    Collections.shuffle(others, random);
    GearCase other =
        new GearCase(given.element(), others, given.inspections(), given.findings(), given.asOf());
    assertThat(History.of(other.events())).isEqualTo(History.of(given.events()));
    sameVerdict(given, other);
  }

  private static boolean mayBeTwo(Event event) {
    return event instanceof UseEvent.Used || event instanceof ExposureEvent.Exposed;
  }

  @Property
  void inspectionsAreASet(@ForAll GearCase given, @ForAll Random random) {
    sameVerdict(given, given.inspectedBy(stirred(given.inspections(), random)));
  }

  @Property
  void outcomesAreASet(@ForAll GearCase given, @ForAll Random random) {
    List<Inspection> others =
        given.inspections().stream().map(made -> stirred(made, random)).toList();
    sameVerdict(given, given.inspectedBy(others));
  }

  @Property(tries = 200)
  void rulesCompiledAnewGiveTheSameVerdict(@ForAll GearCase given) {
    assertThat(
            VerdictContent.of(
                GearRules.of(FrozenRules.of(FrozenRules.tables()))
                    .assess(given.assessment(), given.asOf())))
        .isEqualTo(VerdictContent.of(given.verdict()));
  }

  private static void sameVerdict(GearCase given, GearCase other) {
    assertThat(VerdictContent.of(other.verdict())).isEqualTo(VerdictContent.of(given.verdict()));
  }

  private static <T> List<T> stirred(List<T> things, Random random) {
    List<T> stirred = new ArrayList<>(things);
    if (!things.isEmpty()) {
      stirred.add(things.get(random.nextInt(things.size())));
    }
    Collections.shuffle(stirred, random);
    return stirred;
  }

  private static Inspection stirred(Inspection made, Random random) {
    InspectionBuilder builder =
        Inspection.builder(made.kind(), made.occasion(), made.on(), made.by())
            .gearClean(made.gearClean())
            .atHand(made.atHand());
    stirred(made.outcomes(), random)
        .forEach(outcome -> builder.outcome(outcome.criterion(), outcome.outcome()));
    made.signOff().ifPresent(builder::signOff);
    return builder.build();
  }
}
