package org.ensemblerules.retirement;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.Checked;
import org.ensemblerules.testkit.FrozenProvenance;
import org.junit.jupiter.api.Test;

/** Which routes are open to what was retired, on a frozen table. */
class DisposalTableTest {
  static final RetirementCause OLD = new RetirementCause.OverAge(LocalDate.of(2024, 1, 1));
  static final RetirementCause TORN = new RetirementCause.BeyondRepair("the shell");
  static final RetirementCause SOILED = new RetirementCause.CannotBeCleaned("asbestos");

  private static DisposalRouteRow row(
      RetirementReason reason, DisposalRoute route, RouteCondition... conditions) {
    return new DisposalRouteRow(
        FrozenProvenance.of(reason, route),
        ElementKind.COAT,
        Use.STRUCTURAL,
        reason,
        route,
        Set.of(conditions));
  }

  private static final DisposalTable TABLE =
      DisposalTable.of(
              List.of(
                  row(
                      RetirementReason.OVER_AGE_LIMIT,
                      DisposalRoute.DESTROY,
                      RouteCondition.RELEASED),
                  row(
                      RetirementReason.OVER_AGE_LIMIT,
                      DisposalRoute.NON_LIVE_FIRE_TRAINING,
                      RouteCondition.RELEASED,
                      RouteCondition.MARKED_FOR_TRAINING,
                      RouteCondition.UNDAMAGED,
                      RouteCondition.UNCONTAMINATED),
                  row(
                      RetirementReason.OVER_AGE_LIMIT,
                      DisposalRoute.SPECIALIZED_WASTE,
                      RouteCondition.RELEASED),
                  row(
                      RetirementReason.OVER_AGE_LIMIT,
                      DisposalRoute.CUSTODY,
                      RouteCondition.UNDER_CUSTODY),
                  row(
                      RetirementReason.CANNOT_BE_CLEANED,
                      DisposalRoute.SPECIALIZED_WASTE,
                      RouteCondition.RELEASED),
                  row(
                      RetirementReason.CANNOT_BE_CLEANED,
                      DisposalRoute.CUSTODY,
                      RouteCondition.UNDER_CUSTODY)))
          .orElseThrow();

  static RetiredGear gear(
      Set<RetirementCause> causes,
      YesNoUnknown custody,
      YesNoUnknown marked,
      YesNoUnknown damaged,
      YesNoUnknown contaminated) {
    return new RetiredGear(
        ElementKind.COAT, Use.STRUCTURAL, causes, custody, marked, damaged, contaminated);
  }

  static Set<DisposalRoute> open(RetiredGear gear) {
    Set<DisposalRoute> open = EnumSet.noneOf(DisposalRoute.class);
    TABLE.routes(gear).stream()
        .filter(RouteAnswer.Open.class::isInstance)
        .forEach(answer -> open.add(answer.route()));
    return open;
  }

  @Test
  void whatIsMarkedSoundAndCleanMayServeTraining() {
    assertThat(
            open(
                gear(
                    Set.of(OLD),
                    YesNoUnknown.NO,
                    YesNoUnknown.YES,
                    YesNoUnknown.NO,
                    YesNoUnknown.NO)))
        .containsExactly(
            DisposalRoute.DESTROY,
            DisposalRoute.SPECIALIZED_WASTE,
            DisposalRoute.NON_LIVE_FIRE_TRAINING);
  }

  // 37 TAC 427.207: for training without live fire, not contaminated, defective or damaged, and
  // appropriately marked.
  @Test
  void eachConditionOfTrainingMustBeShown() {
    for (YesNoUnknown bad : List.of(YesNoUnknown.UNKNOWN, YesNoUnknown.YES)) {
      assertThat(open(gear(Set.of(OLD), YesNoUnknown.NO, YesNoUnknown.YES, bad, YesNoUnknown.NO)))
          .doesNotContain(DisposalRoute.NON_LIVE_FIRE_TRAINING);
      assertThat(open(gear(Set.of(OLD), YesNoUnknown.NO, YesNoUnknown.YES, YesNoUnknown.NO, bad)))
          .doesNotContain(DisposalRoute.NON_LIVE_FIRE_TRAINING);
    }
    for (YesNoUnknown bad : List.of(YesNoUnknown.UNKNOWN, YesNoUnknown.NO)) {
      assertThat(open(gear(Set.of(OLD), YesNoUnknown.NO, bad, YesNoUnknown.NO, YesNoUnknown.NO)))
          .doesNotContain(DisposalRoute.NON_LIVE_FIRE_TRAINING);
    }
  }

  @Test
  void whatMayBeUnderCustodyIsOnlyKept() {
    for (YesNoUnknown custody : List.of(YesNoUnknown.YES, YesNoUnknown.UNKNOWN)) {
      assertThat(
              open(gear(Set.of(OLD), custody, YesNoUnknown.YES, YesNoUnknown.NO, YesNoUnknown.NO)))
          .containsExactly(DisposalRoute.CUSTODY);
    }
  }

  @Test
  void aRouteMustBeOpenToEachCause() {
    assertThat(
            open(
                gear(
                    Set.of(OLD, SOILED),
                    YesNoUnknown.NO,
                    YesNoUnknown.YES,
                    YesNoUnknown.NO,
                    YesNoUnknown.NO)))
        .containsExactly(DisposalRoute.SPECIALIZED_WASTE);
    RouteAnswer destroy =
        TABLE
            .routes(
                gear(
                    Set.of(OLD, SOILED),
                    YesNoUnknown.NO,
                    YesNoUnknown.YES,
                    YesNoUnknown.NO,
                    YesNoUnknown.NO))
            .get(0);
    assertThat(((RouteAnswer.Closed) destroy).whyNot())
        .containsExactly("not open where the cause of retirement is CANNOT_BE_CLEANED");
  }

  @Test
  void aCauseOutweighsWhatIsSaidBesideIt() {
    assertThat(
            gear(Set.of(SOILED), YesNoUnknown.NO, YesNoUnknown.NO, YesNoUnknown.NO, YesNoUnknown.NO)
                .contaminated())
        .isEqualTo(YesNoUnknown.YES);
    assertThat(
            gear(Set.of(TORN), YesNoUnknown.NO, YesNoUnknown.NO, YesNoUnknown.NO, YesNoUnknown.NO)
                .damaged())
        .isEqualTo(YesNoUnknown.YES);
  }

  @Test
  void withoutARowThereIsNoRuleForAnyRoute() {
    assertThat(
            TABLE.routes(
                gear(
                    Set.of(OLD, TORN),
                    YesNoUnknown.NO,
                    YesNoUnknown.NO,
                    YesNoUnknown.NO,
                    YesNoUnknown.NO)))
        .hasSize(DisposalRoute.values().length)
        .allMatch(RouteAnswer.NoRule.class::isInstance);
    DisposalTable empty = DisposalTable.of(List.of()).orElseThrow();
    assertThat(
            empty.routes(
                gear(
                    Set.of(OLD),
                    YesNoUnknown.NO,
                    YesNoUnknown.NO,
                    YesNoUnknown.NO,
                    YesNoUnknown.NO)))
        .allMatch(RouteAnswer.NoRule.class::isInstance);
  }

  @Test
  void aRouteThatForgetsCustodyIsRefused() {
    assertThat(DisposalTable.of(List.of(row(RetirementReason.CBRN_AGENT, DisposalRoute.DESTROY))))
        .isInstanceOf(Checked.Refused.class);
  }
}
