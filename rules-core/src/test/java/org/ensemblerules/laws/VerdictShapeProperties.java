package org.ensemblerules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Headline;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;

/** The parts of a verdict agree with each other. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 400, edgeCases = EdgeCasesMode.NONE)
class VerdictShapeProperties {
  @Property
  void serviceAloneEqualsThatOfTheWholeVerdict(@ForAll GearCase given) {
    assertThat(GearRules.of(FrozenRules.rules()).service(given.assessment(), given.asOf()))
        .isEqualTo(given.verdict().service());
  }

  @Property
  void onlyNotesLeaveAnythingIn(@ForAll GearCase given) {
    Verdict verdict = given.verdict();
    assertThat(verdict.service() == Service.IN)
        .isEqualTo(
            verdict.reasons().stream()
                .allMatch(reason -> reason.effect().effectKind() == EffectKind.NOTE));
    assertThat(verdict.actions().isEmpty()).isEqualTo(verdict.service() == Service.IN);
  }

  /** In goes nowhere; out goes to exactly one place, and for at least one cause. */
  @Property
  void outGoesToOnePlaceAndInNowhere(@ForAll GearCase given) {
    Verdict verdict = given.verdict();
    boolean out = verdict.service() == Service.OUT;
    assertThat(verdict.goesTo().isPresent()).isEqualTo(out);
    assertThat(verdict.outBecause().isEmpty()).isEqualTo(!out);
    verdict.goesTo().ifPresent(goesTo -> wholeElementFirst(verdict, goesTo.destination()));
  }

  private static void wholeElementFirst(Verdict verdict, Destination destination) {
    boolean held = verdict.handling().contains(HandlingDuty.PRESERVE_AS_FOUND);
    boolean away =
        !held && verdict.reasons().stream().anyMatch(each -> each.kind() == ReasonKind.AWAY);
    assertThat(destination == Destination.AWAY).isEqualTo(away);
    if (held) {
      assertThat(destination).isEqualTo(Destination.EVIDENCE_HOLD);
    } else if (!away && destination != Destination.ISOLATE) {
      assertThat(destination == Destination.DISPOSAL)
          .isEqualTo(verdict.wayBack() instanceof WayBack.None);
      if (verdict.wayBack() instanceof WayBack.Steps way) {
        assertThat(destination).isEqualTo(way.steps().get(0).goesTo().destination());
      }
    }
  }

  @Property
  void everyReasonThatKeepsOutHasItsAction(@ForAll GearCase given) {
    Verdict verdict = given.verdict();
    for (Reason reason : verdict.reasons()) {
      if (reason.effect().keepsOut()) {
        assertThat(verdict.actions())
            .anySatisfy(
                action -> {
                  assertThat(action.effect()).isEqualTo(reason.effect());
                  assertThat(action.afterward()).containsAll(reason.afterward());
                  assertThat(falls(action, reason)).isTrue();
                });
      }
    }
  }

  private static boolean falls(Action action, Reason reason) {
    return switch (action.effect().scope()) {
      case PART -> action.target().equals(reason.site());
      case LAYER -> action.target().part() == Part.WHOLE_ELEMENT;
      case ELEMENT -> action.target().equals(Site.of(Part.WHOLE_ELEMENT));
    };
  }

  @Property
  void everyActionHasItsReasonAndItsDoers(@ForAll GearCase given) {
    Verdict verdict = given.verdict();
    for (Action action : verdict.actions()) {
      assertThat(action.by()).isNotEmpty();
      assertThat(verdict.reasons())
          .anyMatch(reason -> reason.effect().equals(action.effect()) && falls(action, reason));
    }
    assertThat(verdict.actions()).doesNotHaveDuplicates();
  }

  @Property
  void everyFindingHasItsReasonUntilSettled(@ForAll GearCase given) {
    Verdict verdict = given.verdict();
    verdict
        .openFindings()
        .forEach(
            open ->
                assertThat(verdict.reasons())
                    .anyMatch(
                        reason ->
                            reason.finding().equals(Optional.of(open.finding().id()))
                                && reason.effect().equals(open.effect())
                                && reason.attempts().equals(open.attempts())));
  }

  @Property
  void theHeadlineIsTheGravestOfTheActions(@ForAll GearCase given) {
    Verdict verdict = given.verdict();
    assertThat(verdict.headline()).isEqualTo(headline(verdict));
    assertThat(verdict.headline() == Headline.SERVICEABLE)
        .isEqualTo(verdict.service() == Service.IN);
  }

  /** The order of precedence as it is told to people, written out once more. */
  private static Headline headline(Verdict verdict) {
    Set<EffectKind> kinds = EnumSet.noneOf(EffectKind.class);
    verdict.actions().forEach(action -> kinds.add(action.effect().effectKind()));
    if (verdict.handling().contains(HandlingDuty.PRESERVE_AS_FOUND)) {
      return Headline.PRESERVE;
    } else if (kinds.contains(EffectKind.RETIRE)) {
      return Headline.RETIRE;
    } else if (kinds.contains(EffectKind.EVALUATE)) {
      return Headline.EVALUATE;
    } else if (kinds.contains(EffectKind.REPLACE_PART)) {
      return Headline.REPLACE_PART;
    } else if (kinds.contains(EffectKind.REPAIR)) {
      return Headline.REPAIR;
    }
    return kinds.contains(EffectKind.CLEAN) ? Headline.CLEAN : Headline.SERVICEABLE;
  }

  @Property
  void thereIsAWayBackUnlessSomethingIsFinal(@ForAll GearCase given) {
    Verdict verdict = given.verdict();
    boolean isFinal = verdict.actions().stream().anyMatch(action -> action.effect().isFinal());
    if (verdict.service() == Service.IN) {
      assertThat(verdict.wayBack()).isEqualTo(new WayBack.NotNeeded());
    } else if (isFinal) {
      assertThat(verdict.wayBack()).isInstanceOf(WayBack.None.class);
    } else if (verdict.wayBack() instanceof WayBack.Steps way) {
      assertThat(way.steps()).allSatisfy(step -> assertThat(step.shown()).isNotNull());
      verdict
          .actions()
          .forEach(
              action ->
                  assertThat(way.steps())
                      .anyMatch(
                          step ->
                              step.effect().equals(action.effect())
                                  && step.target().equals(action.target())
                                  && step.by().equals(action.by())));
    } else {
      assertThat(verdict.actions())
          .anyMatch(
              action ->
                  action.effect().effectKind() == EffectKind.RETIRE
                      && action.effect().scope() == Scope.LAYER);
    }
  }
}
