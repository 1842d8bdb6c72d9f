package org.ensemblerules.care;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Provenance;

/**
 * Says within what a wash of a kind of element must stay to count as a cleaning.
 *
 * @param provenance where the row comes from; not null
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param layer the layer it holds for; empty if for the whole element
 * @param demand what is asked; not null
 * @since 0.1
 */
public record CareLimitRow(
    Provenance provenance,
    ElementKind element,
    Use use,
    Optional<LayerKind> layer,
    CareDemand demand)
    implements ComparableRow<CareLimitRow> {
  /** Checks for nulls. */
  public CareLimitRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(layer, "layer");
    Objects.requireNonNull(demand, "demand");
  }

  /** Whether the row holds for a wash of these layers; of layers nobody named, it holds. */
  boolean holdsFor(Element washed, Set<LayerKind> layers) {
    return element == washed.kind()
        && use == washed.use()
        && (layer.isEmpty() || layers.isEmpty() || layers.contains(layer.get()));
  }

  @Override
  public List<String> canonical() {
    return List.of(
        element.name(),
        use.name(),
        layer.map(LayerKind::name).orElse(""),
        demand.subject(),
        demand.allowed());
  }

  @Override
  public List<String> topic() {
    return List.of(
        element.name(), use.name(), layer.map(LayerKind::name).orElse(""), demand.subject());
  }

  @Override
  public List<String> narrowedTo() {
    return List.of(demand.side());
  }

  /** A row for every layer holds wherever one for a single layer does. */
  @Override
  public ComparedFields compareFields(CareLimitRow other) {
    return ComparedFields.on(element == other.element && use == other.use)
        .applying(
            Comparison.of(
                layer.isEmpty() || layer.equals(other.layer),
                other.layer.isEmpty() || layer.equals(other.layer)))
        .with("demand", demand.compareStrictness(other.demand));
  }

  @Override
  public Comparison asOneMore() {
    return Comparison.STRICTER;
  }
}
