package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.When;
import org.ensemblerules.record.RecordDetail;
import org.ensemblerules.record.RecordItem;
import org.ensemblerules.record.RecordNote;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of what a file says of an event. */
final class RecordNoteJson {
  private static final int LAST_IN_DAY = 10_000;
  private static final When ANY_TIME = When.on(MarkedDate.unknown());

  private RecordNoteJson() {}

  static Optional<RecordNote> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<RecordItem> item = object.required("item", value -> value.enumOf(RecordItem.class));
    Optional<MarkedDate> on = object.required("on", ValueReaders::markedDate);
    Optional<Integer> order = object.optional("orderInDay", value -> value.integer(1, LAST_IN_DAY));
    Optional<RecordDetail> detail =
        object.required("detail", value -> value.enumOf(RecordDetail.class));
    Optional<String> text = object.required("text", value -> value.parsed(RecordNoteJson::text));
    return object.make(
        () ->
            new RecordNote(
                item.orElseThrow(),
                new When(on.orElseThrow(), order.orElse(0)),
                detail.orElseThrow(),
                text.orElseThrow()));
  }

  /** Tries the text alone, so that its fault is found beside those of other fields. */
  private static String text(String text) {
    return new RecordNote(RecordItem.REPAIRS, ANY_TIME, RecordDetail.DESCRIPTION, text).text();
  }

  static JsonNode write(RecordNote note) {
    Fields fields = new Fields().put("item", note.item()).put("on", note.of().date());
    if (note.of().orderInDay() > 0) {
      fields.put("orderInDay", note.of().orderInDay());
    }
    return fields.put("detail", note.detail()).put("text", note.text()).node();
  }
}
