package org.ensemblerules.example.department.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ensemblerules.repair.CostView;
import org.ensemblerules.repair.FollowUp;
import org.ensemblerules.repair.RepairOrder;
import org.ensemblerules.repair.RepairPlan;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.message.RepairRequest;

/**
 * Repair orders, for people: what becomes of the damage, who may mend it, what is checked. Who may
 * do what, what checks show and the rows are written once below all of them.
 */
public final class RepairText {
  private final WhoNotes who = new WhoNotes();
  private final RowNotes rows = new RowNotes();
  private final Map<String, Integer> checks = new LinkedHashMap<>();

  /**
   * Writes orders.
   *
   * @param request what was asked; not null
   * @param plan the answer; not null
   * @return some lines, each with a line end; never null
   */
  public String of(RepairRequest request, RepairPlan plan) {
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
    int number = 0;
    for (RepairOrder order : plan.orders()) {
      number++;
      order(page, number, order);
    }
    request
        .cost()
        .ifPresent(
            cost ->
                label(
                    page,
                    "cost",
                    PlainWords.sentence(CostView.of(cost.policy(), cost.cost()).text())));
    page.blank();
    return page.toString();
  }

  /**
   * Writes who may do what, and the rows, for all orders written so far.
   *
   * @return some lines, each with a line end; empty if there was no order; never null
   */
  public String notes() {
    TextPage page = new TextPage();
    who.write(page);
    if (!checks.isEmpty()) {
      page.line("WHAT CHECKS SHOW");
      checks.forEach((shown, number) -> page.wrapped("   (" + number + ") ", shown));
    }
    rows.write(page);
    return page.toString();
  }

  private void order(TextPage page, int number, RepairOrder order) {
    List<Row> cited = new ArrayList<>();
    order.demand().flatMap(demand -> demand.row()).ifPresent(cited::add);
    cited.addAll(order.limits());
    page.wrapped(
        "  " + number + ". ",
        PlainWords.sentence(order.text()) + (cited.isEmpty() ? "" : " " + rows.cite(cited)));
    String by = order.by().isEmpty() ? "" : "by " + who.permitted(order.by()) + "; asked: ";
    page.wrapped("       who        ", by + PlainWords.sentence(order.may().text()));
    order.before().forEach(check -> check(page, "       before     ", check));
    order.afterward().forEach(check -> check(page, "       afterward  ", check));
  }

  private void check(TextPage page, String lead, FollowUp check) {
    String name = PlainWords.of(check.check());
    int number =
        checks.computeIfAbsent(
            name + ": " + PlainWords.sentence(check.shown()), each -> checks.size() + 1);
    page.wrapped(
        lead,
        name
            + " ("
            + number
            + ")"
            + (check.by().isEmpty() ? "" : ", by " + who.permitted(check.by())));
  }

  private static void label(TextPage page, String label, String text) {
    page.wrapped("  " + label + " ".repeat(11 - label.length()), text);
  }
}
