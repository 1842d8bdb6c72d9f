package org.ensemblerules.example.department.report;

import java.util.List;
import java.util.stream.Collectors;
import org.ensemblerules.retirement.RouteAnswer;
import org.ensemblerules.tables.message.DisposalRequest;

/** What may become of a retired element, for people. */
public final class DisposalText {
  private final RowNotes rows = new RowNotes();

  /**
   * Writes which routes are open, and why the others are not.
   *
   * @param request what was asked; not null
   * @param answers the answer for each route; not null
   * @return some lines, each with a line end; never null
   */
  public String of(DisposalRequest request, List<RouteAnswer> answers) {
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
    for (RouteAnswer answer : answers) {
      page.wrapped("  " + padded(PlainWords.of(answer.route())), text(answer));
    }
    page.blank();
    return page.toString();
  }

  /**
   * Writes the rows of all answers written so far.
   *
   * @return some lines, each with a line end; empty if no row was cited; never null
   */
  public String notes() {
    TextPage page = new TextPage();
    rows.write(page);
    return page.toString();
  }

  private String text(RouteAnswer answer) {
    if (answer instanceof RouteAnswer.Open open) {
      return "open " + rows.cite(open.rows());
    } else if (answer instanceof RouteAnswer.Closed closed) {
      return "closed: " + PlainWords.sentence(String.join("; ", closed.whyNot()));
    }
    return "no rule covers it; ask before anything is done";
  }

  private static String padded(String route) {
    return route + " ".repeat(Math.max(1, 28 - route.length()));
  }
}
