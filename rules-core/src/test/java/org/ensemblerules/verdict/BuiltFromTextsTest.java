package org.ensemblerules.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.junit.jupiter.api.Test;

/** What is handed over as text is what it would be as a value, and is refused where that is. */
class BuiltFromTextsTest {
  private static final MarkedDate DAY = MarkedDate.parse("2026-09-01");
  private static final Doer WEARER = new Doer("Member 7", EntityKind.MEMBER, List.of());

  private static ElementBuilder helmet() {
    return Element.builder("H-17", ElementKind.HELMET, Use.STRUCTURAL);
  }

  private static InspectionBuilder look() {
    return Inspection.builder(InspectionKind.ROUTINE, Occasion.AFTER_USE, "2026-09-01", WEARER);
  }

  @Test
  void anElementItsLabelAndItsDates() {
    assertThat(helmet().inService("2026-09-01").build())
        .isEqualTo(
            Element.builder(new ElementId("H-17"), ElementKind.HELMET, Use.STRUCTURAL)
                .inService(DAY)
                .build());
    assertThat(Label.builder().manufactured("2026-09-01").build())
        .isEqualTo(Label.builder().manufactured(DAY).build());
  }

  @Test
  void aLookAndWhoMadeIt() {
    assertThat(Doer.member("Member 7")).isEqualTo(WEARER);
    assertThat(look().gearClean().allClear("E_1").build())
        .isEqualTo(
            Inspection.builder(InspectionKind.ROUTINE, Occasion.AFTER_USE, DAY, WEARER)
                .gearClean(YesNoUnknown.YES)
                .allClear(new OriginId("E_1"))
                .build());
    assertThat(look().gearClean().build().toBuilder().build())
        .isEqualTo(look().gearClean().build());
  }

  @Test
  void whatHappened() {
    Inspection look = look().build();
    Element helmet = helmet().build();
    assertThat(Assessment.builder(helmet).used("2026-09-01").inspected(look).build())
        .isEqualTo(
            Assessment.builder(helmet)
                .event(new UseEvent.Used(Moment.on(DAY)))
                .event(new LookEvent.Inspected(look, 0))
                .build());
  }

  @Test
  void aTextThatIsNoneIsRefused() {
    assertThatThrownBy(() -> Element.builder(" ", ElementKind.HELMET, Use.STRUCTURAL))
        .isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(() -> helmet().inService("yesterday"))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("yesterday");
    assertThatThrownBy(() -> Label.builder().manufactured("2026-13"))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("2026-13");
    assertThatThrownBy(() -> look().allClear("no edition"))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("no edition");
    assertThatThrownBy(() -> Assessment.builder(helmet().build()).used(""))
        .isInstanceOf(InvalidValueException.class);
  }
}
