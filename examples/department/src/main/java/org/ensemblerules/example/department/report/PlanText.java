package org.ensemblerules.example.department.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ensemblerules.fleet.Budget;
import org.ensemblerules.fleet.Forecast;
import org.ensemblerules.fleet.LeavingGroup;
import org.ensemblerules.fleet.Need;
import org.ensemblerules.fleet.PlanYear;
import org.ensemblerules.fleet.ReplacementPlan;
import org.jspecify.annotations.Nullable;

/** What leaves service over the years, and what replacing it costs. */
public final class PlanText {
  private static final int SHOWN = 4;
  private static final int MONTHS = 8;
  private static final int OUT_ALREADY = 0;

  private PlanText() {}

  /**
   * Writes the screen.
   *
   * @param title what it is headed with; not null
   * @param forecast what leaves when; not null
   * @param budget what may be spent; not null
   * @param plan the plan; not null
   * @return the text; never null
   */
  public static String of(String title, Forecast forecast, Budget budget, ReplacementPlan plan) {
    TextPage page = new TextPage();
    page.line(title);
    page.blank();
    table(page, forecast);
    page.wrapped(
        "  the next months  ",
        forecast.months().entrySet().stream()
            .limit(MONTHS)
            .map(month -> month.getKey() + ": " + sum(month.getValue()))
            .collect(Collectors.joining(", ")));
    page.line(
        "  after that "
            + sum(forecast.later())
            + ", without an age limit "
            + sum(forecast.never())
            + ", unknown "
            + sum(forecast.unknown()));
    page.blank();
    page.line(
        "PLAN, at most "
            + budget.perYear().toPlainString()
            + " a year    bought       spent   still needed at the end of the year");
    for (PlanYear year : plan.years()) {
      page.line(
          String.format(
              Locale.ROOT,
              "  %d %30d %11s %8d",
              year.year(),
              year.bought().size(),
              year.spent().toPlainString(),
              year.uncovered().size()));
    }
    page.line("  total " + plan.spent().toPlainString());
    if (!plan.uncovered().isEmpty()) {
      page.wrapped("  without gear at the end: ", without(plan.uncovered()));
    }
    if (!plan.undated().isEmpty()) {
      page.wrapped("  needed on an unknown day: ", without(plan.undated()));
    }
    if (!plan.unpriced().isEmpty()) {
      page.wrapped("  without a price: ", without(plan.unpriced()));
    }
    return page.toString();
  }

  private static void table(TextPage page, Forecast forecast) {
    List<Integer> years =
        IntStream.rangeClosed(
                forecast.asOf().getYear(), forecast.asOf().getYear() + forecast.years())
            .boxed()
            .toList();
    Map<String, Map<Integer, Long>> kinds = new TreeMap<>();
    forecast.now().forEach((group, count) -> add(kinds, group, OUT_ALREADY, count));
    forecast
        .months()
        .forEach(
            (month, groups) ->
                groups.forEach((group, count) -> add(kinds, group, month.getYear(), count)));
    StringBuilder head =
        new StringBuilder(String.format(Locale.ROOT, "%-26s%6s", "LEAVES SERVICE", "now"));
    years.forEach(year -> head.append(String.format(Locale.ROOT, "%6d", year)));
    page.line(head.toString());
    kinds.forEach(
        (kind, counts) -> {
          StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%-26s", kind));
          row.append(cell(counts.get(OUT_ALREADY)));
          years.forEach(year -> row.append(cell(counts.get(year))));
          page.line(row.toString());
        });
  }

  private static void add(
      Map<String, Map<Integer, Long>> kinds, LeavingGroup group, int year, long count) {
    kinds
        .computeIfAbsent(
            PlainWords.of(group.kind())
                + group.layer().map(layer -> ", " + PlainWords.of(layer)).orElse(""),
            none -> new TreeMap<>())
        .merge(year, count, Long::sum);
  }

  private static String cell(@Nullable Long count) {
    return String.format(Locale.ROOT, "%6s", count == null ? "-" : count.toString());
  }

  private static long sum(Map<LeavingGroup, Long> groups) {
    return groups.values().stream().mapToLong(Long::longValue).sum();
  }

  private static String without(List<Need> needs) {
    return needs.stream()
            .limit(SHOWN)
            .map(
                need ->
                    need.whereabouts().text()
                        + " ("
                        + need.element()
                        + need.by().map(day -> ", " + day).orElse("")
                        + ")")
            .collect(Collectors.joining("; "))
        + (needs.size() > SHOWN ? "; and " + (needs.size() - SHOWN) + " more" : "");
  }
}
