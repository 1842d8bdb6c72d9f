package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.KeptElement;
import org.ensemblerules.issue.NoticeAnswer;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.junit.jupiter.api.Test;

/** What a safety notice touches of gear judged by the shipped tables. */
class NoticesTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);
  private static final SafetyNotice ANOTHER_MAKERS =
      new SafetyNotice(
          "2024-1",
          SafetyNotice.Asks.STOP_USE,
          Set.of(),
          "Another maker",
          Set.of(),
          Set.of(),
          MarkedDate.unknown(),
          MarkedDate.unknown());

  private static JudgedElement judged(ShippedCase given) {
    Whereabouts nowhere =
        new Whereabouts(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    return JudgedElement.of(
        RULES,
        new KeptElement(given.assessment(), nowhere),
        List.of(ANOTHER_MAKERS),
        ShippedGear.AS_OF);
  }

  /** That the label of a winter liner is left out does not let the notice pass it by. */
  @Test
  void aLayerThatAnInspectionSawMayBeTheOneThatIsMeant() {
    ShippedCase fit = ShippedCase.fit(RULES, COAT);
    assertThat(judged(fit).notices()).isEmpty();
    assertThat(judged(fit.with(sawTheWinterLiner())).notices())
        .containsExactly(new NoticeAnswer(ANOTHER_MAKERS, YesNoUnknown.UNKNOWN));
  }

  private static LookEvent.Inspected sawTheWinterLiner() {
    Inspection clear =
        ShippedGear.inspection(
                RULES, InspectionKind.ADVANCED, COAT, MarkedDate.of(ShippedGear.AS_OF.minusDays(5)))
            .build();
    InspectionBuilder saw =
        Inspection.builder(clear.kind(), clear.occasion(), clear.on(), clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand());
    for (CriterionRow row :
        RULES.tables().criteria().required(clear.kind(), COAT.element(), COAT.use())) {
      saw.outcome(row.key(), Outcome.CLEAR);
    }
    assertThat(RULES.tables().criteria().required(clear.kind(), COAT.element(), COAT.use()))
        .anyMatch(
            row ->
                row.sites().stream()
                    .anyMatch(site -> site.layer().equals(Optional.of(LayerKind.WINTER_LINER))));
    return new LookEvent.Inspected(saw.build(), 0);
  }
}
