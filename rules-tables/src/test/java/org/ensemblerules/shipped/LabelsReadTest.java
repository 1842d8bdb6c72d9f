package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Service;
import org.junit.jupiter.api.Test;

/** What an inspector can read on a label is read at the bench, not found out outside. */
class LabelsReadTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);
  private static final String READ = "EVALUATE by READ_LABEL on LAYER";

  /** A coat whose liner's label the database tells otherwise. */
  private static ShippedCase liner(UnaryOperator<LabelBuilder> change) {
    Element coat =
        ShippedGear.element(RULES, COAT)
            .layer(LayerKind.LINER_SYSTEM, change.apply(ShippedGear.label()).build())
            .build();
    return ShippedCase.fit(RULES, COAT).with(coat);
  }

  private static LabelBuilder bare() {
    return Label.builder()
        .manufacturer(ShippedGear.MAKER)
        .manufactured(MarkedDate.of(ShippedGear.MADE));
  }

  private static List<String> asked(ShippedCase given) {
    return given.verdict().actions().stream().map(action -> action.effect().text()).toList();
  }

  @Test
  void anInspectionThatCountsSaysThatALabelCanBeReadAndBearsTheMark() {
    ShippedCase given =
        liner(
            label -> label.legibility(Legibility.UNKNOWN).certificationMark(YesNoUnknown.UNKNOWN));
    assertThat(given.verdict().service()).isEqualTo(Service.IN);
    List<Event> before =
        given.events().stream().filter(event -> !(event instanceof LookEvent.Inspected)).toList();
    assertThat(asked(given.withEvents(before))).contains(READ);
  }

  @Test
  void whatIsInItsPlaceSinceHasALabelOfItsOwn() {
    ShippedCase given =
        liner(label -> label.legibility(Legibility.UNKNOWN).identification("Lot 2"))
            .with(
                new EndEvent.LayerRetired(
                    Moment.on(MarkedDate.of(ShippedGear.LAST_IN_FULL.plusDays(5))),
                    LayerKind.LINER_SYSTEM,
                    Optional.of("Lot 1"),
                    "worn"));
    assertThat(asked(given)).contains(READ);
  }

  @Test
  void anEmptyFieldIsReadTheLabelByTheDepartmentsOwnPeople() {
    for (ShippedCase given :
        List.of(
            liner(label -> label.manufactured(MarkedDate.unknown())),
            liner(label -> bare().size("M")),
            liner(label -> bare().model("Model A")))) {
      assertThat(given.verdict().service()).isEqualTo(Service.OUT);
      assertThat(asked(given)).containsExactly(READ);
      assertThat(given.verdict().actions())
          .flatExtracting(Action::by)
          .anyMatch(doer -> doer.entity() == EntityKind.ORGANIZATION);
    }
  }

  @Test
  void whatCannotBeReadAnyMoreIsForTheManufacturer() {
    ShippedCase given =
        liner(label -> label.legibility(Legibility.UNREADABLE).manufactured(MarkedDate.unknown()));
    assertThat(asked(given)).contains("EVALUATE by IDENTIFICATION on LAYER").doesNotContain(READ);
  }
}
