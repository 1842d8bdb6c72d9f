package org.ensemblerules.example.department.report;

import java.util.Map;
import java.util.TreeMap;
import org.ensemblerules.source.Basis;
import org.ensemblerules.verdict.Reason;

/** What the bases cited mean for whoever relies on them, each kind once. */
final class BasisNotes {
  private BasisNotes() {}

  static void write(TextPage page, Judged judged) {
    Map<String, String> notes = new TreeMap<>();
    for (Reason reason : judged.verdict().reasons()) {
      reason
          .row()
          .map(row -> row.provenance().basis())
          .ifPresent(
              basis -> reason.caution().ifPresent(caution -> notes.put(kind(basis), caution)));
    }
    if (!notes.isEmpty()) {
      page.blank();
      page.line("BASIS");
      notes.forEach((kind, caution) -> page.wrapped("  " + kind + ": ", caution));
    }
  }

  private static String kind(Basis basis) {
    if (basis instanceof Basis.CarriedOver carried) {
      return "CARRIED_OVER, " + kind(carried.there());
    }
    if (basis instanceof Basis.Published published) {
      return "PUBLISHED, " + published.seen();
    }
    return basis instanceof Basis.Memory memory
        ? "MEMORY, " + memory.confidence()
        : "COMMON_PRACTICE";
  }
}
