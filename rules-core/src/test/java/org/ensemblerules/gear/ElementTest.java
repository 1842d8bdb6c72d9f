package org.ensemblerules.gear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.ensemblerules.testkit.FitGear;
import org.junit.jupiter.api.Test;

/** Elements and labels are values, and the label of a site is found. */
class ElementTest {
  private static final Label OWN = FitGear.label().identification("own").build();
  private static final Label LINER = FitGear.label().identification("liner").build();
  private static final Label BARRIER = FitGear.label().identification("barrier").build();

  private static ElementBuilder coat() {
    return Element.builder(new ElementId("C1"), ElementKind.COAT, Use.STRUCTURAL);
  }

  @Test
  void theLinerSystemsLabelSpeaksForItsLayers() {
    Element element = coat().label(OWN).layer(LayerKind.LINER_SYSTEM, LINER).build();
    assertThat(element.labelFor(Site.parse("FABRIC@MOISTURE_BARRIER"))).contains(LINER);
    assertThat(element.labelFor(Site.parse("FABRIC@THERMAL_LINER"))).contains(LINER);
    assertThat(element.labelFor(Site.parse("FABRIC@WINTER_LINER"))).contains(OWN);
    assertThat(element.labelFor(Site.parse("DRAG_RESCUE_DEVICE"))).contains(OWN);
    assertThat(element.labeledLayer(LayerKind.THERMAL_LINER)).contains(LayerKind.LINER_SYSTEM);
    assertThat(element.labeledLayer(LayerKind.OUTER_SHELL)).isEmpty();
  }

  @Test
  void aLabelOfItsOwnGoesBeforeTheLinerSystems() {
    Element element =
        coat()
            .layer(LayerKind.LINER_SYSTEM, LINER)
            .layer(LayerKind.MOISTURE_BARRIER, BARRIER)
            .build();
    assertThat(element.labelFor(Site.parse("FABRIC@MOISTURE_BARRIER"))).contains(BARRIER);
    assertThat(element.labeledLayer(LayerKind.MOISTURE_BARRIER))
        .contains(LayerKind.MOISTURE_BARRIER);
    assertThat(element.labelFor(Site.parse("FABRIC@OUTER_SHELL"))).isEmpty();
  }

  @Test
  void onlyTheLinersLayersAreJoined() {
    assertThat(LayerKind.MOISTURE_BARRIER.joinedIn()).contains(LayerKind.LINER_SYSTEM);
    assertThat(LayerKind.THERMAL_LINER.joinedIn()).contains(LayerKind.LINER_SYSTEM);
    assertThat(LayerKind.OUTER_SHELL.joinedIn()).isEmpty();
    assertThat(LayerKind.WINTER_LINER.joinedIn()).isEmpty();
    assertThat(LayerKind.LINER_SYSTEM.joinedIn()).isEmpty();
  }

  @Test
  void whatNobodyHasSaidIsUnknown() {
    Element element = coat().build();
    assertThat(element.cbrnOption()).isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(element.inService()).isEqualTo(MarkedDate.unknown());
    assertThat(element.label()).isEmpty();
    assertThat(element.layerLabels()).isEmpty();
    Label label = Label.builder().build();
    assertThat(label.legibility()).isEqualTo(Legibility.UNKNOWN);
    assertThat(label.certificationMark()).isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(label.manufactured()).isEqualTo(MarkedDate.unknown());
    assertThat(label.claimedEdition()).isEmpty();
    assertThat(label).hasToString("Label[model unknown, size unknown, made UNKNOWN]");
  }

  @Test
  void elementsAreEqualOnlyInAllTheirParts() {
    Element element = coat().build();
    assertThat(coat().build()).isEqualTo(element).hasSameHashCodeAs(element);
    assertThat(element).asString().startsWith("Element[C1 COAT STRUCTURAL");
    List<Element> others =
        List.of(
            Element.builder(new ElementId("C2"), ElementKind.COAT, Use.STRUCTURAL).build(),
            Element.builder(new ElementId("C1"), ElementKind.HOOD, Use.STRUCTURAL).build(),
            Element.builder(new ElementId("C1"), ElementKind.COAT, Use.PROXIMITY).build(),
            coat().label(OWN).build(),
            coat().layer(LayerKind.OUTER_SHELL, OWN).build(),
            coat().inService(MarkedDate.parse("2020")).build(),
            coat().cbrnOption(YesNoUnknown.YES).build());
    assertThat(others).doesNotContain(element).doesNotHaveDuplicates();
  }

  @Test
  void labelsAreEqualOnlyInAllTheirParts() {
    Label label = FitGear.label().build();
    assertThat(FitGear.label().build()).isEqualTo(label).hasSameHashCodeAs(label);
    List<Label> others =
        List.of(
            FitGear.label().manufacturer("x").build(),
            FitGear.label().model("x").build(),
            FitGear.label().identification("x").build(),
            FitGear.label().size("x").build(),
            FitGear.label().manufactured(MarkedDate.unknown()).build(),
            FitGear.label().claimedEdition("x").build(),
            FitGear.label().certificationMark(YesNoUnknown.NO).build(),
            FitGear.label().legibility(Legibility.MISSING).build());
    assertThat(others).doesNotContain(label).doesNotHaveDuplicates();
    assertThat(label.claimedEdition()).contains("Invented edition");
    assertThat(label.identification()).contains("Lot 1");
  }
}
