package org.ensemblerules.audit.soundness;

import com.google.common.collect.Multimaps;
import java.util.Collection;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.Comparison;

/** Rows of one layer that stand beside each other, of which one does all that another does. */
final class SameLayerAudit {
  private final AuditedRows audited;
  private final Flaws flaws;

  private SameLayerAudit(AuditedRows audited, Flaws flaws) {
    this.audited = audited;
    this.flaws = flaws;
  }

  static void run(AuditedRows rows, Flaws flaws) {
    SameLayerAudit audit = new SameLayerAudit(rows, flaws);
    audit.pairs(FlawKind.SUBSUMED, CriterionRow.class, "looks at all of");
    audit.pairs(FlawKind.SUBSUMED, CautionRow.class, "says the same as");
    audit.pairs(FlawKind.MASKED, TaskRow.class, "is at least as often as");
    audit.pairs(FlawKind.MASKED, CareLimitRow.class, "is as tight as");
  }

  private <R extends ComparableRow<R>> void pairs(FlawKind kind, Class<R> type, String how) {
    for (Collection<R> layer :
        Multimaps.index(audited.of(type), audited::overlay).asMap().values()) {
      for (R row : layer) {
        for (R other : layer) {
          // What covers each other is a duplicate, told as such.
          if (row != other && other.compareStrictness(row) == Comparison.STRICTER) {
            flaws.add(
                kind,
                String.join(" ", row.canonical().subList(0, 3)),
                other.key() + " " + how + " this row, and applies wherever it does",
                "a row that asks for something of its own",
                row,
                other);
          }
        }
      }
    }
  }
}
