package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.record.PfasContent;
import org.ensemblerules.record.PfasNotice;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of a notice about added PFAS. */
final class PfasNoticeJson {
  private PfasNoticeJson() {}

  static Optional<PfasNotice> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<PlaceCode> place = object.required("place", value -> value.parsed(PlaceCode::new));
    Optional<MarkedDate> sold = object.optional("sold", ValueReaders::markedDate);
    Optional<PfasContent> content =
        object.optional("content", value -> value.enumOf(PfasContent.class));
    Optional<String> reason =
        object.optional("reason", value -> value.parsed(PfasNotice::requireReason));
    Optional<MarkedDate> dated = object.optional("dated", ValueReaders::markedDate);
    return object.make(
        () ->
            new PfasNotice(
                place.orElseThrow(),
                sold.orElseGet(MarkedDate::unknown),
                content.orElse(PfasContent.UNKNOWN),
                reason,
                dated.orElseGet(MarkedDate::unknown)));
  }

  static JsonNode write(PfasNotice notice) {
    Fields fields = new Fields().put("place", notice.place()).known("sold", notice.sold());
    if (notice.content() != PfasContent.UNKNOWN) {
      fields.put("content", notice.content());
    }
    return fields.known("reason", notice.reason()).known("dated", notice.dated()).node();
  }
}
