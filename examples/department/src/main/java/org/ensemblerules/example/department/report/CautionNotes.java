package org.ensemblerules.example.department.report;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.verdict.Caution;
import org.ensemblerules.verdict.Verdict;

/** The cautions of many verdicts, each written once: those of all, and the rest by number. */
final class CautionNotes {
  private final Set<Caution> common;
  private final Map<Caution, Integer> numbers = new LinkedHashMap<>();

  private CautionNotes(Set<Caution> common) {
    this.common = common;
  }

  static CautionNotes of(Collection<Judged> all) {
    List<Verdict> verdicts = all.stream().map(Judged::verdict).toList();
    Set<Caution> common =
        verdicts.stream()
            .flatMap(verdict -> verdict.cautions().stream())
            .filter(
                caution ->
                    verdicts.stream().allMatch(verdict -> verdict.cautions().contains(caution)))
            .collect(Collectors.toCollection(LinkedHashSet::new));
    CautionNotes notes = new CautionNotes(common);
    verdicts.stream()
        .flatMap(verdict -> verdict.cautions().stream())
        .filter(caution -> !common.contains(caution))
        .forEach(caution -> notes.numbers.putIfAbsent(caution, notes.numbers.size() + 1));
    return notes;
  }

  /** The numbers of a verdict's own cautions, as in {@code 2, 5}; empty if it has none. */
  String of(Verdict verdict) {
    return verdict.cautions().stream()
        .filter(numbers::containsKey)
        .map(numbers::get)
        .sorted()
        .map(String::valueOf)
        .collect(Collectors.joining(", "));
  }

  void write(TextPage page) {
    page.line("CAUTIONS FOR ALL OF THE ABOVE");
    common.forEach(caution -> page.wrapped("  - ", PlainWords.sentence(caution.text())));
    page.blank();
    page.line("NOTES");
    numbers.forEach(
        (caution, number) ->
            page.wrapped(
                (number < 10 ? "  " : " ") + number + "  ", PlainWords.sentence(caution.text())));
  }
}
