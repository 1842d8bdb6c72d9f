package org.ensemblerules.audit.difference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.OtherRules;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Service;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What other rules cost a fleet: who leaves service, what is due sooner, who is retired. */
class FleetDifferenceTest {
  private static final RuleSet NOW = FrozenRules.rules();
  private static final List<Assessment> FLEET =
      FrozenRules.KINDS.stream().map(FitGear::fit).map(GearCase::assessment).toList();

  private static ElementDifference helmet(RuleSet then) {
    return ElementDifference.of(
        GearRules.of(NOW),
        GearRules.of(then),
        FitGear.fit(ElementKind.HELMET).assessment(),
        FitGear.AS_OF);
  }

  /** Last inspected on 10 January, judged on 15 June: by four months it is overdue. */
  @Test
  void aShorterIntervalTakesOutWhatWasNotInspectedInTime() {
    RuleSet then = OtherRules.intervals(row -> OtherRules.interval(row, 4, 4));
    ElementDifference helmet = helmet(then);
    assertThat(helmet.before().service()).isEqualTo(Service.IN);
    assertThat(helmet.after().service()).isEqualTo(Service.OUT);
    assertThat(helmet.effects())
        .contains(FleetEffect.LEAVES_SERVICE, FleetEffect.GAINS_ACTION)
        .doesNotContain(FleetEffect.RETURNS_TO_SERVICE, FleetEffect.LOSES_ACTION);
    assertThat(helmet.gained())
        .singleElement()
        .satisfies(
            gained -> {
              assertThat(gained.action().effect())
                  .isEqualTo(new Effect.Evaluate(Check.ADVANCED_INSPECTION, Scope.ELEMENT));
              assertThat(gained.rows())
                  .containsExactly(new RowKey("frozen/interval/ADVANCED/HELMET"));
            });
    FleetCounts counts =
        FleetDifference.between(GearRules.of(NOW), GearRules.of(then), FLEET, FitGear.AS_OF)
            .counts();
    assertThat(counts.total().elements()).isEqualTo(3);
    assertThat(counts.total().inServiceBefore()).isEqualTo(3);
    assertThat(counts.total().inServiceAfter()).isZero();
    assertThat(counts.byKind().get(ElementKind.COAT).of(FleetEffect.LEAVES_SERVICE)).isOne();
    assertThat(counts.gainedFor()).containsEntry(new RowKey("frozen/interval/ADVANCED/COAT"), 1L);
    assertThat(counts.lostWith()).isEmpty();
  }

  /** Made on 1 March 2020: four years end on 1 March 2024, ten on 1 March 2030. */
  @Test
  void aShorterAgeRetires() {
    RuleSet then = OtherRules.ages(row -> OtherRules.age(row, new AgeLimit.Years(4)));
    ElementDifference helmet = helmet(then);
    assertThat(helmet.effects())
        .contains(
            FleetEffect.TO_BE_RETIRED, FleetEffect.OUT_SOONER, FleetEffect.NEWLY_DUE_WITHIN_A_YEAR);
    assertThat(helmet.ages())
        .singleElement()
        .satisfies(
            move -> {
              assertThat(move.before().orElseThrow().text()).isEqualTo("first day out 2030-03-01");
              assertThat(move.after().orElseThrow().text()).isEqualTo("first day out 2024-03-01");
              assertThat(move.sooner()).isTrue();
              assertThat(move.later()).isFalse();
            });
    assertThat(helmet.due()).extracting(DueMove::task).containsExactly(TaskKey.LEAVE_SERVICE);
    assertThat(helmet.due().get(0).sooner()).isTrue();
    assertThat(helmet.due().get(0).after().orElseThrow().by()).contains(LocalDate.of(2024, 2, 29));
  }

  @Test
  void aLimitThatFallsAwayIsLater() {
    ElementDifference helmet =
        helmet(OtherRules.ages(row -> OtherRules.age(row, new AgeLimit.NoneSet())));
    assertThat(helmet.effects())
        .containsExactlyInAnyOrder(FleetEffect.OUT_LATER, FleetEffect.DUE_LATER);
    assertThat(helmet.isEmpty()).isFalse();
    assertThat(helmet.gained()).isEmpty();
  }

  /** Nobody can tell which of the two is sooner when one of them was not seen. */
  @Test
  void aLimitNotSeenIsNeitherSoonerNorLaterButKeepsOut() {
    ElementDifference helmet =
        helmet(OtherRules.ages(row -> OtherRules.age(row, new AgeLimit.NotSeen())));
    assertThat(helmet.effects())
        .contains(FleetEffect.LEAVES_SERVICE)
        .doesNotContain(FleetEffect.OUT_LATER, FleetEffect.OUT_SOONER);
    assertThat(helmet.ages()).hasSize(1);
  }

  /** A million elements would do: each is read once and none is kept. */
  @Test
  @Tag("slow")
  void aFleetIsReadOnceAsAStream() {
    Iterable<Assessment> stream = () -> Stream.generate(() -> FLEET.get(0)).limit(2000).iterator();
    FleetDifference difference =
        FleetDifference.between(GearRules.of(NOW), GearRules.of(NOW), stream, FitGear.AS_OF);
    assertThat(difference.counts().total()).isEqualTo(new Tally(2000, 2000, 2000, 0, Map.of()));
    assertThat(difference.now()).isEqualTo(difference.then());
    assertThat(difference.counts().byKind()).containsOnlyKeys(ElementKind.COAT);
  }

  @Test
  void nothingDueIsNoMove() {
    assertThatThrownBy(
            () ->
                new DueMove(
                    TaskKey.LEAVE_SERVICE, Optional.empty(), Optional.empty(), Optional.empty()))
        .isInstanceOf(InvalidValueException.class);
  }
}
