package org.ensemblerules.example.department.report;

import java.util.List;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.CareStep;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.tables.CareJson;

/** A care route, for people: the steps in order, who may do them, what is written down. */
public final class CareText {
  private CareText() {}

  /**
   * Writes a route.
   *
   * @param request what was asked; not null
   * @param route the answer; not null
   * @return some lines, each with a line end; never null
   */
  public static String of(CareJson.Request request, CareRoute route) {
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
    RowNotes rows = new RowNotes();
    if (route instanceof CareRoute.Steps steps) {
      if (!steps.handling().isEmpty()) {
        label(page, "handling", PlainWords.list(steps.handling()));
      }
      wordings(steps).forEach(words -> label(page, "because", words));
      int number = 0;
      for (CareStep step : steps.steps()) {
        number++;
        step(page, number, step, rows);
      }
    } else if (route instanceof CareRoute.NoRule none) {
      label(
          page, "because", "no row says what is done; it is isolated, and an expert evaluates it");
      label(page, "who", who(none.by()));
    }
    rows.write(page);
    page.blank();
    return page.toString();
  }

  private static void step(TextPage page, int number, CareStep step, RowNotes rows) {
    page.wrapped(
        (number < 10 ? "   " : "  ") + number + ". ",
        PlainWords.sentence(step.text()) + " " + rows.cite(step.rows()));
    if (step.task().isPresent()) {
      page.wrapped("        who      ", who(step.by()));
    }
    if (!step.entries().isEmpty()) {
      page.wrapped("        record   ", PlainWords.list(step.entries()));
    }
  }

  /** What the rows say, each text once. */
  private static List<String> wordings(CareRoute.Steps route) {
    return route.steps().stream()
        .flatMap(step -> step.rows().stream())
        .map(row -> PlainWords.sentence(row.wording()))
        .distinct()
        .toList();
  }

  private static String who(List<PermissionRow> by) {
    return by.isEmpty() ? "nobody is named" : PlainWords.permitted(by);
  }

  private static void label(TextPage page, String label, String text) {
    page.wrapped("  " + label + " ".repeat(11 - label.length()), text);
  }
}
