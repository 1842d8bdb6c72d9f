package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.DecisionEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Moment;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.VerdictJson;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.testkit.ShippedWork;
import org.ensemblerules.verdict.OutBecause;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Test;

/** What people decide beside the rules: the inspector more strictly, the authority otherwise. */
class DecisionsTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final ShippedCase HOOD =
      ShippedCase.fit(RULES, new Kind(ElementKind.HOOD, Use.STRUCTURAL));
  private static final LocalDate DECIDED = ShippedGear.AS_OF.minusDays(10);
  private static final FindingId ID = new FindingId("D1");
  private static final Effect WASH = new Effect.Clean(CleaningKind.ADVANCED, Scope.ELEMENT);

  private static Moment on(LocalDate day) {
    return Moment.on(MarkedDate.of(day));
  }

  private static Event decided(Effect effect) {
    Doer inspector = new Doer("I. Inspector", EntityKind.ORGANIZATION, List.of());
    return new DecisionEvent.InspectorDecided(
        on(DECIDED), ID, Site.of(Part.WHOLE_ELEMENT), effect, inspector, "smells of fuel");
  }

  private static ShippedCase washed(Set<FindingId> answers, LocalDate day) {
    return HOOD.with(decided(WASH))
        .with(
            ShippedWork.done(
                RULES,
                on(day),
                WASH,
                ShippedGear.permitted(RULES, Task.ADVANCED_CLEANING),
                answers));
  }

  @Test
  void theInspectorsStricterDecisionBindsAndStandsWithTheName() {
    assertThat(HOOD.verdict().service()).isEqualTo(Service.IN);
    Verdict verdict = HOOD.with(decided(WASH)).verdict();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(verdict.outBecause()).containsExactly(OutBecause.CONDITION);
    Reason reason = verdict.reasons().get(0);
    assertThat(reason.kind()).isEqualTo(ReasonKind.INSPECTOR_DECIDED);
    assertThat(reason.seen()).isEqualTo("decided by I. Inspector, " + DECIDED + ": smells of fuel");
    assertThat(reason.finding()).contains(ID);
    assertThat(verdict.actions()).extracting(action -> action.effect()).containsExactly(WASH);
    assertThat(VerdictJson.read("verdict", VerdictJson.write(verdict)).orElseThrow())
        .isEqualTo(verdict);
  }

  @Test
  void onlyWhatWasDecidedDoneForItEndsIt() {
    assertThat(washed(Set.of(ID), DECIDED.plusDays(1)).verdict().service()).isEqualTo(Service.IN);
    assertThat(washed(Set.of(), DECIDED.plusDays(1)).verdict().service()).isEqualTo(Service.OUT);
    Verdict before = washed(Set.of(ID), DECIDED.minusDays(1)).verdict();
    assertThat(before.service()).isEqualTo(Service.OUT);
    assertThat(before.reasons().get(0).attempts()).isNotEmpty();
  }

  @Test
  void aDecisionToRetireIsEndedByNothing() {
    Verdict verdict = HOOD.with(decided(new Effect.Retire(Scope.ELEMENT))).verdict();
    assertThat(verdict.wayBack()).isInstanceOf(WayBack.None.class);
    // Before the day of the decision there is none.
    assertThat(
            HOOD.with(decided(new Effect.Retire(Scope.ELEMENT)))
                .on(DECIDED.minusDays(1))
                .verdict()
                .reasons())
        .noneMatch(reason -> reason.kind() == ReasonKind.INSPECTOR_DECIDED);
  }

  private static ShippedCase withdrawn(Effect effect, String id, Doer by, LocalDate day) {
    return HOOD.with(decided(effect))
        .with(
            new DecisionEvent.DecisionWithdrawn(
                on(day), new FindingId(id), by, "the smell came from the locker"));
  }

  private static Doer named(String name) {
    Doer trained = ShippedGear.permitted(RULES, Task.ADVANCED_INSPECTION);
    return new Doer(name, trained.kind(), trained.credentials());
  }

  @Test
  void whoeverDecidedMayWithdrawItAndNobodyElse() {
    Doer inspector = named("I. Inspector");
    LocalDate next = DECIDED.plusDays(1);
    assertThat(withdrawn(WASH, "D1", inspector, next).verdict().service()).isEqualTo(Service.IN);
    assertThat(withdrawn(WASH, "D1", inspector, DECIDED).verdict().service())
        .as("of the day, as it names the decision")
        .isEqualTo(Service.IN);
    for (ShippedCase binds :
        List.of(
            withdrawn(WASH, "D1", named("A. Nother"), next),
            withdrawn(WASH, "D2", inspector, next),
            withdrawn(WASH, "D1", inspector, DECIDED.minusDays(1)),
            withdrawn(WASH, "D1", inspector, ShippedGear.AS_OF.plusDays(1)),
            withdrawn(
                WASH, "D1", new Doer("I. Inspector", EntityKind.ORGANIZATION, List.of()), next),
            withdrawn(new Effect.Retire(Scope.ELEMENT), "D1", inspector, next))) {
      assertThat(binds.verdict().service()).isEqualTo(Service.OUT);
    }
  }

  @Test
  void aDecisionCannotSoften() {
    assertThatThrownBy(() -> decided(new Effect.Note()))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("an effect that keeps the element out");
  }

  @Test
  void theAuthoritysOtherDecisionStandsBesideAndChangesNothing() {
    ShippedCase out = HOOD.with(decided(new Effect.Repair(RepairClass.BASIC, Scope.PART)));
    Event leave =
        new DecisionEvent.AuthorityDecided(
            on(DECIDED), "Chief Z. Placeholder", "may serve", "none left");
    Verdict without = out.verdict();
    Verdict with = out.with(leave).verdict();
    assertThat(with.service()).isEqualTo(Service.OUT);
    assertThat(with.reasons()).isEqualTo(without.reasons());
    assertThat(with.actions()).isEqualTo(without.actions());
    assertThat(with.wayBack()).isEqualTo(without.wayBack());
    assertThat(with.authority()).hasSize(1);
    assertThat(with.authority().get(0).text())
        .isEqualTo(
            "Chief Z. Placeholder decided on " + DECIDED + ": may serve; none left (not computed)");
    assertThat(VerdictJson.read("verdict", VerdictJson.write(with)).orElseThrow()).isEqualTo(with);
    assertThat(HOOD.with(leave).verdict().service()).isEqualTo(Service.IN);
  }
}
