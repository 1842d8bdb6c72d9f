package org.ensemblerules.tables;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.audit.AuditReport;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.codec.AuditTree;
import org.ensemblerules.tables.json.JsonLine;

/**
 * Writes whether rules are sound, in the form of {@code audit-answer.schema.json} of this package's
 * {@code schema} folder. Safe for use by many threads.
 */
public final class AuditJson {
  private AuditJson() {}

  /**
   * Writes the report of a set.
   *
   * @param edition the edition of the set; empty for a set that cannot be loaded; not null
   * @param overlays the names of the overlays laid over it; not null
   * @param report the report; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(
      Optional<OriginId> edition, List<String> overlays, AuditReport report) {
    Objects.requireNonNull(edition, "edition");
    Objects.requireNonNull(overlays, "overlays");
    Objects.requireNonNull(report, "report");
    return JsonLine.of(AuditTree.write(edition, overlays, report));
  }
}
