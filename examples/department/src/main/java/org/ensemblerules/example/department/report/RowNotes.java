package org.ensemblerules.example.department.report;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.Row;

/** Rows cited by number, each basis written once with the keys of all rows that rest on it. */
final class RowNotes {
  private final boolean remarks;
  private final Map<String, Set<String>> keys = new LinkedHashMap<>();
  private final Map<String, Integer> numbers = new LinkedHashMap<>();

  /** Starts with no row cited; what tables remark on a basis is written with it. */
  RowNotes() {
    this(true);
  }

  /** Starts with no row cited. */
  RowNotes(boolean remarks) {
    this.remarks = remarks;
  }

  /** The numbers of the bases that rows rest on, as in {@code [2, 5]}. */
  String cite(Collection<? extends Row> rows) {
    return rows.stream()
        .map(this::number)
        .distinct()
        .sorted()
        .map(String::valueOf)
        .collect(Collectors.joining(", ", "[", "]"));
  }

  private int number(Row row) {
    return number(row.cited());
  }

  /** The number of the basis that a row rests on. */
  String cite(CitedRow row) {
    return "[" + number(row) + "]";
  }

  private int number(CitedRow row) {
    String basis =
        row.provenance().basis().text()
            + row.provenance()
                .note()
                .filter(note -> remarks)
                .map(note -> " (" + note + ")")
                .orElse("");
    keys.computeIfAbsent(basis, each -> new LinkedHashSet<>())
        .add(row.provenance().origin() + " " + row.key().value().split("/", 2)[0]);
    return numbers.computeIfAbsent(basis, each -> numbers.size() + 1);
  }

  boolean isEmpty() {
    return numbers.isEmpty();
  }

  void write(TextPage page) {
    if (!isEmpty()) {
      page.line("ROWS AND THEIR BASIS");
      numbers.forEach(
          (basis, number) ->
              page.wrapped(
                  (number < 10 ? "   [" : "  [") + number + "] ",
                  basis + "; rows " + String.join(", ", keys.get(basis))));
    }
  }
}
