package org.ensemblerules.testkit;

import java.util.function.BiFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Builders;
import net.jqwik.api.Combinators;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;

/** Elements of every kind and use, with all, some or none of what can be known of them. */
public final class ArbitrariesOfGear {
  private ArbitrariesOfGear() {}

  /**
   * Returns labels.
   *
   * @return labels with each thing they can say left out about as often as said
   */
  public static Arbitrary<Label> labels() {
    return Builders.withBuilder(Label::builder)
        .use(ArbitrariesOfTexts.texts(200))
        .withProbability(0.6)
        .in(said(LabelBuilder::manufacturer))
        .use(ArbitrariesOfTexts.texts(200))
        .withProbability(0.6)
        .in(said(LabelBuilder::model))
        .use(ArbitrariesOfTexts.texts(200))
        .withProbability(0.5)
        .in(said(LabelBuilder::identification))
        .use(ArbitrariesOfTexts.texts(60))
        .withProbability(0.6)
        .in(said(LabelBuilder::size))
        .use(ArbitrariesOfTexts.markedDates())
        .withProbability(0.8)
        .in(said(LabelBuilder::manufactured))
        .use(ArbitrariesOfTexts.texts(100))
        .withProbability(0.4)
        .in(said(LabelBuilder::claimedEdition))
        .use(Arbitraries.of(YesNoUnknown.class))
        .withProbability(0.7)
        .in(said(LabelBuilder::certificationMark))
        .use(Arbitraries.of(Legibility.class))
        .withProbability(0.7)
        .in(said(LabelBuilder::legibility))
        .build(LabelBuilder::build);
  }

  /** Only to spare the type arguments at each call. */
  private static <T> BiFunction<LabelBuilder, T, LabelBuilder> said(
      BiFunction<LabelBuilder, T, LabelBuilder> setter) {
    return setter;
  }

  /**
   * Returns elements of every kind and use; which layers and labels they have is not held against
   * their kind, since files say such things.
   *
   * @return the elements
   */
  public static Arbitrary<Element> elements() {
    Arbitrary<ElementBuilder> named =
        Combinators.combine(
                ArbitrariesOfTexts.texts(100).map(ElementId::new),
                Arbitraries.of(ElementKind.class),
                Arbitraries.of(Use.class))
            .as(Element::builder);
    return Combinators.combine(
            named,
            labels().optional(0.6),
            Arbitraries.maps(Arbitraries.of(LayerKind.class), labels()).ofMaxSize(3),
            ArbitrariesOfTexts.markedDates().optional(0.7),
            Arbitraries.of(YesNoUnknown.class),
            sites().list().ofMaxSize(2))
        .as(
            (element, label, layers, inService, cbrnOption, notFitted) -> {
              notFitted.forEach(element::notFitted);
              label.ifPresent(element::label);
              layers.forEach(element::layer);
              inService.ifPresent(element::inService);
              return element.cbrnOption(cbrnOption).build();
            });
  }

  /**
   * Returns sites, whether any element has them or not.
   *
   * @return sites with and without a layer
   */
  public static Arbitrary<Site> sites() {
    return Combinators.combine(
            Arbitraries.of(Part.class), Arbitraries.of(LayerKind.class).optional(0.6))
        .as(Site::new);
  }
}
