package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.AssessmentBuilder;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** New gear that nobody has looked at is asked for no more than what brings it in. */
class NewGearTest {
  private static final GearRules RULES = ShippedRules.standard();

  static Stream<ShippedGear.Kind> kinds() {
    return ShippedGear.kinds(RULES.rules()).stream();
  }

  private static Verdict judged(ShippedGear.Kind kind, Consumer<AssessmentBuilder> happened) {
    Element element =
        ShippedGear.element(RULES.rules(), kind)
            .inService(MarkedDate.of(ShippedGear.AS_OF.minusMonths(1)))
            .build();
    AssessmentBuilder record = Assessment.builder(element);
    happened.accept(record);
    return RULES.assess(record.build(), ShippedGear.AS_OF);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void oneLookOfItsWearerBringsItIn(ShippedGear.Kind kind) {
    Verdict before = judged(kind, record -> {});
    assertThat(before.service()).isEqualTo(Service.OUT);
    assertThat(((WayBack.Steps) before.wayBack()).steps())
        .extracting(step -> step.effect())
        .isEqualTo(List.of(new Effect.Evaluate(Check.ROUTINE_INSPECTION, Scope.ELEMENT)));
    Inspection look =
        Inspection.builder(
                InspectionKind.ROUTINE,
                Occasion.ON_ISSUE,
                MarkedDate.of(ShippedGear.AS_OF),
                Optional.of(Doer.member("Member 7")))
            .gearClean()
            .allAtHand()
            .allClear(ShippedRules.DEFAULT_EDITION)
            .build();
    assertThat(judged(kind, record -> record.inspected(look)).service()).isEqualTo(Service.IN);
  }
}
