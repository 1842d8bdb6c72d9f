package org.ensemblerules.example.department.report;

import org.ensemblerules.source.Row;
import org.ensemblerules.strength.DirectionResult;
import org.ensemblerules.strength.Discarded;
import org.ensemblerules.strength.StrengthResult;
import org.ensemblerules.strength.TestCase;
import org.ensemblerules.strength.TestReport;

/** What a laboratory's report comes to, for people: outcome, rule, numbers, row. */
public final class StrengthText {
  private StrengthText() {}

  /**
   * Writes a result.
   *
   * @param given the report with what it was judged by; not null
   * @param result what it comes to; not null
   * @return some lines, each with a line end; never null
   */
  public static String of(TestCase given, StrengthResult result) {
    TestReport report = given.report();
    TextPage page = new TextPage();
    page.wrapped(given.id() + "  ", outcome(result));
    label(
        page,
        "tested",
        report.property()
            + " of "
            + report.site()
            + " on "
            + report.element()
            + " "
            + report.use()
            + " by "
            + report.method()
            + report.origin().map(origin -> ", specimens from " + origin).orElse(""));
    label(page, "rule", result.rule().text());
    label(page, "purpose", result.purpose().text());
    if (result instanceof StrengthResult.Judged judged) {
      judged.directions().forEach(direction -> direction(page, judged, direction));
      judged.remarks().forEach(remark -> label(page, "remark", judged.text(remark)));
      row(page, judged.requirement());
    } else if (result instanceof StrengthResult.NoResult none) {
      label(page, "because", none.detail());
      none.requirement().ifPresent(row -> row(page, row));
    }
    page.blank();
    return page.toString();
  }

  private static String outcome(StrengthResult result) {
    if (result instanceof StrengthResult.Judged judged) {
      return judged.outcome().name();
    }
    return "NO RESULT: " + ((StrengthResult.NoResult) result).reason();
  }

  private static void direction(
      TextPage page, StrengthResult.Judged judged, DirectionResult direction) {
    label(page, "numbers", judged.text(direction));
    for (Discarded discarded : direction.discarded()) {
      label(page, "discarded", discarded.toString());
    }
  }

  private static void row(TextPage page, Row row) {
    label(page, "row", row.key() + " of " + row.provenance().origin());
    label(page, "basis", row.provenance().basis().text());
  }

  private static void label(TextPage page, String label, String text) {
    page.wrapped("  " + label + " ".repeat(11 - label.length()), text);
  }
}
