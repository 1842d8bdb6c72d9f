package org.ensemblerules.example.department.report;

import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ensemblerules.fleet.Figures;
import org.ensemblerules.tables.message.CareSpent;

/** The numbers of a department, on one screen. */
public final class FiguresText {
  private static final int SHOWN = 8;

  private FiguresText() {}

  /**
   * Writes the screen.
   *
   * @param title what it is headed with; not null
   * @param figures the numbers; not null
   * @param care what washes and repairs cost so far; not null
   * @return the text; never null
   */
  public static String of(String title, Figures figures, CareSpent care) {
    TextPage page = new TextPage();
    page.line(title);
    page.blank();
    line(page, "elements", figures.elements() + ", and " + figures.gone() + " disposed of");
    line(page, "by kind", PlainCounts.of(figures.byKind()));
    line(page, "in service", figures.in() + " (" + share(figures.in(), figures.elements()) + ")");
    line(
        page,
        "inspected in time",
        figures.inspectedInTime()
            + " of "
            + figures.inspectionsDue()
            + " ("
            + share(figures.inspectedInTime(), figures.inspectionsDue())
            + ")");
    line(
        page,
        "overdue",
        figures.overdue()
            + " elements, "
            + figures.overdueDays()
            + " days in all, the longest "
            + figures.longestOverdue()
            + "; since an unknown day: "
            + figures.overdueSinceUnknown());
    line(
        page,
        "age in years",
        figures.ages().entrySet().stream()
                .map(age -> age.getKey() + ": " + age.getValue())
                .collect(Collectors.joining(", "))
            + "; unknown: "
            + figures.ageUnknown());
    line(page, "out because of", PlainCounts.of(figures.because()));
    line(
        page,
        "most frequent reasons",
        figures.why().entrySet().stream()
            .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
            .limit(SHOWN)
            .map(kind -> PlainWords.of(kind.getKey()) + " " + kind.getValue())
            .collect(Collectors.joining(", ")));
    findings(page, figures);
    page.blank();
    CareSpentText.write(page, care);
    return page.toString();
  }

  private static void findings(TextPage page, Figures figures) {
    Map<String, Long> parts = new TreeMap<>();
    figures
        .findings()
        .forEach((group, count) -> parts.merge(PlainWords.of(group.part()), count, Long::sum));
    page.blank();
    page.line("FINDINGS BY PART, AND HOW OLD IT WAS IN YEARS");
    parts.entrySet().stream()
        .sorted(
            Map.Entry.<String, Long>comparingByValue(Comparator.reverseOrder())
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(SHOWN)
        .forEach(
            part ->
                page.wrapped(
                    String.format(Locale.ROOT, "  %-26s %4d   ", part.getKey(), part.getValue()),
                    figures.findings().entrySet().stream()
                        .filter(group -> PlainWords.of(group.getKey().part()).equals(part.getKey()))
                        .map(
                            group ->
                                group.getKey().age().map(Object::toString).orElse("unknown")
                                    + ": "
                                    + group.getValue())
                        .collect(Collectors.joining(", "))));
  }

  private static String share(long some, long all) {
    return all == 0 ? "none" : String.format(Locale.ROOT, "%.1f %%", 100.0 * some / all);
  }

  private static void line(TextPage page, String name, String text) {
    page.wrapped(String.format(Locale.ROOT, "%-23s", name), text);
  }
}
