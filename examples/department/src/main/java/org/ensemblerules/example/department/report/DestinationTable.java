package org.ensemblerules.example.department.report;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.verdict.OutBecause;
import org.ensemblerules.verdict.Verdict;

/** How many elements that are out go where next, and for what. */
final class DestinationTable {
  private DestinationTable() {}

  /** What is out for several causes stands under each. */
  static void write(TextPage page, Collection<Judged> out) {
    Map<GoesTo, Integer> all = new TreeMap<>();
    Map<GoesTo, Map<OutBecause, Integer>> counts = new TreeMap<>();
    for (Judged judged : out) {
      Verdict verdict = judged.verdict();
      GoesTo goesTo = verdict.goesTo().orElseThrow();
      all.merge(goesTo, 1, Integer::sum);
      Map<OutBecause, Integer> row =
          counts.computeIfAbsent(goesTo, place -> new EnumMap<>(OutBecause.class));
      verdict.outBecause().forEach(cause -> row.merge(cause, 1, Integer::sum));
    }
    StringBuilder head = new StringBuilder(name("goes to"));
    for (OutBecause cause : OutBecause.values()) {
      head.append(cell(PlainWords.of(cause)));
    }
    page.line(head + cell("all"));
    all.forEach(
        (goesTo, count) ->
            page.line(row(PlainWords.of(goesTo), counts.getOrDefault(goesTo, Map.of()), count)));
    Map<OutBecause, Integer> sums = new EnumMap<>(OutBecause.class);
    counts
        .values()
        .forEach(row -> row.forEach((cause, some) -> sums.merge(cause, some, Integer::sum)));
    page.line(row("all", sums, out.size()));
  }

  private static String row(String name, Map<OutBecause, Integer> counts, int all) {
    StringBuilder row = new StringBuilder(name(name));
    for (OutBecause cause : OutBecause.values()) {
      Integer some = counts.get(cause);
      row.append(cell(some == null ? "-" : some.toString()));
    }
    return row.append(cell(Integer.toString(all))).toString();
  }

  private static String name(String name) {
    return String.format(Locale.ROOT, "%-47s", name);
  }

  private static String cell(String text) {
    return String.format(Locale.ROOT, "%11s", text);
  }
}
