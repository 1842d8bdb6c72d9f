package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.schedule.Exempt;
import org.ensemblerules.schedule.Missed;
import org.ensemblerules.schedule.Planned;
import org.ensemblerules.tables.message.DueAnswer;

/** The JSON form of what falls due for an element. */
public final class DueTree {
  private DueTree() {}

  /** Writes the answer. */
  public static JsonNode write(DueAnswer answer) {
    return new Fields()
        .put("element", ElementJson.named(answer.element()).node())
        .put("asOf", answer.asOf())
        .list("due", answer.due(), DueTree::write)
        .list("missed", answer.missed(), DueTree::write)
        .list("exempt", answer.exempt(), DueTree::write)
        .put("from", answer.from())
        .put("to", answer.to())
        .list("calendar", answer.calendar(), DueTree::write)
        .node();
  }

  private static JsonNode write(Due due) {
    return new Fields()
        .put("task", due.task())
        .known("layer", due.layer())
        .known("by", due.by())
        .put("why", due.reason())
        .known("grade", due.grade())
        .known("byDateOnly", due.byDateOnly())
        .known("row", due.row(), RowJson::write)
        .node();
  }

  private static JsonNode write(Missed missed) {
    return new Fields()
        .put("task", missed.task())
        .known("by", missed.by())
        .known("done", missed.done())
        .put("why", missed.reason())
        .put("row", RowJson.write(missed.row()))
        .node();
  }

  private static JsonNode write(Exempt exempt) {
    return new Fields()
        .put("task", exempt.row().task())
        .put("why", exempt.why())
        .put("row", RowJson.write(exempt.row()))
        .node();
  }

  private static JsonNode write(Planned planned) {
    return new Fields()
        .put("on", planned.on())
        .put("task", planned.task())
        .put("why", planned.reason())
        .put("row", RowJson.write(planned.row()))
        .node();
  }
}
