package org.ensemblerules.example.department.report;

import java.util.List;
import java.util.stream.Collectors;
import org.ensemblerules.retirement.RouteAnswer;
import org.ensemblerules.tables.DisposalJson;

/** What may become of a retired element, for people. */
public final class DisposalText {
  private DisposalText() {}

  /**
   * Writes which routes are open, and why the others are not.
   *
   * @param request what was asked; not null
   * @param answers the answer for each route; not null
   * @return some lines, each with a line end; never null
   */
  public static String of(DisposalJson.Request request, List<RouteAnswer> answers) {
    TextPage page = new TextPage();
    page.wrapped(
        request.element().id() + "  ",
        PlainWords.of(request.element().kind())
            + ", "
            + PlainWords.of(request.element().use())
            + ", retired: "
            + request.gear().causes().stream()
                .map(cause -> PlainWords.of(cause.reason()))
                .sorted()
                .collect(Collectors.joining(", ")));
    RowNotes rows = new RowNotes();
    for (RouteAnswer answer : answers) {
      page.wrapped("  " + padded(PlainWords.of(answer.route())), text(answer, rows));
    }
    rows.write(page);
    page.blank();
    return page.toString();
  }

  private static String text(RouteAnswer answer, RowNotes rows) {
    if (answer instanceof RouteAnswer.Open open) {
      return "OPEN " + rows.cite(open.rows());
    } else if (answer instanceof RouteAnswer.Closed closed) {
      return "closed: " + PlainWords.sentence(String.join("; ", closed.whyNot()));
    }
    return "no rule covers it; ask before anything is done";
  }

  private static String padded(String route) {
    return route + " ".repeat(Math.max(1, 24 - route.length()));
  }
}
