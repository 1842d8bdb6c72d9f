package org.ensemblerules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ensemblerules.GearRules;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Strictness;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.testkit.Effects;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.Layering;
import org.ensemblerules.testkit.Settling;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/** What the order of effects says is borne out by verdicts and by what settles findings. */
class EffectsInOrderProperties {
  private static final FindingId ID = new FindingId("F1");
  private static final List<Effect> ALL = Effects.all();
  private static final Finding FOUND =
      new Finding(
          ID,
          Site.parse("FABRIC@OUTER_SHELL"),
          "",
          DefectKind.CRACKING,
          new Extent.NotMeasured(),
          MarkedDate.of(FitGear.AS_OF));

  // Made of the finding above.
  private static final Map<Effect, RuleSet> RULES =
      ALL.stream().collect(Collectors.toMap(Function.identity(), EffectsInOrderProperties::rules));

  @Provide
  Arbitrary<Effect> effects() {
    return Arbitraries.of(ALL);
  }

  /** Rules with one row on defects, which calls for the effect. */
  private static RuleSet rules(Effect effect) {
    Tables tables = FrozenRules.tables();
    return FrozenRules.of(
        Tables.of(
            tables
                .map()
                .with(
                    InspectionKinds.DEFECTS,
                    DefectTable.of(
                            List.of(
                                Layering.of("ONLY")
                                    .defect(
                                        FOUND.site().toString(),
                                        FOUND.defect(),
                                        new Band.Presence(),
                                        effect)),
                            tables.anatomy())
                        .orElseThrow())));
  }

  private static RuleSet by(Effect effect) {
    return Objects.requireNonNull(RULES.get(effect), effect::text);
  }

  private static Verdict judged(Effect effect) {
    GearCase given = FitGear.fit(ElementKind.COAT).with(FOUND);
    return GearRules.of(by(effect)).assess(given.assessment(), given.asOf());
  }

  @Property(tries = 2_000, generation = GenerationMode.EXHAUSTIVE)
  void whatAsksForMoreIsNeverJudgedMilder(
      @ForAll("effects") Effect one, @ForAll("effects") Effect other) {
    Strictness strictness = one.against(other);
    if (strictness.covers() || strictness == Strictness.HIGHER) {
      Verdict strict = judged(one);
      Verdict mild = judged(other);
      assertThat(strict.headline()).isLessThanOrEqualTo(mild.headline());
      if (mild.service() == Service.OUT) {
        assertThat(strict.service()).isEqualTo(Service.OUT);
      }
    }
  }

  /** Nothing is left to do for what is covered, but to clean or evaluate what was replaced. */
  @Property(tries = 2_000, generation = GenerationMode.EXHAUSTIVE)
  void whatSettlesAnEffectSettlesWhatItCovers(
      @ForAll("effects") Effect one, @ForAll("effects") Effect other) {
    boolean replaced =
        one instanceof Effect.Retire
            && (other instanceof Effect.Clean || other instanceof Effect.Evaluate);
    if (one.isFinal() || one instanceof Effect.Note) {
      return;
    }
    assertThat(settledBy(one, one)).isTrue();
    if (one.against(other).covers() && !replaced) {
      assertThat(settledBy(one, other)).isTrue();
    }
    if (one.against(other) == Strictness.HIGHER) {
      assertThat(settledBy(one, other)).isFalse();
    }
  }

  /** Whether carrying out one effect leaves nothing open by rules that call for another. */
  private static boolean settledBy(Effect done, Effect calledFor) {
    List<Event> events = new ArrayList<>();
    events.add(new LookEvent.Found(FOUND));
    events.addAll(Settling.of(ID, done, Set.of(), FitGear.AS_OF.plusDays(1)));
    return by(calledFor)
        .evidence(
            FitGear.fit(ElementKind.COAT).element(),
            History.of(events),
            FitGear.AS_OF.plusMonths(1))
        .findings()
        .ofHistory()
        .isEmpty();
  }
}
