package org.ensemblerules.issue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.verdict.Service;
import org.junit.jupiter.api.Test;

class SafetyNoticeTest {
  private static final SafetyNotice WITHOUT_DATES =
      notice(Set.of("Model A"), Set.of("Lot 1"), "UNKNOWN", "UNKNOWN");

  private static SafetyNotice notice(
      Set<String> models, Set<String> lots, String from, String through) {
    return new SafetyNotice(
        "N-1",
        SafetyNotice.Asks.SEND_BACK,
        Set.of(),
        FitGear.MAKER_NAME,
        models,
        lots,
        MarkedDate.parse(from),
        MarkedDate.parse(through));
  }

  private static YesNoUnknown touches(SafetyNotice notice, UnaryOperator<LabelBuilder> change) {
    Element helmet =
        FitGear.element(ElementKind.HELMET).label(change.apply(FitGear.label()).build()).build();
    return notice.touches(helmet, FrozenRules.tables().anatomy().labels(helmet));
  }

  @Test
  void aNoticeWithoutDatesTouchesEachDayOfManufacture() {
    assertThat(touches(WITHOUT_DATES, label -> label)).isEqualTo(YesNoUnknown.YES);
    assertThat(touches(WITHOUT_DATES, label -> label.manufactured(MarkedDate.unknown())))
        .isEqualTo(YesNoUnknown.YES);
  }

  @Test
  void anotherModelOrLotIsNotTouched() {
    assertThat(touches(WITHOUT_DATES, label -> label.model("Model B"))).isEqualTo(YesNoUnknown.NO);
    assertThat(touches(WITHOUT_DATES, label -> label.identification("Lot 2")))
        .isEqualTo(YesNoUnknown.NO);
    assertThat(touches(WITHOUT_DATES, label -> label.manufacturer("Another maker")))
        .isEqualTo(YesNoUnknown.NO);
  }

  @Test
  void whatALabelDoesNotTellLeavesItPossible() {
    LabelBuilder bare = Label.builder().legibility(Legibility.READABLE);
    assertThat(touches(WITHOUT_DATES, label -> bare)).isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(touches(WITHOUT_DATES, label -> label.model("MODEL-A")))
        .isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(
            touches(
                WITHOUT_DATES,
                label -> label.model("Model B").legibility(Legibility.PARTLY_READABLE)))
        .isEqualTo(YesNoUnknown.UNKNOWN);
    Element none =
        Element.builder(
                FitGear.element(ElementKind.HELMET).build().id(),
                ElementKind.HELMET,
                Use.STRUCTURAL)
            .build();
    assertThat(WITHOUT_DATES.touches(none, FrozenRules.tables().anatomy().labels(none)))
        .isEqualTo(YesNoUnknown.UNKNOWN);
  }

  @Test
  void datesOfManufactureAreHeldAgainstTheSpan() {
    SafetyNotice span = notice(Set.of(), Set.of(), "2020-02", "2020-03-15");
    assertThat(touches(span, label -> label)).isEqualTo(YesNoUnknown.YES);
    assertThat(touches(span, label -> label.manufactured(MarkedDate.parse("2020-01-31"))))
        .isEqualTo(YesNoUnknown.NO);
    assertThat(touches(span, label -> label.manufactured(MarkedDate.parse("2020-03"))))
        .isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(touches(span, label -> label.manufactured(MarkedDate.unknown())))
        .isEqualTo(YesNoUnknown.UNKNOWN);
  }

  @Test
  void oneLayerThatIsTouchedTouchesTheCoat() {
    Element coat =
        FitGear.element(ElementKind.COAT)
            .layer(LayerKind.LINER_SYSTEM, FitGear.label().identification("Lot 2").build())
            .build();
    assertThat(WITHOUT_DATES.touches(coat, FrozenRules.tables().anatomy().labels(coat)))
        .isEqualTo(YesNoUnknown.YES);
  }

  @Test
  void whatATouchingNoticeDoesToTheAnswer() {
    KeptElement helmet =
        new KeptElement(
            FitGear.fit(ElementKind.HELMET).assessment(), Whereabouts.with("Member 7", "1"));
    JudgedElement before = JudgedElement.of(FrozenRules.rules(), helmet, List.of(), FitGear.AS_OF);
    JudgedElement after =
        JudgedElement.of(FrozenRules.rules(), helmet, List.of(WITHOUT_DATES), FitGear.AS_OF);
    assertThat(before.service()).isEqualTo(Service.IN);
    assertThat(before.goesTo()).isEmpty();
    assertThat(after.service()).isEqualTo(Service.OUT);
    assertThat(after.goesTo()).hasValue(GoesTo.of(Destination.MANUFACTURER));
    assertThat(after.verdict()).isEqualTo(before.verdict());
    assertThat(after.notices().get(0).objection().text())
        .isEqualTo("notice N-1 touches it: SEND_BACK");
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> notice(Set.of(), Set.of(), "2020-03-16", "2020-03-15"))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage(
            "SafetyNotice.madeFrom: given 2020-03-16, allowed: a date not after 2020-03-15");
    assertThatThrownBy(() -> notice(Set.of(" "), Set.of(), "UNKNOWN", "UNKNOWN"))
        .isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(() -> new NoticeAnswer(WITHOUT_DATES, YesNoUnknown.NO))
        .isInstanceOf(InvalidValueException.class);
  }
}
