package org.ensemblerules.audit.difference;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.OtherRules;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Service;

/** What holds of differences on a fleet whatever the rules and the fleet are. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 150, edgeCases = EdgeCasesMode.NONE)
class FleetDifferenceProperties {
  private static final LocalDate DAY = FitGear.AS_OF;

  private static List<Assessment> fleet(List<GearCase> cases) {
    return cases.stream().map(GearCase::assessment).toList();
  }

  @Property
  void equalRulesChangeNothing(@ForAll @Size(max = 5) List<GearCase> cases) {
    RuleSet anew = FrozenRules.of(FrozenRules.tables());
    List<ElementDifference> each = new ArrayList<>();
    FleetCounts counts =
        FleetDifference.between(
                GearRules.of(FrozenRules.rules()), GearRules.of(anew), fleet(cases), DAY, each::add)
            .counts();
    assertThat(each).allMatch(ElementDifference::isEmpty);
    assertThat(each).allMatch(difference -> difference.effects().isEmpty());
    assertThat(counts.total().elements()).isEqualTo(cases.size());
    assertThat(counts.total().changed()).isZero();
    assertThat(counts.total().effects()).isEmpty();
    assertThat(counts.gainedFor()).isEmpty();
  }

  @Property
  void theOrderOfTheFleetDoesNotMatter(
      @ForAll @Size(max = 5) List<GearCase> cases, @ForAll Random random) {
    RuleSet other = OtherRules.any(random);
    List<Assessment> stirred = new ArrayList<>(fleet(cases));
    Collections.shuffle(stirred, random);
    FleetCounts counts =
        FleetDifference.between(
                GearRules.of(FrozenRules.rules()), GearRules.of(other), fleet(cases), DAY)
            .counts();
    assertThat(
            FleetDifference.between(
                    GearRules.of(FrozenRules.rules()), GearRules.of(other), stirred, DAY)
                .counts())
        .isEqualTo(counts);
    assertThat(
            stirred.parallelStream()
                .map(
                    each ->
                        ElementDifference.of(
                            GearRules.of(FrozenRules.rules()), GearRules.of(other), each, DAY))
                .collect(FleetCounts.collector()))
        .isEqualTo(counts);
  }

  /** Counted one way from the verdicts themselves, and the other way by the collector. */
  @Property
  void countsAreThoseOfTheVerdicts(
      @ForAll @Size(max = 5) List<GearCase> cases, @ForAll Random random) {
    RuleSet other = OtherRules.any(random);
    long before = 0;
    long after = 0;
    long leaves = 0;
    for (Assessment each : fleet(cases)) {
      boolean in = GearRules.of(FrozenRules.rules()).service(each, DAY) == Service.IN;
      boolean then = GearRules.of(other).service(each, DAY) == Service.IN;
      before += in ? 1 : 0;
      after += then ? 1 : 0;
      leaves += in && !then ? 1 : 0;
    }
    Tally total =
        FleetDifference.between(
                GearRules.of(FrozenRules.rules()), GearRules.of(other), fleet(cases), DAY)
            .counts()
            .total();
    assertThat(total.inServiceBefore()).isEqualTo(before);
    assertThat(total.inServiceAfter()).isEqualTo(after);
    assertThat(total.of(FleetEffect.LEAVES_SERVICE)).isEqualTo(leaves);
    assertThat(total.of(FleetEffect.RETURNS_TO_SERVICE)).isEqualTo(after - before + leaves);
  }

  @Property
  void theOtherWayRoundGainsAreLosses(@ForAll GearCase given, @ForAll Random random) {
    RuleSet other = OtherRules.any(random);
    ElementDifference there =
        ElementDifference.of(
            GearRules.of(FrozenRules.rules()),
            GearRules.of(other),
            given.assessment(),
            given.asOf());
    ElementDifference back =
        ElementDifference.of(
            GearRules.of(other),
            GearRules.of(FrozenRules.rules()),
            given.assessment(),
            given.asOf());
    assertThat(back.gained()).isEqualTo(there.lost());
    assertThat(back.lost()).isEqualTo(there.gained());
    assertThat(back.due()).hasSameSizeAs(there.due());
    assertThat(back.ages()).hasSameSizeAs(there.ages());
    assertThat(back.effects().contains(FleetEffect.OUT_LATER))
        .isEqualTo(there.effects().contains(FleetEffect.OUT_SOONER));
    assertThat(there.gained()).allMatch(change -> !change.because().isEmpty());
  }
}
