package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;

/** Writes a row as far as a verdict must carry it to outlive the tables. */
final class RowJson {
  private RowJson() {}

  static JsonNode write(Row row) {
    Provenance provenance = row.provenance();
    Fields fields = named(row).put("basisText", provenance.basis().text());
    if (row instanceof DefectRow defect) {
      fields.put("wording", defect.wording());
    } else if (row instanceof CareRouteRow route) {
      fields.put("wording", route.wording());
    } else if (row instanceof RepairLimitRow limit) {
      fields.put("wording", limit.wording());
    }
    return fields
        .put("open", row instanceof DefectRow defect && defect.open())
        .put("reviewedThrough", provenance.reviewedThrough())
        .known("note", provenance.note())
        .node();
  }

  /** Writes which row it is and on whose word, without what it says. */
  static JsonNode name(Row row) {
    return named(row).node();
  }

  private static Fields named(Row row) {
    return new Fields()
        .put("key", row.key())
        .put("origin", row.provenance().origin())
        .put("basis", write(row.provenance().basis()));
  }

  private static JsonNode write(Basis basis) {
    if (basis instanceof Basis.Published published) {
      return new Fields()
          .put("kind", "PUBLISHED")
          .put("source", published.source())
          .known("clause", published.clause())
          .put("seen", published.seen())
          .node();
    } else if (basis instanceof Basis.Memory memory) {
      return new Fields()
          .put("kind", "MEMORY")
          .put("confidence", memory.confidence())
          .known("about", memory.about())
          .node();
    }
    if (basis instanceof Basis.CarriedOver carried) {
      return new Fields()
          .put("kind", "CARRIED_OVER")
          .put("into", carried.into())
          .put("there", write(carried.there()))
          .node();
    }
    return new Fields().put("kind", "COMMON_PRACTICE").node();
  }
}
