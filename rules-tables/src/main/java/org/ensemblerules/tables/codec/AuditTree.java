package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.audit.AuditReport;
import org.ensemblerules.audit.Flaw;
import org.ensemblerules.source.OriginId;

/** The JSON form of what an audit came to. */
public final class AuditTree {
  private AuditTree() {}

  /** Writes the report of a set. */
  public static JsonNode write(
      Optional<OriginId> edition, List<String> overlays, AuditReport report) {
    Fields proved = new Fields();
    report.proved().forEach((what, count) -> proved.put(what, (long) count));
    return new Fields()
        .known("edition", edition)
        .list("overlays", overlays)
        .put("asOf", report.asOf())
        .put("sound", report.isSound())
        .put("rows", report.rows())
        .put("proved", proved.node())
        .list("faults", report.faults(), AuditTree::write)
        .list("notes", report.notes(), AuditTree::write)
        .node();
  }

  private static JsonNode write(Flaw flaw) {
    return new Fields()
        .put("kind", flaw.kind())
        .list("rows", flaw.rows())
        .list("places", flaw.places())
        .put("found", flaw.found())
        .put("expected", flaw.expected())
        .known("reason", flaw.reason())
        .node();
  }
}
