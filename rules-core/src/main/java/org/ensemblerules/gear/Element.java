package org.ensemblerules.gear;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ensemblerules.source.InvalidValueException;

/**
 * One ensemble element. A garment with separable layers carries a label on each labeled layer; any
 * other element carries one label of its own. Layers are dated by their own labels only.
 *
 * @since 0.1
 */
public final class Element {
  private final ElementId id;
  private final ElementKind kind;
  private final Use use;
  private final Optional<Label> label;
  private final Map<LayerKind, Label> layerLabels;
  private final MarkedDate inService;
  private final YesNoUnknown cbrnOption;
  private final Set<Site> notFitted;

  Element(ElementBuilder builder) {
    this.id = builder.id;
    this.kind = builder.kind;
    this.use = builder.use;
    this.label = builder.label;
    this.layerLabels = Collections.unmodifiableMap(new EnumMap<>(builder.layerLabels));
    this.inService = builder.inService;
    this.cbrnOption = builder.cbrnOption;
    this.notFitted = Collections.unmodifiableSet(new TreeSet<>(builder.notFitted));
  }

  /**
   * Starts an element of which only kind and use are known.
   *
   * @param id the owner's name for it; not null
   * @param kind what it is; not null
   * @param use what it is built for; not null
   * @return the builder; never null
   */
  public static ElementBuilder builder(ElementId id, ElementKind kind, Use use) {
    return new ElementBuilder(id, kind, use);
  }

  /**
   * Starts an element, its id as text.
   *
   * @param id the owner's id, as {@link ElementId} takes it; not null
   * @param kind what it is; not null
   * @param use what it is for; not null
   * @return the builder; never null
   * @throws InvalidValueException if the id is none
   */
  public static ElementBuilder builder(String id, ElementKind kind, Use use) {
    return builder(new ElementId(id), kind, use);
  }

  /**
   * Returns which element it is, without what is known of it.
   *
   * @return its name; never null
   */
  public NamedElement named() {
    return new NamedElement(id, kind, use);
  }

  /**
   * Returns the owner's name for it.
   *
   * @return the id; never null
   */
  public ElementId id() {
    return id;
  }

  /**
   * Returns what it is.
   *
   * @return the kind; never null
   */
  public ElementKind kind() {
    return kind;
  }

  /**
   * Returns what it is built for.
   *
   * @return the use; never null
   */
  public Use use() {
    return use;
  }

  /**
   * Returns the element's own label.
   *
   * @return the label; empty if nothing is known of it, or if the layers carry the labels
   */
  public Optional<Label> label() {
    return label;
  }

  /**
   * Returns the label of a layer, or the element's own.
   *
   * @param layer the layer; empty for the element's own label; not null
   * @return the label as described; empty if none is known
   */
  public Optional<Label> label(Optional<LayerKind> layer) {
    return layer.isPresent() ? Optional.ofNullable(layerLabels.get(layer.get())) : label;
  }

  /**
   * Returns the labels of the layers.
   *
   * @return an unmodifiable map in layer order; never null
   */
  public Map<LayerKind, Label> layerLabels() {
    return layerLabels;
  }

  /**
   * Returns when it was first placed in service.
   *
   * @return the date; never null
   */
  public MarkedDate inService() {
    return inService;
  }

  /**
   * Tells whether it belongs to an ensemble with the option against chemical, biological,
   * radiological and nuclear terrorism agents.
   *
   * @return yes, no or unknown; never null
   */
  public YesNoUnknown cbrnOption() {
    return cbrnOption;
  }

  /**
   * Returns which parts it is said to have none of, though others like it may. WHOLE_ELEMENT of a
   * layer stands for all of that layer.
   *
   * @return an unmodifiable set in order; never null
   */
  public Set<Site> notFitted() {
    return notFitted;
  }

  /**
   * Tells whether it is said to have no such part.
   *
   * @param site the part; not null
   * @return true if the part, or its layer as a whole, is said not to be there
   */
  public boolean isNotFitted(Site site) {
    return notFitted.contains(site)
        || (site.layer().isPresent()
            && notFitted.contains(new Site(Part.WHOLE_ELEMENT, site.layer())));
  }

  /**
   * Returns the label that speaks for a site: that of its layer, else that of the liner system the
   * layer is joined in, else the element's own.
   *
   * @param site the site; not null
   * @return the label; empty if none is known
   */
  public Optional<Label> labelFor(Site site) {
    return site.layer().flatMap(this::labeledLayer).map(layerLabels::get).or(() -> label);
  }

  /**
   * Returns the labeled layer that a layer belongs to.
   *
   * @param layer the layer; not null
   * @return the layer itself if it has its own label, else the liner system it is joined in; empty
   *     if neither has a label
   */
  public Optional<LayerKind> labeledLayer(LayerKind layer) {
    return layerLabels.containsKey(layer)
        ? Optional.of(layer)
        : layer.joinedIn().filter(layerLabels::containsKey);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Element other
        && id.equals(other.id)
        && kind == other.kind
        && use == other.use
        && label.equals(other.label)
        && layerLabels.equals(other.layerLabels)
        && inService.equals(other.inService)
        && cbrnOption == other.cbrnOption
        && notFitted.equals(other.notFitted);
  }

  @Override
  public int hashCode() {
    return Objects.hash(id, kind, use, label, layerLabels, inService, cbrnOption, notFitted);
  }

  /** Says all that is known of it on one line, so that two that differ differ here as well. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("Element[" + named());
    label.ifPresent(own -> text.append(", ").append(own));
    if (!layerLabels.isEmpty()) {
      text.append(", layers ").append(layerLabels);
    }
    if (!(inService instanceof MarkedDate.Unknown)) {
      text.append(", in service ").append(inService);
    }
    if (cbrnOption != YesNoUnknown.UNKNOWN) {
      text.append(", CBRN option ").append(cbrnOption);
    }
    if (!notFitted.isEmpty()) {
      text.append(", not fitted ").append(notFitted);
    }
    return text.append(']').toString();
  }
}
