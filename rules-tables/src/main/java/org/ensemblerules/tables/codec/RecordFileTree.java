package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.record.DisposalNote;
import org.ensemblerules.record.PfasNotice;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.record.RecordFileBuilder;
import org.ensemblerules.record.RecordNote;
import org.ensemblerules.retirement.DisposalRoute;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;

/** The JSON form of an element's file. */
public final class RecordFileTree {
  /** What a file says beyond the history. */
  private record Filed(
      Optional<Label> label,
      Map<LayerKind, Label> layers,
      Optional<YesNoUnknown> inStock,
      List<RecordNote> notes,
      Optional<DisposalNote> disposal,
      List<PfasNotice> pfasNotices) {}

  private RecordFileTree() {}

  /** Reads a file. */
  public static Optional<RecordFile> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<ElementId> id = object.optional("id", value -> value.parsed(ElementId::new));
    Optional<Element> element = object.required("element", ElementJson::read);
    Optional<List<Event>> history =
        object.optional(
            "history",
            value -> value.list(entry -> EventReader.read(entry, element.map(Element::named))));
    Optional<Filed> filed = object.optional("file", RecordFileTree::filed);
    if (id.isPresent() && element.isPresent() && !id.get().equals(element.get().id())) {
      object.fault("id", "\"" + id.get() + "\"", "the id of the element, or no such field");
    }
    return object.make(
        () -> {
          RecordFileBuilder file =
              RecordFile.builder(element.orElseThrow(), History.of(history.orElse(List.of())));
          filed.ifPresent(
              said -> {
                said.label().ifPresent(file::label);
                said.layers().forEach(file::layer);
                said.inStock().ifPresent(file::inStock);
                said.notes().forEach(file::note);
                said.disposal().ifPresent(file::disposal);
                said.pfasNotices().forEach(file::pfasNotice);
              });
          return file.build();
        });
  }

  private static Optional<Filed> filed(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Label> label = object.optional("label", LabelJson::read);
    Optional<Map<LayerKind, Label>> layers = object.optional("layers", ElementJson::layers);
    Optional<YesNoUnknown> inStock =
        object.optional("inStock", value -> value.enumOf(YesNoUnknown.class));
    Optional<List<RecordNote>> notes =
        object.optional("notes", value -> value.distinctOrNone(RecordNoteJson::read));
    Optional<DisposalNote> disposal = object.optional("disposal", RecordFileTree::disposal);
    Optional<List<PfasNotice>> notices =
        object.optional("pfasNotices", value -> value.distinctOrNone(PfasNoticeJson::read));
    return object.make(
        () ->
            new Filed(
                label,
                layers.orElseGet(() -> new EnumMap<>(LayerKind.class)),
                inStock,
                notes.orElse(List.of()),
                disposal,
                notices.orElse(List.of())));
  }

  private static Optional<DisposalNote> disposal(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<DisposalRoute> route =
        object.required("route", value -> value.enumOf(DisposalRoute.class));
    Optional<YesNoUnknown> marked =
        object.optional("markedForTraining", value -> value.enumOf(YesNoUnknown.class));
    return object.make(
        () -> new DisposalNote(route.orElseThrow(), marked.orElse(YesNoUnknown.UNKNOWN)));
  }

  /** Writes a file. */
  public static JsonNode write(RecordFile file) {
    Fields fields =
        new Fields()
            .put("element", ElementJson.write(file.element()))
            .some("history", file.history().events(), EventWriter::write);
    Fields filed = new Fields().known("label", file.label(), LabelJson::write);
    if (!file.layerLabels().isEmpty()) {
      filed.put("layers", ElementJson.layers(file.layerLabels()));
    }
    filed
        .known("inStock", file.inStock())
        .some("notes", file.notes(), RecordNoteJson::write)
        .known("disposal", file.disposal(), RecordFileTree::write)
        .some("pfasNotices", file.pfasNotices(), PfasNoticeJson::write);
    return filed.node().isEmpty() ? fields.node() : fields.put("file", filed.node()).node();
  }

  private static JsonNode write(DisposalNote note) {
    return new Fields()
        .put("route", note.route())
        .known("markedForTraining", note.markedForTraining())
        .node();
  }
}
