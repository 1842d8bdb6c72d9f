package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.ensemblerules.history.Moment;
import org.ensemblerules.record.RecordDetail;
import org.ensemblerules.record.RecordItem;
import org.ensemblerules.record.RecordNote;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;

/** The JSON form of what a file says of an event. */
final class RecordNoteJson {
  private RecordNoteJson() {}

  static Optional<RecordNote> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<RecordItem> item = object.required("item", value -> value.enumOf(RecordItem.class));
    Optional<Moment> when = WhenJson.read(object);
    Optional<RecordDetail> detail =
        object.required("detail", value -> value.enumOf(RecordDetail.class));
    Optional<String> text = object.required("text", value -> value.parsed(RecordNote::requireText));
    return object.make(
        () ->
            new RecordNote(
                item.orElseThrow(), when.orElseThrow(), detail.orElseThrow(), text.orElseThrow()));
  }

  static JsonNode write(RecordNote note) {
    return WhenJson.write(new Fields().put("item", note.item()), note.of())
        .put("detail", note.detail())
        .put("text", note.text())
        .node();
  }
}
