package org.ensemblerules.gear;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.source.InvalidValueException;

/**
 * One model of one manufacturer, named as its labels name it.
 *
 * @param manufacturer the manufacturer's name, 1 to 200 characters; not null
 * @param model the model name or design, 1 to 200 characters; not null
 * @since 0.1
 */
public record GearModel(String manufacturer, String model) {
  /**
   * Checks the texts.
   *
   * @throws InvalidValueException if one is blank or too long
   */
  public GearModel {
    requireName("GearModel.manufacturer", manufacturer);
    requireName("GearModel.model", model);
  }

  /**
   * Checks the name of a manufacturer or a model alone.
   *
   * @param field what it is called in the refusal; not null
   * @param name the name, 1 to 200 characters; not null
   * @return the name
   * @throws InvalidValueException if it is blank or too long
   */
  public static String requireName(String field, String name) {
    return InvalidValueException.requireText(field, name, 200);
  }

  /**
   * Tells whether a label is of this model. Only a label that can be read in full tells it: yes if
   * it says both names letter for letter, no if one that it says is another even apart from capital
   * letters and spaces.
   *
   * @param label the label; not null
   * @return yes or no if the label settles it, else unknown; never null
   */
  public YesNoUnknown isOn(Label label) {
    if (label.legibility() != Legibility.READABLE) {
      return YesNoUnknown.UNKNOWN;
    }
    if (label.manufacturer().equals(Optional.of(manufacturer))
        && label.model().equals(Optional.of(model))) {
      return YesNoUnknown.YES;
    }
    return isAnother(label.manufacturer(), manufacturer) || isAnother(label.model(), model)
        ? YesNoUnknown.NO
        : YesNoUnknown.UNKNOWN;
  }

  private static boolean isAnother(Optional<String> printed, String name) {
    return printed.filter(text -> !loosely(text).equals(loosely(name))).isPresent();
  }

  private static String loosely(String text) {
    return text.replaceAll("\\s", "").toLowerCase(Locale.ROOT);
  }

  /**
   * Tells whether what is spoken of is of this model, by every label that speaks for it.
   *
   * @param element the element; not null
   * @param layers the layers spoken of; empty for all of the element; not null
   * @param anatomy which labels it must carry; not null
   * @return yes or no if all of the labels say so, else unknown; never null
   */
  public YesNoUnknown isOf(Element element, Set<LayerKind> layers, AnatomyTable anatomy) {
    Stream<Optional<Label>> labels =
        layers.isEmpty()
            ? anatomy.labels(element).stream().map(layer -> label(element, layer))
            : layers.stream().flatMap(layer -> labels(element, layer));
    List<YesNoUnknown> told =
        labels.map(label -> label.map(this::isOn).orElse(YesNoUnknown.UNKNOWN)).toList();
    return told.stream().distinct().count() == 1 ? told.get(0) : YesNoUnknown.UNKNOWN;
  }

  private static Optional<Label> label(Element element, Optional<LayerKind> layer) {
    return layer.isPresent() ? layer.map(element.layerLabels()::get) : element.label();
  }

  /** The labels that speak for a layer: its own, that of its system, else those of its parts. */
  private static Stream<Optional<Label>> labels(Element element, LayerKind layer) {
    Optional<LayerKind> labeled = element.labeledLayer(layer);
    if (labeled.isPresent()) {
      return Stream.of(label(element, labeled));
    }
    List<LayerKind> parts =
        Arrays.stream(LayerKind.values())
            .filter(part -> part.joinedIn().equals(Optional.of(layer)))
            .toList();
    return parts.stream().anyMatch(element.layerLabels()::containsKey)
        ? parts.stream().map(part -> label(element, Optional.of(part)))
        : Stream.of(element.label());
  }

  @Override
  public String toString() {
    return manufacturer + ", " + model;
  }
}
