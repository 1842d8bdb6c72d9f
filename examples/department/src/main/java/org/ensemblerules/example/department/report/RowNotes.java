package org.ensemblerules.example.department.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.Row;

/** Rows cited by number, each basis written once with the keys of all rows that rest on it. */
final class RowNotes {
  private final boolean remarks;
  private final boolean wordings;
  private final Set<String> said = new LinkedHashSet<>();
  private final Map<String, List<String>> sentences = new LinkedHashMap<>();
  private final Map<String, Set<String>> keys = new LinkedHashMap<>();
  private final Map<String, Integer> numbers = new LinkedHashMap<>();

  /** Starts with no row cited; what tables remark on a basis is written with it. */
  RowNotes() {
    this(true, false);
  }

  private RowNotes(boolean remarks, boolean wordings) {
    this.remarks = remarks;
    this.wordings = wordings;
  }

  /** Starts with no row cited; of each basis only its keys are written. */
  static RowNotes inShort() {
    return new RowNotes(false, false);
  }

  /** Starts with no row cited; what the rows say is written with their basis, no sentence twice. */
  static RowNotes withWordings() {
    return new RowNotes(true, true);
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
    row.wording()
        .filter(wording -> wordings)
        .ifPresent(wording -> say(basis, PlainWords.sentence(wording)));
    keys.computeIfAbsent(basis, each -> new LinkedHashSet<>())
        .add(row.provenance().origin() + " " + row.key().value().split("/", 2)[0]);
    return numbers.computeIfAbsent(basis, each -> numbers.size() + 1);
  }

  private void say(String basis, String wording) {
    for (String sentence : wording.split("(?<=\\.) +", -1)) {
      if (said.add(sentence)) {
        sentences.computeIfAbsent(basis, each -> new ArrayList<>()).add(sentence);
      }
    }
  }

  boolean isEmpty() {
    return numbers.isEmpty();
  }

  void write(TextPage page) {
    if (!isEmpty()) {
      page.line("ROWS AND THEIR BASIS");
      numbers.forEach(
          (basis, number) -> {
            page.wrapped(
                (number < 10 ? "   [" : "  [") + number + "] ",
                basis + "; rows " + String.join(", ", keys.getOrDefault(basis, Set.of())));
            if (sentences.containsKey(basis)) {
              page.wrapped("       ", String.join(" ", sentences.get(basis)));
            }
          });
    }
  }
}
