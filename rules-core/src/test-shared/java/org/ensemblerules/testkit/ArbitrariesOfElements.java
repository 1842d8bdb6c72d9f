package org.ensemblerules.testkit;

import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;

/** Elements with labels that say all, say too little, or contradict each other. */
public final class ArbitrariesOfElements {
  private ArbitrariesOfElements() {}

  /**
   * Returns the kinds that the frozen rules know, coats more often.
   *
   * @return the kinds
   */
  public static Arbitrary<ElementKind> kinds() {
    return Arbitraries.frequency(
        Tuple.of(2, ElementKind.COAT),
        Tuple.of(1, ElementKind.HELMET),
        Tuple.of(1, ElementKind.GLOVES));
  }

  /**
   * Returns labels, each with something changed against one that says all.
   *
   * @return the labels
   */
  public static Arbitrary<Label> labels() {
    Arbitrary<UnaryOperator<LabelBuilder>> changes =
        Arbitraries.oneOf(
            Arbitraries.of("Model A", "Model B").map(text -> label -> label.model(text)),
            Arbitraries.of("M", "L").map(text -> label -> label.size(text)),
            Arbitraries.of(FitGear.MAKER_NAME, "Another maker")
                .map(text -> label -> label.manufacturer(text)),
            manufactured().map(date -> label -> label.manufactured(date)),
            Arbitraries.of(YesNoUnknown.class).map(mark -> label -> label.certificationMark(mark)),
            Arbitraries.of(Legibility.class).map(text -> label -> label.legibility(text)));
    return Arbitraries.frequencyOf(
        Tuple.of(6, changes.map(change -> change.apply(FitGear.label()).build())),
        Tuple.of(1, Arbitraries.just(Label.builder().build())));
  }

  private static Arbitrary<MarkedDate> manufactured() {
    return Arbitraries.frequencyOf(
        Tuple.of(3, ArbitrariesOfDates.marked(FitGear.MADE, FitGear.IN_SERVICE)),
        Tuple.of(
            1,
            ArbitrariesOfDates.marked(FitGear.AS_OF.minusYears(11), FitGear.AS_OF.plusYears(1))));
  }

  /**
   * Returns elements, each with something changed against a fit one.
   *
   * @param kind the kind of element
   * @return the elements
   */
  public static Arbitrary<Element> changed(ElementKind kind) {
    Arbitrary<UnaryOperator<ElementBuilder>> changes =
        Arbitraries.frequencyOf(
            Tuple.of(
                6,
                Combinators.combine(Arbitraries.of(LayerKind.class), labels())
                    .as(
                        (layer, label) ->
                            kind == ElementKind.COAT
                                ? element -> element.layer(layer, label)
                                : element -> element.label(label))),
            Tuple.of(1, Arbitraries.just(element -> element.label(FitGear.label().build()))),
            Tuple.of(
                1,
                Arbitraries.just(
                    element -> element.layer(LayerKind.WINTER_LINER, FitGear.label().build()))),
            Tuple.of(
                1,
                Arbitraries.of(YesNoUnknown.class)
                    .map(known -> element -> element.cbrnOption(known))),
            Tuple.of(
                2,
                ArbitrariesOfDates.marked(FitGear.MADE, FitGear.AS_OF)
                    .map(date -> element -> element.inService(date))));
    return changes.map(change -> change.apply(FitGear.element(kind)).build());
  }
}
