package org.ensemblerules.issue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;

/** What holds of deliveries whatever their labels say. */
@PropertyDefaults(edgeCases = EdgeCasesMode.NONE)
class DeliveryProperties {
  private static final Order ORDER =
      new Order(
          "O-1",
          ElementKind.HELMET,
          Use.STRUCTURAL,
          Optional.of(new GearModel(FitGear.MAKER_NAME, "Model A")),
          Map.of("M", 2, "L", 1),
          Optional.of("Invented edition"),
          24);

  @Provide
  Arbitrary<Element> helmets() {
    return Combinators.combine(
            Arbitraries.of("H-1", "H-2", "H-3", "H-4"),
            Arbitraries.of("M", "L", "S").optional(0.9),
            Arbitraries.of("Model A", "Model A", "Model B").optional(0.9),
            Arbitraries.of("2024-03", "2015-01-01", "2030").optional(0.9),
            Arbitraries.of(
                YesNoUnknown.YES,
                YesNoUnknown.YES,
                YesNoUnknown.YES,
                YesNoUnknown.NO,
                YesNoUnknown.UNKNOWN),
            Arbitraries.of(Legibility.READABLE, Legibility.READABLE, Legibility.PARTLY_READABLE),
            Arbitraries.of("Lot 1").optional(0.9))
        .as(DeliveryProperties::helmet);
  }

  private static Element helmet(
      String id,
      Optional<String> size,
      Optional<String> model,
      Optional<String> made,
      YesNoUnknown mark,
      Legibility legibility,
      Optional<String> lot) {
    LabelBuilder label =
        Label.builder()
            .manufacturer(FitGear.MAKER_NAME)
            .claimedEdition("Invented edition")
            .certificationMark(mark)
            .legibility(legibility);
    size.ifPresent(label::size);
    model.ifPresent(label::model);
    made.map(MarkedDate::parse).ifPresent(label::manufactured);
    lot.ifPresent(label::identification);
    return Element.builder(new ElementId(id), ElementKind.HELMET, Use.STRUCTURAL)
        .label(label.build())
        .build();
  }

  private static Delivery delivery(List<Element> delivered) {
    return Delivery.of(FrozenRules.rules(), ORDER, delivered, Set.of(), List.of(), FitGear.AS_OF);
  }

  /** Written out a second time: what is accepted says all that was ordered, and is not too old. */
  @Property
  void onlyWhatSaysAllThatWasOrderedIsAccepted(
      @ForAll @Size(max = 6) List<@From("helmets") Element> delivered) {
    Delivery delivery = delivery(delivered);
    assertThat(delivery.lines()).hasSameSizeAs(delivered);
    List<Element> sorted = new ArrayList<>(delivered);
    for (DeliveryLine line : delivery.lines()) {
      if (line.isAccepted()) {
        List<Element> meant =
            sorted.stream().filter(each -> each.id().equals(line.element().id())).toList();
        assertThat(meant).hasSize(1);
        Label label = meant.get(0).label().orElseThrow();
        assertThat(ORDER.sizes()).containsKey(label.size().orElseThrow());
        assertThat(label.model()).hasValue("Model A");
        assertThat(label.manufactured()).isEqualTo(MarkedDate.parse("2024-03"));
        assertThat(label.certificationMark()).isEqualTo(YesNoUnknown.YES);
        assertThat(label.legibility()).isEqualTo(Legibility.READABLE);
        assertThat(label.identification()).isPresent();
      }
    }
    long accepted = delivery.lines().stream().filter(DeliveryLine::isAccepted).count();
    long missing = delivery.missing().values().stream().mapToInt(Integer::intValue).sum();
    assertThat(accepted + missing).isEqualTo(3);
  }

  @Property
  void orderNeverMatters(
      @ForAll @Size(max = 6) List<@From("helmets") Element> delivered, @ForAll Random random) {
    List<Element> stirred = new ArrayList<>(delivered);
    Collections.shuffle(stirred, random);
    assertThat(delivery(stirred)).isEqualTo(delivery(delivered));
  }
}
