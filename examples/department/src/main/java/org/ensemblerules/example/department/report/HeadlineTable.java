package org.ensemblerules.example.department.report;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.verdict.Headline;

/** How many elements of each kind have which headline. */
final class HeadlineTable {
  /** From the best to the gravest, as the eye reads it. */
  private static final List<Headline> COLUMNS =
      List.of(
          Headline.SERVICEABLE,
          Headline.CLEAN,
          Headline.REPAIR,
          Headline.REPLACE_PART,
          Headline.EVALUATE,
          Headline.RETIRE,
          Headline.PRESERVE);

  private HeadlineTable() {}

  static void write(TextPage page, Collection<Judged> all) {
    Map<ElementKind, Map<Headline, Integer>> counts = new EnumMap<>(ElementKind.class);
    Map<Headline, Integer> sums = new EnumMap<>(Headline.class);
    for (Judged judged : all) {
      Headline headline = judged.verdict().headline();
      counts
          .computeIfAbsent(judged.verdict().element().kind(), kind -> new EnumMap<>(Headline.class))
          .merge(headline, 1, Integer::sum);
      sums.merge(headline, 1, Integer::sum);
    }
    StringBuilder head = new StringBuilder(name(""));
    COLUMNS.forEach(column -> head.append(cell(column, PlainWords.of(column))));
    page.line(head + last("all"));
    counts.forEach((kind, row) -> page.line(row(PlainWords.of(kind), row)));
    page.line(row("all", sums));
  }

  private static String row(String name, Map<Headline, Integer> counts) {
    StringBuilder row = new StringBuilder(name(name));
    int all = 0;
    for (Headline column : COLUMNS) {
      int count = counts.getOrDefault(column, 0);
      all += count;
      row.append(cell(column, count == 0 ? "-" : Integer.toString(count)));
    }
    return row.append(last(Integer.toString(all))).toString();
  }

  private static String name(String name) {
    return String.format(Locale.ROOT, "%-19s", name);
  }

  /** As wide as the name of its column, and two blanks before it. */
  private static String cell(Headline column, String text) {
    return String.format(Locale.ROOT, "%" + (PlainWords.of(column).length() + 2) + "s", text);
  }

  private static String last(String text) {
    return String.format(Locale.ROOT, "%6s", text);
  }
}
