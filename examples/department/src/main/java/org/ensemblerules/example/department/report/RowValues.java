package org.ensemblerules.example.department.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.audit.difference.RowChange;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.source.Row;

/**
 * What a change of a row is about, in words: the values in which both rows differ, or those of the
 * only row but what it speaks of.
 *
 * @param now what the rules now say; empty if they have no such row
 * @param then what the other rules say; empty if they have no such row
 */
record RowValues(Optional<String> now, Optional<String> then) {
  static RowValues of(RowChange change) {
    return new RowValues(
        change.before().map(row -> text(change, row, change.after())),
        change.after().map(row -> text(change, row, change.before())));
  }

  private static String text(RowChange change, Row row, Optional<Row> other) {
    List<String> values = new ArrayList<>(row.canonical());
    List<String> others = other.map(Row::canonical).orElse(List.of());
    for (int i = 0; i < values.size(); i++) {
      if (i < others.size() && values.get(i).equals(others.get(i))) {
        values.set(i, "");
      }
    }
    if (other.isEmpty()) {
      change.topic().forEach(values::remove);
    }
    values.removeIf(String::isEmpty);
    if (values.isEmpty()) {
      return others.equals(row.canonical()) ? row.provenance().basis().text() : "nothing more";
    }
    if (row instanceof DefectRow defect) {
      String disputed = defect.open() ? "practice is disputed" : "practice is not disputed";
      values.replaceAll(value -> value.equals(Boolean.toString(defect.open())) ? disputed : value);
    }
    return PlainWords.sentence(String.join("; ", values));
  }
}
