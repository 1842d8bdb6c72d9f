package org.ensemblerules.example.department.report;

import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.repair.CostView;
import org.ensemblerules.repair.FollowUp;
import org.ensemblerules.repair.RepairOrder;
import org.ensemblerules.repair.RepairPlan;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.RepairJson;

/** Repair orders, for people: what becomes of the damage, who may mend it, what is checked. */
public final class RepairText {
  private RepairText() {}

  /**
   * Writes orders.
   *
   * @param request what was asked; not null
   * @param plan the answer; not null
   * @return some lines, each with a line end; never null
   */
  public static String of(RepairJson.Request request, RepairPlan plan) {
    TextPage page = new TextPage();
    page.wrapped(
        plan.element().id() + "  ",
        PlainWords.of(plan.element().kind())
            + ", "
            + PlainWords.of(plan.element().use())
            + ": "
            + PlainWords.of(plan.level()));
    request
        .work()
        .ifPresent(
            work ->
                label(
                    page,
                    "asked for",
                    work.doer().name()
                        + " ("
                        + PlainWords.of(work.doer().kind())
                        + "), on "
                        + work.on()
                        + ": "
                        + (plan.granted() ? "may do all of the repairs" : "not all of it")));
    RowNotes rows = new RowNotes();
    int number = 0;
    for (RepairOrder order : plan.orders()) {
      number++;
      order(page, number, order, rows);
    }
    request
        .cost()
        .ifPresent(cost -> label(page, "cost", CostView.of(cost.policy(), cost.cost()).text()));
    rows.write(page);
    page.blank();
    return page.toString();
  }

  private static void order(TextPage page, int number, RepairOrder order, RowNotes rows) {
    List<Row> cited = new ArrayList<>();
    order.demand().flatMap(demand -> demand.row()).ifPresent(cited::add);
    cited.addAll(order.limits());
    page.wrapped(
        "  " + number + ". ",
        PlainWords.sentence(order.text()) + (cited.isEmpty() ? "" : " " + rows.cite(cited)));
    if (!order.by().isEmpty()) {
      page.wrapped("       who        ", PlainWords.permitted(order.by()));
    }
    page.wrapped("       asked      ", PlainWords.sentence(order.may().text()));
    order.before().forEach(check -> check(page, "       before     ", check));
    order.afterward().forEach(check -> check(page, "       afterward ", check));
  }

  private static void check(TextPage page, String lead, FollowUp check) {
    page.wrapped(
        lead,
        PlainWords.of(check.check())
            + ": "
            + PlainWords.sentence(check.shown())
            + (check.by().isEmpty() ? "" : " By: " + PlainWords.permitted(check.by())));
  }

  private static void label(TextPage page, String label, String text) {
    page.wrapped("  " + label + " ".repeat(11 - label.length()), text);
  }
}
