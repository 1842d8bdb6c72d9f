package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.Optional;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;
import org.ensemblerules.tables.message.KeptGear;

/** The JSON form of who has an element and where it is. */
public final class WhereaboutsTree {
  private WhereaboutsTree() {}

  /** Reads where an element is. */
  public static Optional<KeptGear> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<ElementId> element = object.required("element", id -> id.parsed(ElementId::new));
    Optional<String> holder = object.optional("holder", JsonCursor::text);
    Optional<String> station = object.optional("station", JsonCursor::text);
    Optional<String> place = object.optional("place", JsonCursor::text);
    Optional<LocalDate> back = object.optional("expectedBack", ValueReaders::day);
    return object.make(
        () -> new KeptGear(element.orElseThrow(), new Whereabouts(holder, station, place, back)));
  }

  /** Writes where an element is. */
  public static JsonNode write(KeptGear kept) {
    return where(new Fields().put("element", kept.element()), kept.where()).node();
  }

  /** Puts who has an element and where it is. */
  static Fields where(Fields fields, Whereabouts where) {
    return fields
        .known("holder", where.holder())
        .known("station", where.station())
        .known("place", where.place())
        .known("expectedBack", where.expectedBack());
  }
}
