package org.ensemblerules.retirement;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Provenance;

/**
 * Says how old an element or one of its layers may become.
 *
 * @param provenance where the row comes from; not null
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param layer the layer; empty for an element that carries one label of its own
 * @param limit the limit, counted from the date of manufacture; not null
 * @since 0.1
 */
public record AgeLimitRow(
    Provenance provenance, ElementKind element, Use use, Optional<LayerKind> layer, AgeLimit limit)
    implements ComparableRow<AgeLimitRow> {
  /** Checks for nulls. */
  public AgeLimitRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(layer, "layer");
    Objects.requireNonNull(limit, "limit");
  }

  @Override
  public List<String> canonical() {
    return List.of(element.name(), use.name(), layer.map(Enum::name).orElse(""), limit.toString());
  }

  @Override
  public List<String> topic() {
    return List.of(element.name(), use.name(), layer.map(Enum::name).orElse(""));
  }

  @Override
  public ComparedFields compareFields(AgeLimitRow other) {
    return ComparedFields.on(
            element == other.element && use == other.use && layer.equals(other.layer))
        .with("limit", limit.compareStrictness(other.limit));
  }
}
