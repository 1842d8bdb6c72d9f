package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.testkit.ShippedArbitraries;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/** The laws of the verdict hold under every shipped edition, for every kind of element. */
@PropertyDefaults(tries = 500, edgeCases = EdgeCasesMode.NONE)
class ShippedLawsProperties {
  record Demanded(Effect effect, Site target) {}

  record Added(ShippedCase before, ShippedCase after) {}

  @Provide
  Arbitrary<ShippedCase> cases() {
    return ShippedArbitraries.cases();
  }

  @Provide
  Arbitrary<Added> foundBesides() {
    return ShippedArbitraries.cases()
        .flatMap(
            given ->
                ShippedArbitraries.findings(given)
                    .map(finding -> new Added(given, given.with(finding))));
  }

  @Property
  void orderAndRepetitionNeverMatter(@ForAll("cases") ShippedCase given, @ForAll Random random) {
    List<Inspection> inspections = new ArrayList<>();
    for (Inspection made : stirred(given.inspections(), random)) {
      InspectionBuilder builder =
          Inspection.builder(made.kind(), made.occasion(), made.on(), made.by())
              .gearClean(made.gearClean())
              .atHand(made.atHand());
      stirred(made.outcomes(), random)
          .forEach(outcome -> builder.outcome(outcome.criterion(), outcome.outcome()));
      inspections.add(builder.build());
    }
    ShippedCase other =
        given
            .withFindings(stirred(given.findings(), random))
            .withEvents(stirred(given.events(), random))
            .inspectedBy(inspections);
    assertThat(content(other.verdict())).isEqualTo(content(given.verdict()));
  }

  private static <T> List<T> stirred(List<T> things, Random random) {
    List<T> stirred = new ArrayList<>(things);
    if (!things.isEmpty()) {
      stirred.add(things.get(random.nextInt(things.size())));
    }
    Collections.shuffle(stirred, random);
    return stirred;
  }

  private static List<Object> content(Verdict verdict) {
    return List.of(
        verdict.service(),
        verdict.headline(),
        verdict.reasons(),
        verdict.actions(),
        verdict.handling(),
        verdict.checksNotDone(),
        verdict.openFindings(),
        verdict.ages(),
        verdict.wayBack(),
        verdict.due(),
        verdict.cautions(),
        verdict.identity());
  }

  @Property
  void aFindingMoreTakesNoActionAwayAndBringsNothingBack(@ForAll("foundBesides") Added added) {
    Verdict before = added.before().verdict();
    Verdict after = added.after().verdict();
    Statistics.label("before").collect(before.service());
    assertThat(demanded(after)).containsAll(demanded(before));
    assertThat(after.handling()).containsAll(before.handling());
    if (before.service() == Service.OUT) {
      assertThat(after.service()).isEqualTo(Service.OUT);
    }
  }

  private static Set<Demanded> demanded(Verdict verdict) {
    return verdict.actions().stream()
        .map(action -> new Demanded(action.effect(), action.target()))
        .collect(Collectors.toSet());
  }

  @Property
  void theServiceAloneIsThatOfTheVerdict(@ForAll("cases") ShippedCase given) {
    assertThat(GearRules.of(given.rules()).service(given.assessment(), given.asOf()))
        .isEqualTo(given.verdict().service());
  }

  @Property
  void onlyNotesLeaveAnythingIn(@ForAll("cases") ShippedCase given) {
    Verdict verdict = given.verdict();
    assertThat(verdict.service() == Service.IN)
        .isEqualTo(
            verdict.reasons().stream()
                .allMatch(reason -> reason.effect().effectKind() == EffectKind.NOTE));
  }

  @Property
  void everyActionHasSomebodyWhoMayDoIt(@ForAll("cases") ShippedCase given) {
    assertThat(given.verdict().actions()).allMatch(action -> !action.by().isEmpty());
  }
}
