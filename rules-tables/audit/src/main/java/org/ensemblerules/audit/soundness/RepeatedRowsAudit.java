package org.ensemblerules.audit.soundness;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.strength.RequirementRow;

/** Rows that say again what others say: a key or a meaning used twice. */
final class RepeatedRowsAudit {
  private record Key(RowKey key, String origin) {}

  private record Said(Optional<OriginId> overlay, List<String> meaning) {}

  private RepeatedRowsAudit() {}

  static void run(AuditedRows rows, Flaws flaws) {
    for (Class<?> type : rows.types()) {
      Map<Key, Row> keys = new HashMap<>();
      Map<Said, Row> said = new HashMap<>();
      for (Row row : rows.all()) {
        if (row.getClass() != type) {
          continue;
        }
        Row same = keys.putIfAbsent(key(row), row);
        Row other =
            said.putIfAbsent(new Said(rows.overlay(row).map(Overlay::id), meaning(row)), row);
        if (other != null) {
          flaws.add(
              FlawKind.DUPLICATE,
              String.join(" ", row.canonical().subList(0, Math.min(4, row.canonical().size()))),
              "says again what " + other.key() + " says",
              "each thing said once",
              row,
              other);
        } else if (same != null) {
          flaws.add(
              FlawKind.DUPLICATE, row.key().value(), "a key used twice", "each key once", row);
        }
      }
    }
  }

  private static Key key(Row row) {
    // Requirements of several product editions use the same keys.
    String edition = row instanceof RequirementRow requirement ? requirement.product().value() : "";
    return new Key(row.key(), row.provenance().origin().value() + " " + edition);
  }

  /** What a row says, apart from its words, its place in a list and the name of a task. */
  private static List<String> meaning(Row row) {
    List<String> meaning = new ArrayList<>(row.canonical());
    if (row instanceof DefectRow) {
      meaning.remove(meaning.size() - 1);
    } else if (row instanceof CriterionRow) {
      meaning.remove(meaning.size() - 1);
      meaning.remove(3);
    } else if (row instanceof TaskRow) {
      meaning.remove(0);
    } else if (row instanceof CautionRow || row instanceof CareLimitRow) {
      return meaning;
    }
    return meaning;
  }
}
