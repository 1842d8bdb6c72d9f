package org.ensemblerules.example.department.report;

import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.audit.RowChange;
import org.ensemblerules.source.Row;

/** The values of a row that a change is about: all but what both rows speak of. */
final class RowValues {
  private RowValues() {}

  static String of(RowChange change, Row row) {
    List<String> values = new ArrayList<>(row.canonical());
    change.topic().forEach(values::remove);
    values.removeIf(String::isEmpty);
    return PlainWords.sentence(String.join("; ", values)) + " (" + row.key() + ")";
  }
}
