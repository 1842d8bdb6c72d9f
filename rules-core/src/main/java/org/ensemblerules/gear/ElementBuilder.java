package org.ensemblerules.gear;

import java.util.EnumMap;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ensemblerules.source.InvalidValueException;

/**
 * Collects what is known of an element.
 *
 * @since 0.1
 */
public final class ElementBuilder {
  final ElementId id;
  final ElementKind kind;
  final Use use;
  Optional<Label> label = Optional.empty();
  final EnumMap<LayerKind, Label> layerLabels = new EnumMap<>(LayerKind.class);
  MarkedDate inService = MarkedDate.unknown();
  YesNoUnknown cbrnOption = YesNoUnknown.UNKNOWN;
  final Set<Site> notFitted = new TreeSet<>();

  ElementBuilder(ElementId id, ElementKind kind, Use use) {
    this.id = Objects.requireNonNull(id, "id");
    this.kind = Objects.requireNonNull(kind, "kind");
    this.use = Objects.requireNonNull(use, "use");
  }

  /**
   * Sets the element's own label.
   *
   * @param ownLabel the label; not null
   * @return this builder
   */
  public ElementBuilder label(Label ownLabel) {
    label = Optional.of(ownLabel);
    return this;
  }

  /**
   * Sets the label of a layer, replacing one set before.
   *
   * @param layer the layer; not null
   * @param layerLabel its label; not null
   * @return this builder
   */
  public ElementBuilder layer(LayerKind layer, Label layerLabel) {
    layerLabels.put(Objects.requireNonNull(layer, "layer"), Objects.requireNonNull(layerLabel));
    return this;
  }

  /**
   * Sets when it was first placed in service.
   *
   * @param date the date; not null
   * @return this builder
   */
  public ElementBuilder inService(MarkedDate date) {
    inService = Objects.requireNonNull(date, "inService");
    return this;
  }

  /**
   * Sets since when it is in service, the date as text.
   *
   * @param date the date, as {@link MarkedDate#parse} reads it; not null
   * @return this builder
   * @throws InvalidValueException if it is no date
   */
  public ElementBuilder inService(String date) {
    return inService(MarkedDate.parse(date));
  }

  /**
   * Sets whether it belongs to an ensemble with the CBRN option.
   *
   * @param known yes, no or unknown; not null
   * @return this builder
   */
  public ElementBuilder cbrnOption(YesNoUnknown known) {
    cbrnOption = Objects.requireNonNull(known, "cbrnOption");
    return this;
  }

  /**
   * States that it has no such part.
   *
   * @param site the part; WHOLE_ELEMENT of a layer for all of that layer; not null
   * @return this builder
   */
  public ElementBuilder notFitted(Site site) {
    notFitted.add(Objects.requireNonNull(site, "notFitted"));
    return this;
  }

  /**
   * Makes the element.
   *
   * @return the element; never null
   */
  public Element build() {
    return new Element(this);
  }
}
