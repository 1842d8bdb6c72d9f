package org.ensemblerules.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class GearModelTest {
  private static final GearModel MODEL = new GearModel("Invented Looms", "Coat 7");
  private static final AnatomyTable ANATOMY = FrozenRules.rules().tables().anatomy();

  private static LabelBuilder label(String manufacturer, String model) {
    return Label.builder().manufacturer(manufacturer).model(model).legibility(Legibility.READABLE);
  }

  private static Label label() {
    return label("Invented Looms", "Coat 7").build();
  }

  private static ElementBuilder coat() {
    return Element.builder(new ElementId("c"), ElementKind.COAT, Use.STRUCTURAL);
  }

  private static YesNoUnknown is(ElementBuilder element, LayerKind... layers) {
    Set<LayerKind> named = EnumSet.noneOf(LayerKind.class);
    named.addAll(Arrays.asList(layers));
    return MODEL.isOf(element.build(), named, ANATOMY);
  }

  @ParameterizedTest
  @CsvSource({
    "Invented Looms, Coat 7, YES",
    "Invented Looms, Coat 70, NO",
    "Other Looms, Coat 7, NO",
    // Written otherwise, it may be the same and may not.
    "Invented Looms, COAT 7, UNKNOWN",
    "InventedLooms, Coat 7, UNKNOWN"
  })
  void bothNamesAreHeldAgainstTheLabelLetterForLetter(
      String manufacturer, String model, YesNoUnknown expected) {
    assertThat(MODEL.isOn(label(manufacturer, model).build())).isEqualTo(expected);
  }

  @ParameterizedTest
  @EnumSource(Legibility.class)
  void onlyALabelThatCanBeReadInFullTellsTheModel(Legibility legibility) {
    boolean readable = legibility == Legibility.READABLE;
    assertThat(MODEL.isOn(label("Invented Looms", "Coat 7").legibility(legibility).build()))
        .isEqualTo(readable ? YesNoUnknown.YES : YesNoUnknown.UNKNOWN);
    assertThat(MODEL.isOn(label("Other Looms", "Coat 7").legibility(legibility).build()))
        .isEqualTo(readable ? YesNoUnknown.NO : YesNoUnknown.UNKNOWN);
  }

  @Test
  void whatALabelDoesNotSayIsUnknown() {
    LabelBuilder blank = Label.builder().legibility(Legibility.READABLE);
    assertThat(MODEL.isOn(blank.build())).isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(MODEL.isOn(blank.manufacturer("Invented Looms").build()))
        .isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(MODEL.isOn(blank.manufacturer("Other Looms").build())).isEqualTo(YesNoUnknown.NO);
  }

  @Test
  void everyLabelThatAGarmentMustCarrySpeaksForTheWhole() {
    Label other = label("Invented Looms", "Coat 8").build();
    assertThat(is(coat())).isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(is(coat().layer(LayerKind.OUTER_SHELL, label()))).isEqualTo(YesNoUnknown.UNKNOWN);
    ElementBuilder both =
        coat().layer(LayerKind.OUTER_SHELL, label()).layer(LayerKind.LINER_SYSTEM, label());
    assertThat(is(both)).isEqualTo(YesNoUnknown.YES);
    assertThat(is(both.layer(LayerKind.LINER_SYSTEM, other))).isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(is(both, LayerKind.OUTER_SHELL)).isEqualTo(YesNoUnknown.YES);
    assertThat(is(both, LayerKind.LINER_SYSTEM)).isEqualTo(YesNoUnknown.NO);
    assertThat(is(both, LayerKind.MOISTURE_BARRIER)).isEqualTo(YesNoUnknown.NO);
    assertThat(is(both, LayerKind.OUTER_SHELL, LayerKind.LINER_SYSTEM))
        .isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(is(both.layer(LayerKind.OUTER_SHELL, other))).isEqualTo(YesNoUnknown.NO);
  }

  @Test
  void linersLabeledApartSpeakForTheirSystemTogether() {
    ElementBuilder apart =
        coat()
            .label(label())
            .layer(LayerKind.OUTER_SHELL, label())
            .layer(LayerKind.MOISTURE_BARRIER, label());
    assertThat(is(apart, LayerKind.LINER_SYSTEM)).isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(is(apart, LayerKind.WINTER_LINER)).isEqualTo(YesNoUnknown.YES);
    apart.layer(LayerKind.THERMAL_LINER, label());
    assertThat(is(apart, LayerKind.LINER_SYSTEM)).isEqualTo(YesNoUnknown.YES);
    assertThat(is(apart)).isEqualTo(YesNoUnknown.YES);
  }

  @Test
  void anElementWithOneLabelGoesByThat() {
    ElementBuilder helmet = Element.builder(new ElementId("h"), ElementKind.HELMET, Use.STRUCTURAL);
    assertThat(is(helmet)).isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(is(helmet.label(label()))).isEqualTo(YesNoUnknown.YES);
    // Of a kind that nothing is known of, only the labels it has can speak.
    ElementBuilder hood = Element.builder(new ElementId("o"), ElementKind.HOOD, Use.PROXIMITY);
    assertThat(is(hood)).isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(is(hood.label(FitGear.label().build()))).isEqualTo(YesNoUnknown.NO);
  }

  @Test
  void namesMustSaySomething() {
    assertThatThrownBy(() -> new GearModel(" ", "Coat 7"))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("GearModel.manufacturer");
    assertThatThrownBy(() -> new GearModel("Invented Looms", "x".repeat(201)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("GearModel.model");
  }
}
