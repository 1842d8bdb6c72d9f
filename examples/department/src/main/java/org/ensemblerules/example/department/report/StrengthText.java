package org.ensemblerules.example.department.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ensemblerules.strength.DirectionResult;
import org.ensemblerules.strength.Discarded;
import org.ensemblerules.strength.ReportJudge;
import org.ensemblerules.strength.TestCase;
import org.ensemblerules.strength.TestReport;

/**
 * What laboratory reports come to, for people: outcome, rule, numbers. The rows that several rest
 * on, and what is remarked of several, are written once below all of them.
 */
public final class StrengthText {
  private final RowNotes rows = new RowNotes();
  private final Map<String, Integer> remarks = new LinkedHashMap<>();

  /**
   * Writes a result.
   *
   * @param given the report with what it was judged by; not null
   * @param result what it comes to; not null
   * @return some lines, each with a line end; never null
   */
  public String of(TestCase given, ReportJudge.Result result) {
    TestReport report = given.report();
    TextPage page = new TextPage();
    page.wrapped(given.id() + "  ", outcome(result));
    label(
        page,
        "tested",
        PlainWords.sentence(
            report.property()
                + " of "
                + report.site()
                + ", "
                + report.use()
                + " "
                + report.element()
                + ", by "
                + report.method()
                + report.origin().map(origin -> ", specimens from " + origin).orElse("")));
    label(
        page,
        "judged by",
        PlainWords.sentence(result.rule().text() + ", for " + result.purpose().text()));
    if (result instanceof ReportJudge.Judged judged) {
      directions(judged).forEach((numbers, which) -> numbers(page, which, numbers));
      for (DirectionResult direction : judged.directions()) {
        for (Discarded discarded : direction.discarded()) {
          label(page, "discarded", PlainWords.sentence(discarded.toString()));
        }
      }
      List<String> noted = new ArrayList<>();
      judged.remarks().forEach(remark -> noted.add(note(judged.text(remark))));
      label(
          page,
          "row",
          judged.requirement().key()
              + " "
              + rows.cite(List.of(judged.requirement()))
              + (noted.isEmpty() ? "" : "; remarks " + String.join(", ", noted)));
    } else if (result instanceof ReportJudge.NoResult none) {
      label(page, "because", PlainWords.sentence(none.detail()));
      none.requirement()
          .ifPresent(row -> label(page, "row", row.key() + " " + rows.cite(List.of(row))));
    }
    page.blank();
    return page.toString();
  }

  /** Directions of which the same numbers are told stand together. */
  private static Map<String, List<String>> directions(ReportJudge.Judged judged) {
    Map<String, List<String>> together = new LinkedHashMap<>();
    for (DirectionResult direction : judged.directions()) {
      String name = direction.direction().toString();
      together
          .computeIfAbsent(
              judged.text(direction).substring(name.length()).strip(), text -> new ArrayList<>())
          .add(PlainWords.of(direction.direction()));
    }
    return together;
  }

  private static void numbers(TextPage page, List<String> directions, String numbers) {
    label(page, "numbers", String.join(" and ", directions) + ": " + PlainWords.sentence(numbers));
  }

  private String note(String remark) {
    return "(" + remarks.computeIfAbsent(remark, each -> remarks.size() + 1) + ")";
  }

  /**
   * Writes the rows and remarks of all results written so far.
   *
   * @return some lines, each with a line end; never null
   */
  public String notes() {
    TextPage page = new TextPage();
    rows.write(page);
    if (!remarks.isEmpty()) {
      page.line("REMARKS");
      remarks.forEach((remark, number) -> page.wrapped("   (" + number + ") ", remark + "."));
    }
    page.blank();
    return page.toString();
  }

  private static String outcome(ReportJudge.Result result) {
    return result instanceof ReportJudge.NoResult none
        ? name(result) + ": " + PlainWords.of(none.reason())
        : name(result);
  }

  /**
   * Names an outcome.
   *
   * @param result the result; not null
   * @return its outcome in words, or that there is none; never null
   */
  public static String name(ReportJudge.Result result) {
    return result instanceof ReportJudge.Judged judged
        ? PlainWords.of(judged.outcome())
        : "no result";
  }

  private static void label(TextPage page, String label, String text) {
    page.wrapped("  " + label + " ".repeat(11 - label.length()), text);
  }
}
