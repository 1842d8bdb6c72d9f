package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.ruleset.AdoptionAnswer;
import org.ensemblerules.ruleset.AdoptionRow;
import org.ensemblerules.ruleset.AdoptionTable;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.LoadedTables;

/** The JSON form of what the law of a place asks to go by. */
public final class AdoptionTree {
  private AdoptionTree() {}

  /** Writes the answer. */
  public static JsonNode write(
      LoadedTables tables,
      AdoptionTable adoptions,
      PlaceCode place,
      LocalDate day,
      Optional<LocalDate> bought) {
    return new Fields()
        .put("place", place)
        .put("asOf", day)
        .known("bought", bought)
        .list(
            "subjects",
            Arrays.asList(Subject.values()),
            subject -> {
              Fields fields = new Fields().put("subject", subject);
              return adoptions.inForce(place, day, subject) instanceof AdoptionAnswer.Rules held
                  ? fields
                      .put("answer", "RULES")
                      .list(
                          "rules",
                          held.rules(),
                          one ->
                              write(
                                  one,
                                  AdoptionTable.choose(
                                      one.row(), tables.editions(subject), day, bought)))
                      .node()
                  : fields.put("answer", "NOT_KNOWN").node();
            })
        .node();
  }

  private static JsonNode write(AdoptionAnswer.Held held, Optional<OriginId> edition) {
    AdoptionRow row = held.row();
    return new Fields()
        .put("where", row.where())
        .put("kind", row.kind())
        .known("edition", edition)
        .known("from", row.from())
        .known("before", row.before())
        .put("covers", row.covers())
        .put("sinceKnown", held.sinceKnown())
        .put("stale", held.stale())
        .put("row", RowJson.write(row))
        .node();
  }
}
