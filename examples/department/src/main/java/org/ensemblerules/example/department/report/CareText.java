package org.ensemblerules.example.department.report;

import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.CareStep;
import org.ensemblerules.tables.message.CareRequest;

/**
 * Care routes, for people: the steps in order, who may do them, what is written down. What several
 * routes share, such as who may and why, is written once below all of them.
 */
public final class CareText {
  private final WhoNotes who = new WhoNotes();
  private final RowNotes rows = RowNotes.withWordings();

  /**
   * Writes a route.
   *
   * @param request what was asked; not null
   * @param route the answer; not null
   * @return some lines, each with a line end; never null
   */
  public String of(CareRequest request, CareRoute route) {
    TextPage page = new TextPage();
    page.wrapped(
        request.element().id() + "  ",
        PlainWords.of(request.element().kind())
            + ", "
            + PlainWords.of(request.element().use())
            + ", met: "
            + PlainWords.list(request.exposures()));
    label(
        page,
        "returns",
        route.mayReturn() ? "only once the whole route is done" : "no, not by this route");
    if (route instanceof CareRoute.Steps steps) {
      if (!steps.handling().isEmpty()) {
        label(page, "handling", PlainWords.list(steps.handling()));
      }
      int number = 0;
      for (CareStep step : steps.steps()) {
        number++;
        step(page, number, step);
      }
    } else if (route instanceof CareRoute.NoRule none) {
      label(
          page, "because", "no row says what is done; it is isolated, and an expert evaluates it");
      label(page, "by", who.permitted(none.by()));
    }
    page.blank();
    return page.toString();
  }

  private void step(TextPage page, int number, CareStep step) {
    page.wrapped(
        (number < 10 ? "   " : "  ") + number + ". ",
        PlainWords.sentence(step.text())
            + (step.task().isPresent() ? ", by " + who.permitted(step.by()) : "")
            + (step.entries().isEmpty() ? "" : "; record: " + PlainWords.list(step.entries()))
            + " "
            + rows.cite(step.rows()));
  }

  /**
   * Writes who may do what, and why, for all routes written so far.
   *
   * @return some lines, each with a line end; empty if there was no route; never null
   */
  public String notes() {
    TextPage page = new TextPage();
    who.write(page);
    rows.write(page);
    return page.toString();
  }

  private static void label(TextPage page, String label, String text) {
    page.wrapped("  " + label + " ".repeat(11 - label.length()), text);
  }
}
