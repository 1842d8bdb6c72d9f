package org.ensemblerules.example.department.report;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.source.Row;

/** Rows cited by number, each basis written once with the keys of all rows that rest on it. */
final class RowNotes {
  private final Map<String, Set<String>> keys = new LinkedHashMap<>();
  private final Map<String, Integer> numbers = new LinkedHashMap<>();

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
    String basis =
        row.provenance().basis().text()
            + row.provenance().note().map(note -> " (" + note + ")").orElse("");
    keys.computeIfAbsent(basis, each -> new LinkedHashSet<>())
        .add(row.provenance().origin() + " " + row.key().value().split("/", 2)[0]);
    return numbers.computeIfAbsent(basis, each -> numbers.size() + 1);
  }

  void write(TextPage page) {
    if (!numbers.isEmpty()) {
      page.line("ROWS AND THEIR BASIS");
      numbers.forEach(
          (basis, number) ->
              page.wrapped(
                  (number < 10 ? "   [" : "  [") + number + "] ",
                  basis + "; rows " + String.join(", ", keys.get(basis))));
    }
  }
}
