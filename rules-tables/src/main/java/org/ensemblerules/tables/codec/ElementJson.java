package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of an element. */
public final class ElementJson {
  private ElementJson() {}

  static Optional<Element> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<ElementId> id = object.required("id", value -> value.parsed(ElementId::new));
    Optional<ElementKind> kind = object.required("kind", value -> value.enumOf(ElementKind.class));
    Optional<Use> use = object.required("use", value -> value.enumOf(Use.class));
    Optional<Label> label = object.optional("label", LabelJson::read);
    Optional<Map<LayerKind, Label>> layers = object.optional("layers", ElementJson::layers);
    Optional<MarkedDate> inService = object.optional("inService", ValueReaders::markedDate);
    Optional<YesNoUnknown> cbrnOption =
        object.optional("cbrnOption", value -> value.enumOf(YesNoUnknown.class));
    Optional<List<Site>> notFitted =
        object.optional("notFitted", value -> value.distinct(ValueReaders::site));
    return object.make(
        () -> {
          ElementBuilder element =
              Element.builder(id.orElseThrow(), kind.orElseThrow(), use.orElseThrow());
          label.ifPresent(element::label);
          layers.ifPresent(labels -> labels.forEach(element::layer));
          inService.ifPresent(element::inService);
          cbrnOption.ifPresent(element::cbrnOption);
          notFitted.orElse(List.of()).forEach(element::notFitted);
          return element.build();
        });
  }

  static Optional<Map<LayerKind, Label>> layers(JsonCursor at) {
    ObjectCursor object = at.object();
    Map<LayerKind, Label> labels = new EnumMap<>(LayerKind.class);
    for (LayerKind layer : LayerKind.values()) {
      object.optional(layer.name(), LabelJson::read).ifPresent(label -> labels.put(layer, label));
    }
    return object.make(() -> labels);
  }

  static JsonNode write(Element element) {
    Fields fields = named(element).known("label", element.label(), LabelJson::write);
    if (!element.layerLabels().isEmpty()) {
      fields.put("layers", layers(element.layerLabels()));
    }
    return fields
        .known("inService", element.inService())
        .known("cbrnOption", element.cbrnOption())
        .some("notFitted", element.notFitted())
        .node();
  }

  static JsonNode layers(Map<LayerKind, Label> labels) {
    Fields layers = new Fields();
    labels.forEach((layer, label) -> layers.put(layer.name(), LabelJson.write(label)));
    return layers.node();
  }

  /** Reads which element it is, without what is known of it. */
  public static Optional<NamedElement> named(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<ElementId> id = object.required("id", value -> value.parsed(ElementId::new));
    Optional<ElementKind> kind = object.required("kind", value -> value.enumOf(ElementKind.class));
    Optional<Use> use = object.required("use", value -> value.enumOf(Use.class));
    return object.make(
        () -> new NamedElement(id.orElseThrow(), kind.orElseThrow(), use.orElseThrow()));
  }

  /** Writes which element it is, without what is known of it. */
  static Fields named(Element element) {
    return named(element.named());
  }

  /** Writes which element it is. */
  public static Fields named(NamedElement element) {
    return new Fields()
        .put("id", element.id())
        .put("kind", element.kind())
        .put("use", element.use());
  }
}
